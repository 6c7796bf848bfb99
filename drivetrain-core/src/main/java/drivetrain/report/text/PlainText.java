package drivetrain.report.text;

import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.report.Block;
import drivetrain.report.Cautions;
import drivetrain.report.Cell;
import drivetrain.report.Drawing;
import drivetrain.report.Facts;
import drivetrain.report.Grid;
import drivetrain.report.LinePlot;
import drivetrain.report.Notes;
import drivetrain.report.Report;
import drivetrain.report.Sentence;
import drivetrain.report.Steps;
import drivetrain.report.Verdicts;
import java.util.List;

/**
 * The format {@code plain}: one {@code name: value unit} a line, for a screen reader and for a search by line. A drawing is told by the ends of
 * its curves. Lines are never broken.
 */
public final class PlainText {

    private PlainText() {}

    /**
     * Writes a report.
     *
     * @param report the report
     * @param page the page; its width and its styler are not used
     * @return the text, each line ended by {@code \n}
     */
    public static String of(Report report, Page page) {
        Layout layout = new Layout(page);
        report.blocks().forEach(block -> block.layOut(layout));
        return layout.text.toString();
    }

    private static final class Layout implements Block.Layout<StringBuilder> {

        private final Page page;
        private final Signs signs;
        private final StringBuilder text = new StringBuilder();

        Layout(Page page) {
            this.page = page;
            this.signs = page.signs();
        }

        /** Adds a line; the value must be fit to be shown. */
        private void line(String name, String value) {
            text.append(signs.text(name)).append(": ").append(value).append('\n');
        }

        private String value(Cell cell) {
            String value = CellText.of(cell, page);
            return value.isEmpty() ? "none" : value;
        }

        private static String under(String title, String name) {
            return title.isBlank() ? name : title + ", " + name;
        }

        @Override
        public StringBuilder sentence(Sentence block) {
            line(block.key(), signs.text(block.text()));
            return text;
        }

        @Override
        public StringBuilder grid(Grid block) {
            if (!block.title().isBlank()) {
                line("table", signs.text(block.title()));
            }
            for (List<Cell> row : block.rows()) {
                String name = value(row.get(0));
                if (row.size() == 1) {
                    line(block.columns().get(0).heading(), name);
                }
                for (int index = 1; index < row.size(); index++) {
                    String value = CellText.of(row.get(index), page);
                    if (!value.isEmpty()) {
                        line(name + ", " + block.columns().get(index).heading(), value);
                    }
                }
            }
            return text;
        }

        @Override
        public StringBuilder facts(Facts block) {
            for (Facts.Fact fact : block.facts()) {
                line(under(block.title(), fact.name()), value(fact.value()));
            }
            return text;
        }

        @Override
        public StringBuilder notes(Notes block) {
            for (Assumption assumption : block.assumptions()) {
                String source = " [" + assumption.source().kind().label() + "]";
                line(
                        assumption.flagged() ? "uncertain assumption" : "assumption",
                        signs.text(assumption.statement()) + source);
            }
            return text;
        }

        @Override
        public StringBuilder verdicts(Verdicts block) {
            for (Finding finding : block.findings()) {
                String words = FindingText.behindName(finding, page);
                line(
                        "check, " + finding.checked(),
                        finding.verdict().label() + "; " + words + " ("
                                + signs.text(finding.rule().toString()) + ")");
            }
            return text;
        }

        @Override
        public StringBuilder steps(Steps block) {
            Working working = block.working();
            line("working", signs.text(working.question()));
            for (Working.Input input : working.inputs()) {
                String value = signs.text(input.figure(), page.units());
                line(
                        "input, " + input.name(),
                        signs.text(input.symbol()) + " = " + value + ", " + signs.text(input.origin()));
            }
            int number = 0;
            for (Working.Step step : working.steps()) {
                number++;
                String result = signs.text(step.result(), page.units());
                line("step " + number + ", " + step.name(), signs.text(step.formula()) + " = " + result);
            }
            for (Source source : working.sources()) {
                line("source", signs.text(source.toString()));
            }
            return text;
        }

        @Override
        public StringBuilder cautions(Cautions block) {
            for (Caution caution : block.cautions()) {
                line("caution, " + caution.hazard(), signs.text(caution.text()));
            }
            return text;
        }

        @Override
        public StringBuilder drawing(Drawing block) {
            LinePlot plot = block.plot();
            line("drawing", signs.text(under(plot.title(), plot.yName() + " against " + plot.xName())));
            for (LinePlot.Curve curve : plot.curves()) {
                String first = point(curve.points().get(0));
                String last = point(curve.points().get(curve.points().size() - 1));
                line(curve.name(), "from " + first + " to " + last);
            }
            return text;
        }

        private String point(LinePlot.Point point) {
            return signs.text(point.y(), page.units()) + " at " + signs.text(point.x(), page.units());
        }
    }
}
