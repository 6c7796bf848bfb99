package drivetrain.report.text;

import drivetrain.report.Alignment;
import drivetrain.report.Cell;
import drivetrain.report.Grid;
import drivetrain.report.text.Line.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A table on a page: columns below their heads and units; where they do not fit, with the heads broken into lines; where that does not fit
 * either, with long texts broken too; and where not even their words fit, one record a row with one value a line. A missing figure has a number in
 * brackets, explained below the table.
 */
final class GridText {

    private static final int GAP = 2;

    /** A text in a column is not broken into less than this. */
    private static final int NARROWEST_TEXT = 16;

    /** How far the further lines of a broken text stand in. */
    private static final int HANG = 2;

    private final Grid grid;
    private final Page page;
    private final List<ShownColumn> columns;
    private final List<String> reasons;

    private GridText(Grid grid, Page page) {
        this.grid = grid;
        this.page = page;
        this.columns = ShownColumn.of(grid, page);
        this.reasons = reasons(grid);
    }

    /** Sets the rows, without the title, indented. */
    static List<Line> of(Grid grid, Page page, int indent) {
        GridText text = new GridText(grid, page);
        int room = page.width().orElse(Integer.MAX_VALUE) - indent;
        for (boolean broken : new boolean[] {false, true}) {
            int[] widths = text.widths(broken);
            if (width(widths) <= room) {
                return text.table(widths, indent);
            }
        }
        int[] narrowed = text.narrowed(room);
        return width(narrowed) <= room ? text.table(narrowed, indent) : text.records(indent);
    }

    private static int width(int[] widths) {
        return Arrays.stream(widths).sum() + GAP * (widths.length - 1);
    }

    /** Takes from the widest texts what does not fit, as far as their words allow. */
    private int[] narrowed(int room) {
        int[] widths = widths(true);
        int[] least = new int[widths.length];
        for (int index = 0; index < widths.length; index++) {
            least[index] = least(columns.get(index), widths[index]);
        }
        while (width(widths) > room) {
            int widest = -1;
            for (int index = 0; index < widths.length; index++) {
                if (widths[index] > least[index] && (widest < 0 || widths[index] > widths[widest])) {
                    widest = index;
                }
            }
            if (widest < 0) {
                return widths;
            }
            widths[widest]--;
        }
        return widths;
    }

    /** The width to which a column can be narrowed: that of its longest word, and never too little to be read. */
    private int least(ShownColumn column, int width) {
        if (column.column().alignment() != Alignment.START) {
            return width;
        }
        int word = longestWord(page.signs().text(column.column().heading()));
        for (List<Cell> row : grid.rows()) {
            word = Math.max(word, longestWord(text(column, row)));
        }
        return Math.min(width, Math.max(NARROWEST_TEXT, word + HANG));
    }

    private static int longestWord(String text) {
        return Arrays.stream(text.split(" ", -1))
                .mapToInt(DisplayWidth::of)
                .max()
                .orElse(0);
    }

    private static List<String> reasons(Grid grid) {
        Set<String> reasons = new LinkedHashSet<>();
        for (List<Cell> row : grid.rows()) {
            for (Cell cell : row) {
                cell.fold(figure -> false, text -> false, reasons::add, () -> false);
            }
        }
        return List.copyOf(reasons);
    }

    private int[] widths(boolean brokenHeads) {
        int[] widths = new int[columns.size()];
        for (int index = 0; index < widths.length; index++) {
            ShownColumn column = columns.get(index);
            String heading = page.signs().text(column.column().heading());
            int head = brokenHeads ? longestWord(heading) : DisplayWidth.of(heading);
            int width = Math.max(head, DisplayWidth.of(column.unit()));
            for (List<Cell> row : grid.rows()) {
                width = Math.max(width, DisplayWidth.of(text(column, row)));
            }
            widths[index] = width;
        }
        return widths;
    }

    private String text(ShownColumn column, List<Cell> row) {
        return row.get(column.index())
                .<String>fold(
                        figure -> column.text(figure, page.signs()),
                        page.signs()::text,
                        reason -> "[" + (reasons.indexOf(reason) + 1) + "]",
                        () -> "");
    }

