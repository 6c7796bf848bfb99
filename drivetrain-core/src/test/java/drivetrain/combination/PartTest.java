package drivetrain.combination;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PartTest {

    private static final String FORTY = "abcdefghij".repeat(4);

    @ParameterizedTest
    @ValueSource(strings = {"a", "7", "v8-6.2", "rp-4.10", "abcdefghijabcdefghijabcdefghijabcdefghij"})
    void takesNames(String name) {
        Part<String> part = Part.of(name, "a part", "item", "shelf.yaml");

        assertThat(part.name()).isEqualTo(name);
        assertThat(part.item()).isEqualTo("item");
        assertThat(part.isLiteral()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "-a",
                ".a",
                "V8",
                "v8 big",
                "v8/6",
                "v8_6",
                "ä",
                "abcdefghijabcdefghijabcdefghijabcdefghijx"
            })
    void refusesWhatCannotBeAName(String name) {
        assertThat(Refusals.of(() -> Part.of(name, "", "item", "shelf.yaml")))
                .satisfies(refusal -> assertThat(refusal.subject()).isEqualTo("part name"))
                .satisfies(refusal -> assertThat(refusal.given()).isEqualTo(name))
                .satisfies(refusal -> assertThat(refusal.allowed()).contains("at most 40"));
    }

    @Test
    void namesALiteralByItsText() {
        Part<String> part = Part.literal("41/10 efficiency 96 %", "item");

        assertThat(part.name()).isEqualTo("41/10 efficiency 96 %");
        assertThat(part.description()).isEmpty();
        assertThat(part.origin()).isEqualTo(Part.LITERAL);
        assertThat(part.isLiteral()).isTrue();
    }

    @Test
    void allowsFortyCharactersAndNoMore() {
        assertThat(Part.of(FORTY, "", "item", "x").name()).hasSize(40);
        assertThat(Refusals.of(() -> Part.of(FORTY + "x", "", "item", "x")).problem())
                .isEqualTo("cannot be a part's name");
    }
}
