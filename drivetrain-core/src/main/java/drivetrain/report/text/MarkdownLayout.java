package drivetrain.report.text;

import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Figure;
import drivetrain.report.Alignment;
import drivetrain.report.Block;
import drivetrain.report.Cautions;
import drivetrain.report.Cell;
import drivetrain.report.Drawing;
import drivetrain.report.Facts;
import drivetrain.report.Grid;
import drivetrain.report.Notes;
import drivetrain.report.Sentence;
import drivetrain.report.Steps;
import drivetrain.report.Verdicts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Writes each kind of block for {@link MarkdownText}. */
final class MarkdownLayout implements Block.Layout<String> {

    private final Page page;
    private final Signs signs;

    MarkdownLayout(Page page) {
        this.page = page;
        this.signs = page.signs();
    }

    private String text(String text) {
        return MarkdownText.escape(signs.text(text));
    }

    private String text(Figure figure) {
        return MarkdownText.escape(signs.text(figure, page.units()));
    }

    private String text(Optional<Figure> figure) {
        return figure.map(this::text).orElse("");
    }

    private String text(Cell cell) {
        return MarkdownText.escape(CellText.of(cell, page));
    }

    private String title(String title) {
        return title.isBlank() ? "" : "### " + text(title) + "\n\n";
    }

    private static void row(StringBuilder table, List<String> cells) {
        table.append("| ").append(String.join(" | ", cells)).append(" |\n");
    }

    private static StringBuilder table(String title, List<String> heads, List<String> sides) {
        StringBuilder table = new StringBuilder(title);
        row(table, heads);
        row(table, sides);
        return table;
    }

    @Override
    public String sentence(Sentence block) {
        String sentence = MarkdownText.escapeAtStart(signs.text(block.text()));
        return block.key().equals("answer") ? "**" + sentence + "**\n" : sentence + "\n";
    }

    @Override
    public String grid(Grid block) {
        List<ShownColumn> columns = ShownColumn.of(block, page);
        List<String> heads = new ArrayList<>();
        List<String> sides = new ArrayList<>();
        for (ShownColumn column : columns) {
            String unit = column.unit().isEmpty() ? "" : " (" + MarkdownText.escape(column.unit()) + ")";
            heads.add(text(column.column().heading()) + unit);
            sides.add(column.column().alignment() == Alignment.START ? "---" : "---:");
        }
        StringBuilder table = table(title(block.title()), heads, sides);
        for (List<Cell> row : block.rows()) {
            row(table, columns.stream().map(column -> cell(column, row)).toList());
        }
        return table.toString();
    }

    private String cell(ShownColumn column, List<Cell> row) {
        Cell cell = row.get(column.index());
        return ShownColumn.figure(cell)
                .map(figure -> MarkdownText.escape(column.text(figure, signs)))
                .orElseGet(() -> text(cell));
    }

    @Override
    public String facts(Facts block) {
        if (block.facts().isEmpty()) {
            return "";
        }
        StringBuilder table = table(title(block.title()), List.of("name", "value"), List.of("---", "---"));
        for (Facts.Fact fact : block.facts()) {
            String value = text(fact.value());
            row(table, List.of(text(fact.name()), value.isEmpty() ? "none" : value));
        }
        return table.toString();
    }

    @Override
    public String notes(Notes block) {
        StringBuilder list = new StringBuilder(block.assumptions().isEmpty() ? "" : title("Assumptions"));
        for (Assumption assumption : block.assumptions()) {
            list.append("- ")
                    .append(assumption.flagged() ? "**uncertain:** " : "")
                    .append(MarkdownText.escapeAtStart(signs.text(assumption.statement())))
                    .append(" (")
                    .append(text(assumption.source().toString()))
                    .append(")\n");
        }
        return list.toString();
    }

    @Override
    public String verdicts(Verdicts block) {
        if (block.findings().isEmpty()) {
            return "";
        }
        StringBuilder table = table(
                title("Checks"),
                List.of("verdict", "check", "value", "limit", "margin", "meaning", "rule"),
                List.of("---", "---", "---:", "---:", "---:", "---", "---"));
        for (Finding finding : block.findings()) {
            row(
                    table,
                    List.of(
                            "**" + finding.verdict().label() + "**",
                            text(finding.checked()),
                            text(finding.value()),
                            text(finding.limit()),
                            text(finding.margin()),
                            text(finding.statement()),
                            text(finding.rule().toString())));
        }
        return table.toString();
    }

    @Override
    public String steps(Steps block) {
        Working working = block.working();
        StringBuilder text = new StringBuilder(title("Working: " + working.question()));
        if (!working.inputs().isEmpty()) {
            text.append(table("", List.of("input", "symbol", "value", "origin"), List.of("---", "---", "---:", "---")));
            for (Working.Input input : working.inputs()) {
                row(
                        text,
                        List.of(text(input.name()), text(input.symbol()), text(input.figure()), text(input.origin())));
            }
            text.append('\n');
        }
        int number = 0;
        for (Working.Step step : working.steps()) {
            number++;
            text.append(number).append(". ").append(MarkdownText.escapeAtStart(signs.text(step.name())));
            text.append(": ").append(text(step.formula())).append(" = ").append(text(step.result()));
            text.append('\n');
        }
        if (!working.sources().isEmpty()) {
            text.append("\nSources:\n\n");
        }
        for (Source source : working.sources()) {
            text.append("- ")
                    .append(MarkdownText.escapeAtStart(signs.text(source.toString())))
                    .append('\n');
        }
        return text.toString();
    }

    @Override
    public String cautions(Cautions block) {
        StringBuilder text = new StringBuilder();
        for (Caution caution : block.cautions()) {
            text.append(text.length() == 0 ? "" : ">\n").append("> **Caution, ");
            text.append(text(caution.hazard())).append(":** ").append(text(caution.text()));
            text.append('\n');
        }
        return text.toString();
    }

    @Override
    public String drawing(Drawing block) {
        Page endless = new Page(page.units(), signs, OptionalInt.empty(), page.height(), Styler.NONE);
        StringBuilder drawing = new StringBuilder();
        PlotText.of(block.plot(), endless, 0).forEach(line -> line.write(drawing, Styler.NONE));
        String fence = "```";
        while (drawing.indexOf(fence) >= 0) {
            fence += "`";
        }
        return title(block.plot().title()) + fence + "text\n" + drawing + fence + "\n";
    }
}
