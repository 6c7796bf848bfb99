package drivetrain.report.text;

import drivetrain.report.Alignment;
import drivetrain.report.Cell;
import drivetrain.report.Grid;
import drivetrain.report.text.Line.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A table on a page: columns below their heads and units; where they do not fit, with the heads broken into lines; where that does not fit
 * either, one record a row with one value a line. A missing figure has a number in brackets, explained below the table.
 */
final class GridText {

    private static final int GAP = 2;

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
            if (Arrays.stream(widths).sum() + GAP * (widths.length - 1) <= room) {
                return text.table(widths, indent);
            }
        }
        return text.records(indent);
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
            int head = brokenHeads
                    ? Arrays.stream(heading.split(" ", -1))
                            .mapToInt(DisplayWidth::of)
                            .max()
                            .orElse(0)
                    : DisplayWidth.of(heading);
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
            lines.add(row(
                    widths,
                    Style.PLAIN,
                    columns.stream().map(column -> text(column, row)).toList()));
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

    private List<Line> head(int[] widths) {
        List<List<String>> heads = new ArrayList<>();
        int tallest = 0;
        for (int index = 0; index < widths.length; index++) {
            heads.add(broken(page.signs().text(columns.get(index).column().heading()), widths[index]));
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

    private static List<String> broken(String heading, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : heading.split(" ", -1)) {
            if (line.length() > 0 && DisplayWidth.of(line + " " + word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
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
