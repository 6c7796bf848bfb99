package drivetrain.repl.shell;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.repl.Trial;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {

    @TempDir
    Path folder;

    private String script(String text) throws IOException {
        Path file = folder.resolve("work.txt");
        Files.writeString(file, text);
        return file.toString();
    }

    @Test
    void answersOneShot() {
        Trial trial = Trial.of(
                "tire 285/75R16",
                "axle 41/10",
                "transmission 4.03 2.36 1.53 1.15 0.85 0.67",
                "transfer 1.00 2.72",
                "cruise 65 mph");
        assertThat(trial.status()).isZero();
        assertThat(trial.err()).isEmpty();
        assertThat(trial.out())
                .startsWith("At 65.0 mph in 6th high the engine turns 1883 rpm.\n")
                .contains("4.10\n", "3.05 x overall diameter");
    }

    @Test
    void givesTheSameBytesFromAPipeAScriptAndTheCommandLine() throws IOException {
        String text = "open demo\n\n# a remark\ncruise 65 mph\r\ncrawl\n";
        Trial piped = Trial.piped(text);
        assertThat(piped).isEqualTo(Trial.called("--file", script(text)));
        assertThat(piped).isEqualTo(Trial.of("open demo", "cruise 65 mph", "crawl"));
        assertThat(piped.status()).isZero();
        assertThat(piped.out()).doesNotContain("\u001B", "\r");
    }

    @Test
    void writesAsciiOnlyWhereThereIsNoScreen() {
        String all = Trial.of("open demo", "torque", "explain cruise 65 mph", "plot speeds", "check", "help")
                .out();
        assertThat(all.chars()).allMatch(sign -> sign == '\n' || sign >= ' ' && sign <= '~');
    }

    @Test
    void stopsAtTheFirstRefusedLine() throws IOException {
        String file = script("open demo\ntire 285/75Q16\ncrawl\n");
        Trial trial = Trial.called("--file", file);
        assertThat(trial.status()).isEqualTo(1);
        assertThat(trial.out()).isEmpty();
        assertThat(trial.err()).startsWith(file + ":2:12: tire \"285/75Q16\": ").contains("\n  near: 285/75R16\n");
    }

    @Test
    void goesOnIfAsked() {
        Trial trial = Trial.piped("open demo\ntire 285/75Q16\ncrawl\n", "--keep-going");
        assertThat(trial.status()).isEqualTo(1);
        assertThat(trial.out()).startsWith("The crawl ratio is ");
        assertThat(trial.err()).startsWith("<stdin>:2:12: ");
    }

    @Test
    void keepsTheStatusOfTheFirstFailure() {
        assertThat(Trial.piped("open no-such.yaml\nbad\n", "--keep-going").status())
                .isEqualTo(3);
        assertThat(Trial.piped("bad\nopen no-such.yaml\n", "--keep-going").status())
                .isEqualTo(1);
    }

    @Test
    void namesLinesOfTheCallByTheirNumber() {
        assertThat(Trial.of("open demo", "cruise 65").err())
                .isEqualTo("-c:2:10: speed \"65\": has no unit; allowed: 65 mph or 65 km/h\n  near: 65 mph, 65 km/h\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"quit", "exit"})
    void endsEarly(String word) {
        Trial trial = Trial.of("open demo", word, "no such word");
        assertThat(trial).isEqualTo(new Trial(0, "", ""));
    }

    @Test
    void tellsAFileThatCannotBeRead() {
        Trial trial = Trial.called("--file", folder.resolve("absent.txt").toString());
        assertThat(trial.status()).isEqualTo(3);
        assertThat(trial.err()).endsWith("absent.txt\": does not exist\n");
        assertThat(Trial.called("--catalog", "absent.yaml", "-c", "show").status())
                .isEqualTo(3);
        assertThat(Trial.of("open absent.yaml").err()).isEqualTo("-c:1:1: file \"absent.yaml\": does not exist\n");
    }

    @Test
    void refusesInputThatIsNotText() {
        Trial trial = Trial.piped(new byte[] {'h', (byte) 0xFF, (byte) 0xFE, '\n'});
        assertThat(trial.status()).isEqualTo(3);
        assertThat(trial.err()).isEqualTo("file \"<stdin>\": is not text in UTF-8\n");
        assertThat(Trial.piped("crawl\n".getBytes(StandardCharsets.UTF_16LE)).status())
                .isEqualTo(1);
    }

    @Test
    void readsPastAByteOrderMark() {
        assertThat(Trial.piped("\uFEFFopen demo\ncrawl\n").status()).isZero();
    }

    @Test
    void refusesAnEndlessLine() {
        Trial trial = Trial.piped("x".repeat(1_000_000) + "\n");
        assertThat(trial.status()).isEqualTo(1);
        assertThat(trial.err()).contains("is too long").hasSizeLessThan(300);
    }

    @Test
    void neutralizesControlCharacters() {
        assertThat(Trial.of("tire \u001B[31mred").err())
                .doesNotContain("\u001B")
                .contains("\\u001B");
    }

    @Test
    void neverShowsATypeOfJava() {
        String err = Trial.of("engine 99999999999999999999 hp").err()
                + Trial.of("open /").err()
                + Trial.of("axle 1e999").err();
        assertThat(err).doesNotContain("Exception", "java.", "drivetrain.", "\tat ");
    }

    @Test
    void writesOneDocumentALine() {
        Trial trial = Trial.called(
                "--output", "json", "-c", "open demo", "-c", "cruise 65 mph", "-c", "crawl", "-c", "torque");
        assertThat(trial.out().lines()).hasSize(3).allMatch(line -> line.startsWith("{\"question\":\""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"table", "plain", "csv", "json", "markdown"})
    void takesTheFormAsAnOptionOrASetting(String form) {
        Trial option = Trial.called("--output=" + form, "--units", "metric", "-c", "open demo", "-c", "crawl");
        Trial setting = Trial.of("output " + form, "units metric", "open demo", "crawl");
        assertThat(option).isEqualTo(setting);
        assertThat(option.out()).contains("km/h");
    }

    @Test
    void givesTheSameBytesUnderEveryLocaleAndTimeZone() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.ROOT);
            Trial root = Trial.of("open demo", "check", "TITLE x", "torque");
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
            assertThat(Trial.of("open demo", "check", "TITLE x", "torque")).isEqualTo(root);
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(Trial.of("open demo", "check", "TITLE x", "torque")).isEqualTo(root);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void showsUsageAndVersion() {
        assertThat(Trial.called("--help").out()).startsWith("usage: drivetrain");
        assertThat(Trial.called("--version").out()).matches("drivetrain [0-9]+\\.[0-9]+\\.[0-9]+\\S*\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--outpt", "stray", "-c", "--units=furlongs", "--output=xml", "--debug=yes", "-x"})
    void refusesAWrongCall(String word) {
        Trial trial = Trial.called(word);
        assertThat(trial.status()).isEqualTo(2);
        assertThat(trial.out()).isEmpty();
        assertThat(trial.err().lines().count()).isBetween(2L, 4L);
    }

    @Test
    void refusesLinesAndAScriptTogether() {
        assertThat(Trial.called("-c", "show", "--file", "x").status()).isEqualTo(2);
    }

    @Test
    void usesTheCatalogThatItIsGiven() throws IOException {
        Path catalog = folder.resolve("shop.yaml");
        Files.writeString(
                catalog,
                "document: drivetrain-catalog\nversion: 1\ntitle: Shop\naxles:\n  - {name: own-axle, ratio: 41/11}\n");
        Trial trial = Trial.called("--catalog", catalog.toString(), "-c", "axle own-axle", "-c", "axle");
        assertThat(trial.status()).isZero();
        assertThat(trial.out()).contains("own-axle");
        Files.writeString(catalog, "document: drivetrain-catalog\nversion: 1\ntitle: Shop\naxels: []\n");
        Trial refused = Trial.called("--catalog", catalog.toString(), "-c", "axle");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).startsWith(catalog + ":4:1: ").contains("near: axles");
    }
}
