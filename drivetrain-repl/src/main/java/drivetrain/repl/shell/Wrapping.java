package drivetrain.repl.shell;

import java.util.ArrayList;
import java.util.List;

/** Lines broken at blanks, so that none is wider than the screen. */
final class Wrapping {

    private static final String INDENT = "  ";

    private Wrapping() {}

    /** Breaks a line; what goes on is indented. A word wider than the screen is broken where it meets the edge. */
    static List<String> of(String line, int width) {
        List<String> pieces = new ArrayList<>();
        String rest = line;
        while (rest.length() > width) {
            int indent = pieces.isEmpty() ? 0 : INDENT.length();
            int blank = rest.lastIndexOf(' ', width);
            int end = blank > indent && !rest.substring(0, blank).isBlank() ? blank : width;
            pieces.add(rest.substring(0, end));
            rest = INDENT + rest.substring(end).stripLeading();
        }
        pieces.add(rest);
        return pieces;
    }
}
