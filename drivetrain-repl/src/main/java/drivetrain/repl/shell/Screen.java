package drivetrain.repl.shell;

import drivetrain.repl.command.Result;
import drivetrain.repl.session.Session;
import drivetrain.report.text.Signs;
import drivetrain.report.text.Styler;
import java.util.List;
import java.util.OptionalInt;
import org.jline.terminal.Terminal;

/** The screen of a terminal: as wide as it is at the moment. */
final class Screen {

    private static final int USUAL_WIDTH = 80;
    private static final int USUAL_HEIGHT = 24;

    private final Terminal terminal;
    private final Signs signs;
    private final Styler styler;

    Screen(Terminal terminal, Signs signs, Styler styler) {
        this.terminal = terminal;
        this.signs = signs;
        this.styler = styler;
    }

    int width() {
        return terminal.getSize().getColumns() > 0 ? terminal.getSize().getColumns() : USUAL_WIDTH;
    }

    private int height() {
        return terminal.getSize().getRows() > 0 ? terminal.getSize().getRows() : USUAL_HEIGHT;
    }

    /** Shows what a command gave back. */
    void show(Result result) {
        Session next = result.session();
        result.answer().ifPresent(answer -> {
            Paper paper = new Paper(signs, OptionalInt.of(width()), height(), styler);
            terminal.writer().print(AnswerText.of(answer, next.output(), paper.page(next.units())));
        });
        if (!result.notice().isEmpty()) {
            lines(List.of(result.notice()));
        }
        terminal.flush();
    }

    /** Shows lines of text, broken at blanks where they are wider than the screen. */
    void lines(List<String> lines) {
        for (String line : lines) {
            for (String piece : Wrapping.of(signs.text(line), width())) {
                terminal.writer().print(piece + "\n");
            }
        }
        terminal.flush();
    }
}
