package drivetrain.report.text;

import drivetrain.quantity.UnitSystem;
import java.util.OptionalInt;

/**
 * Where a report is written to.
 *
 * @param units the units of the figures
 * @param signs the signs that can be shown
 * @param width the columns of the screen, at least {@value #LEAST_WIDTH}; empty for a file or a pipe, where no line is wrapped
 * @param height the lines that a drawing may take, at least {@value #LEAST_HEIGHT}
 * @param styler marks headings, answers and verdicts
 */
public record Page(UnitSystem units, Signs signs, OptionalInt width, int height, Styler styler) {

    /** The least width. */
    public static final int LEAST_WIDTH = 20;

    /** The least height of a drawing. */
    public static final int LEAST_HEIGHT = 10;

    private static final int USUAL_HEIGHT = 24;

    /**
     * Checks width and height.
     *
     * @throws IllegalArgumentException if one is too small
     */
    public Page {
        if (width.isPresent() && width.getAsInt() < LEAST_WIDTH) {
            throw new IllegalArgumentException("width " + width.getAsInt() + "; allowed: " + LEAST_WIDTH + " or more");
        }
        if (height < LEAST_HEIGHT) {
            throw new IllegalArgumentException("height " + height + "; allowed: " + LEAST_HEIGHT + " or more");
        }
    }

    /**
     * Makes a page for a file or a pipe: no wrapping, every sign, no marks.
     *
     * @param units the units of the figures
     * @return the page
     */
    public static Page endless(UnitSystem units) {
        return new Page(units, Signs.UNICODE, OptionalInt.empty(), USUAL_HEIGHT, Styler.NONE);
    }

    /**
     * Makes a page for a screen: every sign, no marks.
     *
     * @param units the units of the figures
     * @param columns the columns of the screen; fewer than {@value #LEAST_WIDTH} are taken as that many
     * @param lines the lines of the screen; fewer than {@value #LEAST_HEIGHT} are taken as that many
     * @return the page
     */
    public static Page screen(UnitSystem units, int columns, int lines) {
        int width = Math.max(LEAST_WIDTH, columns);
        return new Page(units, Signs.UNICODE, OptionalInt.of(width), Math.max(LEAST_HEIGHT, lines), Styler.NONE);
    }

    /**
     * Changes the signs.
     *
     * @param other the signs that can be shown
     * @return a copy with these signs
     */
    public Page withSigns(Signs other) {
        return new Page(units, other, width, height, styler);
    }

    /**
     * Changes the marks.
     *
     * @param other marks headings, answers and verdicts
     * @return a copy with this styler
     */
    public Page withStyler(Styler other) {
        return new Page(units, signs, width, height, other);
    }
}
