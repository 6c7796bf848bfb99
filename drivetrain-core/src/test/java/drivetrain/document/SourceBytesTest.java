package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SourceBytesTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE", "UTF-32", "UTF-32LE", "x-UTF-16LE-BOM"})
    void refusesWideEncodings(String charset) {
        byte[] bytes = "document: drivetrain-order\n".getBytes(Charset.forName(charset));
        assertThat(Refused.sentence(() -> SourceBytes.decode("f", bytes)))
                .startsWith("f:1:1: document: is saved as UTF-16 or UTF-32; allowed: text saved as UTF-8");
    }

    @Test
    void refusesAByteOrderMarkAtTheBeginning() {
        byte[] bytes = "\uFEFFa: 1".getBytes(StandardCharsets.UTF_8);
        assertThat(Refused.sentence(() -> SourceBytes.decode("f", bytes))).contains("byte order mark");
    }

    @Test
    void refusesAByteThatIsNotUtf8AtItsPlace() {
        byte[] bytes = "a: 1\nb: caf\u00E9 noir".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(Refused.sentence(() -> SourceBytes.decode("f", bytes)))
                .startsWith("f:2:7: document: has a byte that is not UTF-8");
    }

    @Test
    void refusesACharacterThatIsCutShort() {
        byte[] bytes = {'a', (byte) 0xC3};
        assertThat(Refused.sentence(() -> SourceBytes.decode("f", bytes))).startsWith("f:1:2: ");
    }

    @Test
    void refusesAnOverlongForm() {
        byte[] bytes = {'a', 'b', (byte) 0xC0, (byte) 0xAF};
        assertThat(Refused.sentence(() -> SourceBytes.decode("f", bytes))).startsWith("f:1:3: ");
    }

    @Test
    void readsTheShortestTexts() {
        assertThat(SourceBytes.decode("f", new byte[0]).text()).isEmpty();
        assertThat(SourceBytes.decode("f", new byte[] {'x'}).text()).isEqualTo("x");
        assertThat(SourceBytes.decode("f", "\u00E9".getBytes(StandardCharsets.UTF_8))
                        .text())
                .isEqualTo("\u00E9");
    }

    @Test
    void refusesAFileThatIsTooLongWithoutReadingItAll() throws IOException {
        Path file = folder.resolve("long.yaml");
        Files.write(file, new byte[Limits.DOCUMENT_BYTES + 1]);
        assertThat(Refused.sentence(() -> SourceBytes.read(file))).contains("is longer than 8 MB");
        Path endless = Path.of("/dev/zero");
        if (Files.exists(endless)) {
            assertThat(Refused.sentence(() -> SourceBytes.read(endless))).contains("is longer than 8 MB");
        }
    }

    @Test
    void saysWhichPackedDocumentIsMissing() {
        assertThatThrownBy(() -> SourceBytes.readResource("drivetrain/document/nowhere.yaml"))
                .isInstanceOf(FileNotFoundException.class)
                .hasMessage("drivetrain/document/nowhere.yaml");
    }
}
