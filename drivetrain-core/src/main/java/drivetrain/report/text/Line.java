package drivetrain.report.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One line of a page.
 *
 * @param spans its pieces from left to right, spaces between them included
 */
record Line(List<Span> spans) {

    /**
     * One piece.
     *
     * @param style what it means
     * @param text the text, fit to be shown
     */
    record Span(Style style, String text) {
        static Span of(String text) {
            return new Span(Style.PLAIN, text);
        }
    }

    static final Line BLANK = new Line(List.of());

    Line {
        spans = List.copyOf(spans);
    }

    static Line of(Style style, String text) {
        return new Line(List.of(new Span(style, text)));
    }

    int width() {
        return spans.stream().mapToInt(span -> DisplayWidth.of(span.text())).sum();
    }

    /** What stands on it, without styles. */
    String text() {
        return spans.stream().map(Span::text).collect(Collectors.joining());
    }

    Line indented(int columns) {
        List<Span> moved = new ArrayList<>();
        moved.add(Span.of(" ".repeat(columns)));
        moved.addAll(spans);
        return new Line(moved);
    }

    /** Writes the line without spaces at its end; a styler sees no space at either end of a piece. */
    void write(StringBuilder target, Styler styler) {
        int lineStart = target.length();
        for (Span span : spans) {
            String text = span.text();
            String inner = text.strip();
            if (inner.isEmpty() || span.style() == Style.PLAIN) {
                target.append(text);
            } else {
                int start = text.indexOf(inner);
                target.append(text, 0, start)
                        .append(styler.apply(span.style(), inner))
                        .append(text, start + inner.length(), text.length());
            }
        }
        int end = target.length();
        while (end > lineStart && target.charAt(end - 1) == ' ') {
            end--;
        }
        target.setLength(end);
        target.append('\n');
    }
}
