package drivetrain.combination;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PartKindTest {

    @ParameterizedTest
    @MethodSource("drivetrain.combination.PartKind#all")
    void readsItsOwnExample(PartKind<?> kind) {
        String literal = kind.example().replace(" or none", "").replaceFirst(" or .*", "");

        assertThat(kind.parse(literal)).isNotNull();
        assertThat(kind).hasToString(kind.word());
    }

    @Test
    void hasWordsAndKeysOfItsOwn() {
        assertThat(PartKind.all().stream().map(PartKind::word)).doesNotHaveDuplicates();
        assertThat(PartKind.all().stream().map(PartKind::key))
                .doesNotHaveDuplicates()
                .contains("transferCases", "hubReductions");
    }
}
