package drivetrain.repl.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.refusal.RefusedException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineTest {

    private static List<String> texts(String line) {
        return Line.parse(line).words().stream().map(Word::text).toList();
    }

    @Test
    void cutsAtBlanks() {
        assertThat(texts("  tire\t285/75R16\u00A0 rollout 2510 mm "))
                .containsExactly("tire", "285/75R16", "rollout", "2510", "mm");
    }

    @Test
    void keepsBlanksInQuotes() {
        assertThat(texts("save \"coast tourer.yaml\" 'it \"is\"'"))
                .containsExactly("save", "coast tourer.yaml", "it \"is\"");
    }

    @Test
    void readsAnInchSignInsideAWord() {
        assertThat(texts("tire 7.50-16 diameter 31.7\"")).endsWith("31.7\"");
    }

    @Test
    void leavesRemarksOut() {
        assertThat(texts("axle 41/10 # the new one")).containsExactly("axle", "41/10");
        assertThat(texts("a#b")).containsExactly("a#b");
        assertThat(Line.parse("# only a remark").isEmpty()).isTrue();
    }

    @Test
    void knowsWhereEachWordStands() {
        Line line = Line.parse("save \"a b\" x");
        assertThat(line.words())
                .containsExactly(
                        new Word("save", 0, 4, false), new Word("a b", 5, 10, true), new Word("x", 11, 12, false));
        assertThat(line.words().get(1).textStart()).isEqualTo(6);
    }

    @ParameterizedTest
    @ValueSource(strings = {"save \"a", "save 'a", "save \"a\"b"})
    void refusesQuotesThatDoNotCloseAWord(String text) {
        assertThatThrownBy(() -> Line.parse(text))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("quotation mark");
    }

    @Test
    void refusesControlCharacters() {
        assertThatThrownBy(() -> Line.parse("tire \u001B[2J")).hasMessageContaining("column 6");
        assertThatThrownBy(() -> Line.parse("a\u0000")).hasMessageContaining("column 2");
    }

    @Test
    void refusesAnEndlessLine() {
        assertThatThrownBy(() -> Line.parse("x".repeat(Line.LONGEST + 1))).hasMessageContaining("too long");
        assertThat(texts("x".repeat(Line.LONGEST))).hasSize(1);
    }

    @Test
    void tellsPlainWordsFromQuotedOnes() {
        assertThat(Line.parse("LOW").words().get(0).isAny("high", "low")).isTrue();
        assertThat(Line.parse("'low'").words().get(0).isAny("low")).isFalse();
    }
}
