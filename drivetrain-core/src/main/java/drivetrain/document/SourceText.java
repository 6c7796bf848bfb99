package drivetrain.document;

import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.Arrays;
import java.util.OptionalInt;

/** The text of a document with the name that its reader knows it by; finds the line and column of every index. */
final class SourceText {

    private final String name;
    private final String text;
    private final int[] lineStarts;

    /** Where the pairs of surrogates begin; each makes one character of two. */
    private final int[] pairs;

    private SourceText(String name, String text) {
        this.name = name;
        this.text = text;
        this.lineStarts = lineStarts(text);
        this.pairs = pairs(text);
    }

    private static int[] pairs(String text) {
        int[] pairs = new int[0];
        int count = 0;
        for (int i = 0; i < text.length(); i++) {
            if (Character.isHighSurrogate(text.charAt(i))) {
                pairs = count == pairs.length ? Arrays.copyOf(pairs, 2 * count + 16) : pairs;
                pairs[count++] = i;
            }
        }
        return Arrays.copyOf(pairs, count);
    }

    /**
     * Takes a decoded text.
     *
     * @throws RefusedException if it is too long or holds a character that is refused
     */
    static SourceText of(String name, String text) {
        if (text.length() > Limits.DOCUMENT_BYTES) {
            throw tooLong(name);
        }
        SourceText source = new SourceText(name, text);
        OptionalInt refused = Characters.firstRefused(text);
        if (refused.isPresent()) {
            int index = refused.getAsInt();
            throw source.refusal(index, "has the character " + Characters.name(text, index), "printable characters");
        }
        return source;
    }

    static RefusedException tooLong(String name) {
        return Refusal.of("document", "", "is longer than " + Limits.DOCUMENT_BYTES / 1_000_000 + " MB")
                .allowing("a shelf that is split over several files")
                .in(new Place(name, 0, 0))
                .asException();
    }

    private static int[] lineStarts(String text) {
        int[] starts = new int[64];
        int lines = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean lineEnds = c == '\n' || (c == '\r' && !text.startsWith("\n", i + 1));
            if (lineEnds) {
                if (lines == starts.length) {
                    starts = Arrays.copyOf(starts, 2 * lines);
                }
                starts[lines++] = i + 1;
            }
        }
        return Arrays.copyOf(starts, lines);
    }

    String name() {
        return name;
    }

    String text() {
        return text;
    }

    /** Returns the line and column of an index; the column counts characters as a person does, not halves of a surrogate pair. */
    Place place(int index) {
        int at = Math.max(0, Math.min(index, text.length()));
        int found = Arrays.binarySearch(lineStarts, at);
        int line = found >= 0 ? found : -found - 2;
        return new Place(name, line + 1, 1 + characters(at) - characters(lineStarts[line]));
    }

    /** Returns the index of a line and column, both counted from 1; clamped into the text. */
    int index(int line, int column) {
        int start = lineStarts[Math.max(0, Math.min(line - 1, lineStarts.length - 1))];
        int character = characters(start) + Math.max(0, column - 1);
        int low = 0;
        int high = pairs.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (pairs[middle] - middle < character) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return Math.min(character + low, text.length());
    }

    /** Returns how many characters stand before an index. */
    private int characters(int index) {
        int found = Arrays.binarySearch(pairs, index);
        return index - (found >= 0 ? found : -found - 1);
    }

    RefusedException refusal(int index, String problem, String allowed) {
        return Refusal.of("document", "", problem)
                .allowing(allowed)
                .in(place(index))
                .asException();
    }
}
