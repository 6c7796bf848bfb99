package drivetrain.report.text;

import drivetrain.report.text.Line.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;

/** Words set into lines: broken at spaces, but not between a number and its unit; a word wider than a line goes on in the next line. */
final class Flow {

    private static final Pattern NUMBER = Pattern.compile("\\(?[+-]?[0-9]+(?:\\.[0-9]+)?");

    private static final int UNLIMITED = Integer.MAX_VALUE;

    /** Words with which a unit of two words begins, such as {@code US gal}. */
    private static final Set<String> UNIT_STARTS = Set.of("US", "imp");

    private final int width;
    private final int hang;
    private final List<Line> lines = new ArrayList<>();
    private List<Span> spans = new ArrayList<>();
    private int used;
    private boolean open;

    private Flow(int width, int hang) {
        this.width = width;
        this.hang = hang;
    }

    /**
     * Sets words behind a lead.
     *
     * @param width the columns there are; empty for one line of any length
     * @param lead what stands at the left of the first line, its spaces kept
     * @param hang the columns by which the next lines are indented
     * @param words pieces of text, set apart by spaces
     */
    static List<Line> of(OptionalInt width, List<Span> lead, int hang, List<Span> words) {
        Flow flow = new Flow(width.orElse(UNLIMITED), hang);
        for (Span span : lead) {
            flow.spans.add(span);
            flow.used += DisplayWidth.of(span.text());
        }
        for (Span span : words) {
            flow.put(span);
        }
        flow.endLine();
        return flow.lines;
    }

    private void put(Span span) {
        if (width == UNLIMITED) {
            putWhole(span);
            return;
        }
        String number = "";
        String start = "";
        for (String word : span.text().split(" ", -1)) {
            if (!number.isEmpty() && start.isEmpty() && UNIT_STARTS.contains(word)) {
                start = word + " ";
            } else if (!number.isEmpty()) {
                putTogether(span.style(), number, start + word);
                number = "";
                start = "";
            } else if (NUMBER.matcher(word).matches()) {
                number = word;
            } else if (!word.isEmpty()) {
                put(span.style(), word);
            }
        }
        if (!number.isEmpty()) {
            putTogether(span.style(), number, start.strip());
        }
    }

    /** On a line without an end nothing is broken: the words stand as they are, one blank apart. */
    private void putWhole(Span span) {
        StringBuilder words = new StringBuilder();
        for (String word : span.text().split(" ", -1)) {
            if (!word.isEmpty()) {
                words.append(words.isEmpty() ? "" : " ").append(word);
            }
        }
        if (!words.isEmpty()) {
            if (open) {
                space(span.style());
            }
            append(span.style(), words.toString());
        }
    }

    private void putTogether(Style style, String number, String unit) {
        int needed = DisplayWidth.of(number) + 1 + DisplayWidth.of(unit);
        if (open && used + 1 + needed > width && needed <= width - hang) {
            startLine();
        }
        put(style, number);
        if (!unit.isEmpty()) {
            put(style, unit);
        }
    }

    private void put(Style style, String word) {
        int needed = DisplayWidth.of(word);
        if (used + (open ? 1 : 0) + needed > width && (open || needed <= width - hang)) {
            startLine();
        }
        if (open) {
            space(style);
        }
        String rest = word;
        while (DisplayWidth.of(rest) > width - used) {
            int fitting = DisplayWidth.fitting(rest, width - used);
            append(style, rest.substring(0, fitting));
            rest = rest.substring(fitting);
            startLine();
        }
        append(style, rest);
        open = true;
    }

    private void space(Style style) {
        Span last = spans.get(spans.size() - 1);
        if (last.style() == style) {
            spans.set(spans.size() - 1, new Span(style, last.text() + " "));
        } else {
            spans.add(Span.of(" "));
        }
        used++;
    }

    private void append(Style style, String text) {
        Span last = spans.isEmpty() ? Span.of("") : spans.get(spans.size() - 1);
        if (open && last.style() == style) {
            spans.set(spans.size() - 1, new Span(style, last.text() + text));
        } else {
            spans.add(new Span(style, text));
        }
        used += DisplayWidth.of(text);
        open = true;
    }

    private void startLine() {
        endLine();
        spans = new ArrayList<>();
        spans.add(Span.of(" ".repeat(hang)));
        used = hang;
        open = false;
    }

    private void endLine() {
        lines.add(new Line(spans));
    }
}
