package drivetrain.repl.shell;

import drivetrain.quantity.UnitSystem;
import drivetrain.report.text.Page;
import drivetrain.report.text.Signs;
import drivetrain.report.text.Styler;
import java.util.OptionalInt;

/**
 * What an answer is written on: a screen, a file or a pipe.
 *
 * @param signs the signs that it can show
 * @param width its columns; empty where no line is wrapped
 * @param height its lines
 * @param styler marks what the words mean
 */
record Paper(Signs signs, OptionalInt width, int height, Styler styler) {

    private static final int USUAL_HEIGHT = 24;

    /** A file or a pipe: the same bytes under every locale. */
    static final Paper FILE = new Paper(Signs.ASCII, OptionalInt.empty(), USUAL_HEIGHT, Styler.NONE);

    Page page(UnitSystem units) {
        Page page = width.isPresent() ? Page.screen(units, width.getAsInt(), height) : Page.endless(units);
        return page.withSigns(signs).withStyler(styler);
    }
}
