package drivetrain.repl.shell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TypedLineTest {

    @Test
    void endsWithTheWordAtTheCursor() {
        TypedLine line = TypedLine.at("axle rp-4 x", 9);
        assertThat(line.words()).containsExactly("axle", "rp-4");
        assertThat(line.word()).isEqualTo("rp-4");
        assertThat(line.wordIndex()).isEqualTo(1);
        assertThat(line.rawWordCursor()).isEqualTo(4);
        assertThat(line.rawWordLength()).isEqualTo(4);
        assertThat(line.wordCursor()).isEqualTo(4);
    }

    @Test
    void hasAnEmptyWordBehindABlank() {
        TypedLine line = TypedLine.at("axle ", 5);
        assertThat(line.words()).containsExactly("axle", "");
        assertThat(line.rawWordCursor()).isZero();
        assertThat(TypedLine.at("", 0).words()).containsExactly("");
    }

    @Test
    void readsAnOpenQuote() {
        TypedLine line = TypedLine.at("open \"coast t", 13);
        assertThat(line.words()).containsExactly("open", "coast t");
        assertThat(line.rawWordCursor()).isEqualTo(8);
        assertThat(TypedLine.at("open 'it's", 10).words()).containsExactly("");
    }

    @Test
    void quotesWhatNeedsIt() {
        TypedLine line = TypedLine.at("open ", 5);
        assertThat(line.escape("rp-4.10", true)).hasToString("rp-4.10");
        assertThat(line.escape("coast tourer.yaml", true)).hasToString("\"coast tourer.yaml\"");
        assertThat(line.escape("coast tour", false)).hasToString("\"coast tour");
        assertThat(line.escape("#1", true)).hasToString("\"#1\"");
        assertThat(line.escape("6\" x", true)).hasToString("'6\" x'");
        assertThat(line.escape("", true)).hasToString("\"\"");
        assertThat(line.escape("", false)).hasToString("");
    }
}
