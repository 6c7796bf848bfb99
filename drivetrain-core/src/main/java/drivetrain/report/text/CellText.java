package drivetrain.report.text;

import drivetrain.report.Cell;

/** A cell as text that stands by itself. */
final class CellText {

    private CellText() {}

    /** Writes a figure with its unit, text, or why there is no figure; nothing for an empty cell. */
    static String of(Cell cell, Page page) {
        return cell.<String>fold(
                figure -> page.signs().text(figure, page.units()),
                page.signs()::text,
                reason -> "not evaluated because " + page.signs().text(reason),
                () -> "");
    }
}
