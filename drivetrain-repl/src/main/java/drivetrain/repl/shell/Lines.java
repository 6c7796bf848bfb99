package drivetrain.repl.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/** Lines to be run, one after the other, each with its number in its source. */
final class Lines {

    private final String source;
    private final Iterator<String> listed;
    private final Optional<BufferedReader> reader;
    private int number;

    private Lines(String source, Iterator<String> listed, Optional<BufferedReader> reader) {
        this.source = source;
        this.listed = listed;
        this.reader = reader;
    }

    /**
     * One line.
     *
     * @param number its number, counted from 1
     * @param text its text without the line end
     */
    record Numbered(int number, String text) {}

    /** Makes lines from a list. */
    static Lines of(String source, List<String> texts) {
        return new Lines(source, texts.iterator(), Optional.empty());
    }

    /** Makes lines from a text that is read as it comes; a byte order mark at its start is left out. */
    static Lines of(String source, BufferedReader reader) {
        return new Lines(source, Collections.emptyIterator(), Optional.of(reader));
    }

    /** Returns the name of the source as the user knows it. */
    String source() {
        return source;
    }

    /** Returns the next line, or empty at the end. */
    Optional<Numbered> next() throws IOException {
        if (reader.isPresent()) {
            return read(reader.get());
        }
        return listed.hasNext() ? Optional.of(new Numbered(++number, listed.next())) : Optional.empty();
    }

    private Optional<Numbered> read(BufferedReader from) throws IOException {
        String text = BoundedLine.read(from);
        if (text == null) {
            return Optional.empty();
        }
        number++;
        boolean marked = number == 1 && text.startsWith("\uFEFF");
        return Optional.of(new Numbered(number, marked ? text.substring(1) : text));
    }
}
