package drivetrain.repl.shell;

import drivetrain.repl.command.Line;
import java.io.BufferedReader;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** Reads lines without keeping more of an endless one than is needed to refuse it. */
final class BoundedLine {

    private BoundedLine() {}

    /** Reads up to the next line end; null at the end of the text. A line that is too long loses what lies beyond the limit and one character. */
    static @Nullable String read(BufferedReader reader) throws IOException {
        StringBuilder line = new StringBuilder();
        int sign = reader.read();
        if (sign < 0) {
            return null;
        }
        while (sign >= 0 && sign != '\n') {
            if (line.length() <= Line.LONGEST) {
                line.append((char) sign);
            }
            sign = reader.read();
        }
        int last = line.length() - 1;
        if (last >= 0 && line.charAt(last) == '\r') {
            line.setLength(last);
        }
        return line.toString();
    }
}
