package drivetrain.repl.shell;

import drivetrain.report.text.Style;
import drivetrain.report.text.Styler;

/** Marks by the colors of ECMA-48 (SGR), which leave the choice of shade to the screen. */
final class ColorStyler implements Styler {

    /** The one styler of this kind. */
    static final Styler INSTANCE = new ColorStyler();

    private static final String END = "\u001B[0m";

    private ColorStyler() {}

    @Override
    public String apply(Style style, String text) {
        String start = start(style);
        return start.isEmpty() || text.isBlank() ? text : start + text + END;
    }

    private static String start(Style style) {
        return switch (style) {
            case PLAIN -> "";
            case HEADING -> "\u001B[4m";
            case ANSWER -> "\u001B[1m";
            case VERDICT_GOOD -> "\u001B[32m";
            case VERDICT_MARGINAL -> "\u001B[33m";
            case VERDICT_BAD -> "\u001B[1;31m";
            case FAINT -> "\u001B[2m";
        };
    }
}
