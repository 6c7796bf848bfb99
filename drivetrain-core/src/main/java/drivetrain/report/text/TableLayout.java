package drivetrain.report.text;

import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.finding.Working;
import drivetrain.report.Block;
import drivetrain.report.Cautions;
import drivetrain.report.Cell;
import drivetrain.report.Column;
import drivetrain.report.Drawing;
import drivetrain.report.Facts;
import drivetrain.report.Grid;
import drivetrain.report.Notes;
import drivetrain.report.Sentence;
import drivetrain.report.Steps;
import drivetrain.report.Verdicts;
import drivetrain.report.text.Line.Span;
import java.util.ArrayList;
import java.util.List;

/** Sets each kind of block into lines for {@link TableText}. */
final class TableLayout implements Block.Layout<List<Line>> {

    private static final int INDENT = 2;
    private static final int LEAST_VALUE_WIDTH = 24;
    private static final String BULLET = "  - ";

    private final Page page;
    private final Signs signs;

    TableLayout(Page page) {
        this.page = page;
        this.signs = page.signs();
    }

    @Override
    public List<Line> sentence(Sentence block) {
        Style style = block.key().equals("answer") ? Style.ANSWER : Style.PLAIN;
        return flow("", 0, new Span(style, signs.text(block.text())));
    }

    @Override
    public List<Line> grid(Grid block) {
        List<Line> lines = title(block.title());
        if (block.rows().isEmpty()) {
            lines.addAll(flow("  ", INDENT, Span.of("none")));
        } else {
            lines.addAll(GridText.of(block, page, INDENT));
        }
        return lines;
    }

    @Override
    public List<Line> facts(Facts block) {
        List<Line> lines = title(block.title());
        int names = block.facts().stream()
                .mapToInt(fact -> DisplayWidth.of(signs.text(fact.name())))
                .max()
                .orElse(0);
        int values = INDENT + names + 2;
        boolean aligned = page.width().isEmpty() || page.width().getAsInt() - values >= LEAST_VALUE_WIDTH;
        for (Facts.Fact fact : block.facts()) {
            String name = signs.text(fact.name());
            String text = CellText.of(fact.value(), page);
            Span value = Span.of(text.isEmpty() ? "none" : text);
            if (aligned) {
                Span lead = new Span(Style.FAINT, "  " + DisplayWidth.padEnd(name, names) + "  ");
                lines.addAll(Flow.of(page.width(), List.of(lead), values, List.of(value)));
            } else {
                lines.addAll(flow("  ", 2 * INDENT, new Span(Style.FAINT, name + ":"), value));
            }
        }
        return lines;
    }

    @Override
    public List<Line> notes(Notes block) {
        List<Line> lines = new ArrayList<>();
        if (!block.assumptions().isEmpty()) {
            lines.addAll(title("Assumptions"));
        }
        for (Assumption assumption : block.assumptions()) {
            List<Span> words = new ArrayList<>();
            if (assumption.flagged()) {
                words.add(new Span(Style.VERDICT_MARGINAL, "uncertain:"));
            }
            words.add(Span.of(signs.text(assumption.statement())));
            words.add(new Span(Style.FAINT, "[" + assumption.source().kind().label() + "]"));
            lines.addAll(Flow.of(page.width(), List.of(Span.of(BULLET)), BULLET.length(), words));
        }
        return lines;
    }

    @Override
    public List<Line> verdicts(Verdicts block) {
        List<Line> lines = new ArrayList<>();
        if (!block.findings().isEmpty()) {
            lines.addAll(title("Checks"));
        }
        int widest = block.findings().stream()
                .mapToInt(finding -> finding.verdict().label().length())
                .max()
                .orElse(0);
        int hang = INDENT + widest + 2;
        boolean aligned = page.width().isEmpty() || page.width().getAsInt() - hang >= LEAST_VALUE_WIDTH;
        for (Finding finding : block.findings()) {
            String label = finding.verdict().label();
            Span word = new Span(style(finding.verdict()), "  " + label);
            Span gap = Span.of(aligned ? " ".repeat(hang - INDENT - label.length()) : ", ");
            List<Span> words = List.of(
                    Span.of(FindingText.of(finding, page)),
                    new Span(Style.FAINT, "(" + signs.text(finding.rule().toString()) + ")"));
            lines.addAll(Flow.of(page.width(), List.of(word, gap), aligned ? hang : 2 * INDENT, words));
        }
        return lines;
    }

    static Style style(Verdict verdict) {
        return switch (verdict) {
            case MET -> Style.VERDICT_GOOD;
            case NOT_EVALUATED, MARGINAL -> Style.VERDICT_MARGINAL;
            case EXCEEDED -> Style.VERDICT_BAD;
        };
    }

    @Override
    public List<Line> steps(Steps block) {
        Working working = block.working();
        List<Line> lines = title("Working: " + working.question());
        if (!working.inputs().isEmpty()) {
            lines.addAll(GridText.of(inputs(working), page, INDENT));
            lines.add(Line.BLANK);
        }
        int number = 0;
        for (Working.Step step : working.steps()) {
            number++;
            String lead = "  " + number + ". ";
            String formula = signs.text(step.formula()) + " = " + signs.text(step.result(), page.units());
            lines.addAll(flow(lead, lead.length(), Span.of(signs.text(step.name()) + ":"), Span.of(formula)));
        }
        if (!working.sources().isEmpty()) {
            lines.add(Line.BLANK);
            lines.addAll(flow("  ", INDENT, new Span(Style.HEADING, "Sources")));
        }
        for (Source source : working.sources()) {
            lines.addAll(flow(BULLET, BULLET.length(), Span.of(signs.text(source.toString()))));
        }
        return lines;
    }

    private static Grid inputs(Working working) {
        List<Column> columns = List.of(
                Column.ofText("name", "input"),
                Column.ofText("symbol", "symbol"),
                Column.ofFigures("value", "value"),
                Column.ofText("origin", "origin"));
        List<List<Cell>> rows = working.inputs().stream()
                .map(input -> List.of(
                        Cell.of(input.name()),
                        Cell.of(input.symbol()),
                        Cell.of(input.figure()),
                        Cell.of(input.origin())))
                .toList();
        return new Grid("inputs", "", columns, rows);
    }

    @Override
    public List<Line> cautions(Cautions block) {
        List<Line> lines = new ArrayList<>();
        for (Caution caution : block.cautions()) {
            lines.addAll(flow(
                    "",
                    INDENT,
                    new Span(Style.VERDICT_MARGINAL, "Caution,"),
                    Span.of(signs.text(caution.hazard()) + ":"),
                    Span.of(signs.text(caution.text()))));
        }
        return lines;
    }

    @Override
    public List<Line> drawing(Drawing block) {
        List<Line> lines = title(block.plot().title());
        lines.addAll(PlotText.of(block.plot(), page, lines.size()));
        return lines;
    }

    private List<Line> title(String title) {
        return title.isBlank()
                ? new ArrayList<>()
                : new ArrayList<>(flow("", INDENT, new Span(Style.HEADING, signs.text(title))));
    }

    private List<Line> flow(String lead, int hang, Span... words) {
        List<Span> start = lead.isEmpty() ? List.of() : List.of(Span.of(lead));
        return Flow.of(page.width(), start, hang, List.of(words));
    }
}
