package drivetrain.repl.shell;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.report.text.Signs;
import drivetrain.report.text.Style;
import drivetrain.report.text.Styler;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class ConsoleTest {

    private static Console screen(Charset charset, Map<String, String> environment) {
        return new Console(true, true, charset, environment);
    }

    @Test
    void showsTheSignsThatTheCharsetHas() {
        assertThat(screen(StandardCharsets.UTF_8, Map.of()).signs()).isEqualTo(Signs.UNICODE);
        assertThat(screen(StandardCharsets.US_ASCII, Map.of()).signs()).isEqualTo(Signs.ASCII);
        assertThat(Console.NONE.signs()).isEqualTo(Signs.ASCII);
        assertThat(Console.NONE.paper(true)).isEqualTo(Paper.FILE);
    }

    @Test
    void marksByColorOnlyWhereItIsWanted() {
        Map<String, String> colored = Map.of("TERM", "xterm-256color");
        assertThat(screen(StandardCharsets.UTF_8, colored).styler(true)).isEqualTo(ColorStyler.INSTANCE);
        assertThat(screen(StandardCharsets.UTF_8, colored).styler(false)).isEqualTo(Styler.NONE);
        assertThat(screen(StandardCharsets.UTF_8, Map.of("TERM", "dumb")).styler(true))
                .isEqualTo(Styler.NONE);
        assertThat(screen(StandardCharsets.UTF_8, Map.of()).styler(true)).isEqualTo(Styler.NONE);
        assertThat(new Console(false, false, StandardCharsets.UTF_8, colored).styler(true))
                .isEqualTo(Styler.NONE);
    }

    /** As the informal convention at no-color.org has it: set and not empty. */
    @Test
    void obeysTheWishForNoColor() {
        assertThat(screen(StandardCharsets.UTF_8, Map.of("TERM", "xterm", "NO_COLOR", "1"))
                        .styler(true))
                .isEqualTo(Styler.NONE);
        assertThat(screen(StandardCharsets.UTF_8, Map.of("TERM", "xterm", "NO_COLOR", ""))
                        .styler(true))
                .isEqualTo(ColorStyler.INSTANCE);
    }

    @Test
    void takesTheWidthFromTheEnvironment() {
        assertThat(screen(StandardCharsets.UTF_8, Map.of("COLUMNS", "60"))
                        .paper(true)
                        .width())
                .hasValue(60);
        for (String unusable : new String[] {"", "0", "wide", "99999", "-4"}) {
            assertThat(screen(StandardCharsets.UTF_8, Map.of("COLUMNS", unusable))
                            .paper(true)
                            .width())
                    .isEqualTo(OptionalInt.empty());
        }
    }

    @Test
    void marksEveryStyleButPlainText() {
        for (Style style : Style.values()) {
            String marked = ColorStyler.INSTANCE.apply(style, "met");
            assertThat(marked.replaceAll("\u001B\\[[0-9;]*m", "")).isEqualTo("met");
            assertThat(marked.equals("met")).isEqualTo(style == Style.PLAIN);
        }
        assertThat(ColorStyler.INSTANCE.apply(Style.FAINT, "  ")).isEqualTo("  ");
    }

    @Test
    void looksAtTheProcess() {
        Console process = Console.ofProcess();
        assertThat(process.showsOutput()).isEqualTo(process.isInteractive() || process.showsOutput());
        assertThat(process.environment()).isEqualTo(System.getenv());
    }
}
