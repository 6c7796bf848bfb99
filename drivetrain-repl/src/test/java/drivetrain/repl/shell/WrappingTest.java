package drivetrain.repl.shell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WrappingTest {

    @Test
    void breaksAtBlanks() {
        assertThat(Wrapping.of("one two three four", 9)).containsExactly("one two", "  three", "  four");
        assertThat(Wrapping.of("short", 9)).containsExactly("short");
        assertThat(Wrapping.of("", 9)).containsExactly("");
    }

    @Test
    void breaksAWordThatIsTooWide() {
        assertThat(Wrapping.of("abcdefghij", 4)).containsExactly("abcd", "  ef", "  gh", "  ij");
    }

    @ParameterizedTest
    @ValueSource(ints = {20, 40, 60, 80, 120})
    void neverExceedsTheWidth(int width) {
        String text = "wide ".repeat(40) + "x".repeat(300) + " end";
        assertThat(Wrapping.of(text, width)).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(width));
        assertThat(String.join("", Wrapping.of(text, width)).replace(" ", "")).isEqualTo(text.replace(" ", ""));
    }
}
