package drivetrain.repl.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/** Lines to be run, one after the other, each with its number in its source. */
interface Lines {

    /**
     * One line.
     *
     * @param number its number, counted from 1
     * @param text its text without the line end
     */
    record Numbered(int number, String text) {}

    /** Returns the name of the source as the user knows it. */
    String source();

    /** Returns the next line, or empty at the end. */
    Optional<Numbered> next() throws IOException;

    /** Makes lines from a list. */
    static Lines of(String source, List<String> texts) {
        return new Lines() {
            private final Iterator<String> rest = texts.iterator();
            private int number;

            @Override
            public String source() {
                return source;
            }

            @Override
            public Optional<Numbered> next() {
                number++;
                return rest.hasNext() ? Optional.of(new Numbered(number, rest.next())) : Optional.empty();
            }
        };
    }

    /** Makes lines from a text that is read as it comes; a byte order mark at its start is left out. */
    static Lines of(String source, BufferedReader reader) {
        return new Lines() {
            private int number;

            @Override
            public String source() {
                return source;
            }

            @Override
            public Optional<Numbered> next() throws IOException {
                String text = BoundedLine.read(reader);
                if (text == null) {
                    return Optional.empty();
                }
                number++;
                boolean marked = number == 1 && text.startsWith("\uFEFF");
                return Optional.of(new Numbered(number, marked ? text.substring(1) : text));
            }
        };
    }
}