    private List<Line> table(int[] widths, int indent) {
        List<Line> lines = new ArrayList<>(head(widths));
        String rule = page.signs().horizontal().repeat(Arrays.stream(widths).sum() + GAP * (widths.length - 1));
        lines.add(Line.of(Style.FAINT, rule));
        for (List<Cell> row : grid.rows()) {
            lines.addAll(rows(widths, row));
        }
        List<Line> moved = new ArrayList<>();
        lines.forEach(line -> moved.add(line.indented(indent)));
        for (int number = 1; number <= reasons.size(); number++) {
            String reason = "not evaluated because " + page.signs().text(reasons.get(number - 1));
            String mark = " ".repeat(indent) + "[" + number + "] ";
            moved.addAll(Flow.of(page.width(), List.of(Span.of(mark)), mark.length(), List.of(Span.of(reason))));
        }
        return moved;
    }

    /** One row, on as many lines as its tallest text. */
    private List<Line> rows(int[] widths, List<Cell> row) {
        List<List<String>> cells = new ArrayList<>();
        int tallest = 0;
        for (int index = 0; index < widths.length; index++) {
            cells.add(broken(text(columns.get(index), row), widths[index], HANG));
            tallest = Math.max(tallest, cells.get(index).size());
        }
        List<Line> lines = new ArrayList<>();
        for (int level = 0; level < tallest; level++) {
            int at = level;
            lines.add(row(
                    widths,
                    Style.PLAIN,
                    cells.stream()
                            .map(cell -> at < cell.size() ? cell.get(at) : "")
                            .toList()));
        }
        return lines;
    }

    private List<Line> head(int[] widths) {
        List<List<String>> heads = new ArrayList<>();
        int tallest = 0;
        for (int index = 0; index < widths.length; index++) {
            heads.add(broken(page.signs().text(columns.get(index).column().heading()), widths[index], 0));
            tallest = Math.max(tallest, heads.get(index).size());
        }
        List<Line> lines = new ArrayList<>();
        for (int level = tallest; level > 0; level--) {
            int missing = level;
            List<String> texts = heads.stream()
                    .map(head -> head.size() >= missing ? head.get(head.size() - missing) : "")
                    .toList();
            lines.add(row(widths, Style.HEADING, texts));
        }
        if (columns.stream().anyMatch(column -> !column.unit().isEmpty())) {
            lines.add(row(
                    widths, Style.FAINT, columns.stream().map(ShownColumn::unit).toList()));
        }
        return lines;
    }

    /** A text in a column of a width; where it is broken, its further lines stand in by so much. */
    private static List<String> broken(String text, int width, int hang) {
        if (DisplayWidth.of(text) <= width) {
            return List.of(text);
        }
        return Flow.of(OptionalInt.of(width), List.of(), hang, List.of(Span.of(text))).stream()
                .map(Line::text)
                .toList();
    }

    private Line row(int[] widths, Style style, List<String> texts) {
        List<Span> spans = new ArrayList<>();
        for (int index = 0; index < widths.length; index++) {
            String text = texts.get(index);
            boolean start = columns.get(index).column().alignment() == Alignment.START;
            String padded =
                    start ? DisplayWidth.padEnd(text, widths[index]) : DisplayWidth.padStart(text, widths[index]);
            spans.add(new Span(style, index == 0 ? padded : " ".repeat(GAP) + padded));
        }
        return new Line(spans);
    }

    private List<Line> records(int indent) {
        List<Line> lines = new ArrayList<>();
        for (List<Cell> row : grid.rows()) {
            String name = CellText.of(row.get(0), page);
            lines.addAll(Flow.of(
                    page.width(),
                    List.of(Span.of(" ".repeat(indent))),
                    indent,
                    List.of(new Span(Style.HEADING, name))));
            for (int index = 1; index < row.size(); index++) {
                String value = CellText.of(row.get(index), page);
                if (!value.isEmpty()) {
                    String heading = page.signs().text(grid.columns().get(index).heading()) + ":";
                    String lead = " ".repeat(indent + 2);
                    lines.addAll(Flow.of(
                            page.width(),
                            List.of(Span.of(lead)),
                            indent + 4,
                            List.of(new Span(Style.FAINT, heading), Span.of(value))));
                }
            }
        }
        return lines;
    }
}
