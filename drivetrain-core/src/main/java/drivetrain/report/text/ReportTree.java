package drivetrain.report.text;

import drivetrain.finding.Source;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.VisibleText;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A report as a tree for JSON: maps in reading order, lists, texts, numbers and truth values.
 *
 * <p>The tree has {@code question} and {@code units} ({@code us}, {@code metric} or {@code both}), then one entry for each block under its key:
 *
 * <ul>
 *   <li>a figure is {@code {"value": 65.0, "unit": "mph"}}, the number in full, the unit empty for a plain number; with both unit systems it
 *       also has {@code "metric": {"value": 104.6, "unit": "km/h"}} where the units differ;
 *   <li>a missing figure is {@code {"notEvaluated": "reason"}}; where nothing belongs there is no entry;
 *   <li>a sentence is a text; facts are a map from key to value; a table is a list of maps from column key to value;
 *   <li>findings, assumptions, cautions, a working and a drawing are maps or lists whose entries are named as their components.
 * </ul>
 */
public final class ReportTree {

    private ReportTree() {}

    /**
     * Makes the tree.
     *
     * @param report the report
     * @param units the units of the figures
     * @return the tree; control characters in its texts are written as {@code \}{@code uXXXX}
     */
    public static Map<String, Object> of(Report report, UnitSystem units) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("question", report.question());
        tree.put("units", units.name().toLowerCase(Locale.ROOT));
        Layout layout = new Layout(units);
        for (Block block : report.blocks()) {
            tree.put(block.key(), block.layOut(layout));
        }
        return tree;
    }

    private record Layout(UnitSystem units) implements Block.Layout<Object> {

        @Override
        public Object sentence(Sentence block) {
            return VisibleText.of(block.text());
        }

        @Override
        public Object grid(Grid block) {
            return block.rows().stream().map(row -> row(block, row)).toList();
        }

        private Map<String, Object> row(Grid block, List<Cell> row) {
            Map<String, Object> tree = new LinkedHashMap<>();
            for (int index = 0; index < row.size(); index++) {
                put(tree, block.columns().get(index).key(), row.get(index));
            }
            return tree;
        }

        @Override
        public Object facts(Facts block) {
            Map<String, Object> tree = new LinkedHashMap<>();
            block.facts().forEach(fact -> put(tree, fact.key(), fact.value()));
            return tree;
        }

        private void put(Map<String, Object> tree, String key, Cell cell) {
            Optional<Object> value = cell.<Optional<Object>>fold(
                    figure -> Optional.of(figure(figure)),
                    text -> Optional.of(VisibleText.of(text)),
                    reason -> Optional.of(Map.of("notEvaluated", VisibleText.of(reason))),
                    Optional::empty);
            value.ifPresent(present -> tree.put(key, present));
        }

        private Map<String, Object> figure(Figure figure) {
            Map<String, Object> tree = figure(figure, units);
            if (units == UnitSystem.BOTH && Signs.hasTwoUnits(figure)) {
                tree.put("metric", figure(figure, UnitSystem.METRIC));
            }
            return tree;
        }

        private static Map<String, Object> figure(Figure figure, UnitSystem system) {
            Map<String, Object> tree = new LinkedHashMap<>();
            tree.put("value", figure.number(system));
            tree.put("unit", figure.unit(system));
            return tree;
        }

        private static Map<String, Object> source(Source source) {
            return map(
                    "citation",
                    VisibleText.of(source.citation()),
                    "class",
                    source.kind().label());
        }

        private static Map<String, Object> map(Object... keysAndValues) {
            Map<String, Object> tree = new LinkedHashMap<>();
            for (int index = 0; index < keysAndValues.length; index += 2) {
                tree.put((String) keysAndValues[index], keysAndValues[index + 1]);
            }
            return tree;
        }

        private static <T> List<Object> list(List<T> items, Function<T, Object> change) {
            return items.stream().map(change).toList();
        }

        @Override
        public Object notes(Notes block) {
            return list(
                    block.assumptions(),
                    assumption -> map(
                            "subject", VisibleText.of(assumption.subject()),
                            "statement", VisibleText.of(assumption.statement()),
                            "source", source(assumption.source()),
                            "flagged", assumption.flagged()));
        }

        @Override
        public Object verdicts(Verdicts block) {
            return list(block.findings(), finding -> {
                Map<String, Object> tree = map(
                        "verdict", finding.verdict().label(),
                        "checked", VisibleText.of(finding.checked()));
                finding.value().ifPresent(value -> tree.put("value", figure(value)));
                finding.limit().ifPresent(limit -> tree.put("limit", figure(limit)));
                finding.margin().ifPresent(margin -> tree.put("margin", figure(margin)));
                tree.put("statement", VisibleText.of(finding.statement()));
                tree.put("rule", source(finding.rule()));
                return tree;
            });
        }

        @Override
        public Object steps(Steps block) {
            return map(
                    "question", VisibleText.of(block.working().question()),
                    "inputs",
                            list(
                                    block.working().inputs(),
                                    input -> map(
                                            "name", VisibleText.of(input.name()),
                                            "symbol", VisibleText.of(input.symbol()),
                                            "figure", figure(input.figure()),
                                            "origin", VisibleText.of(input.origin()))),
                    "steps",
                            list(
                                    block.working().steps(),
                                    step -> map(
                                            "name", VisibleText.of(step.name()),
                                            "formula", VisibleText.of(step.formula()),
                                            "result", figure(step.result()))),
                    "sources", list(block.working().sources(), Layout::source));
        }

        @Override
        public Object cautions(Cautions block) {
            return list(
                    block.cautions(),
                    caution -> map(
                            "hazard", VisibleText.of(caution.hazard()),
                            "text", VisibleText.of(caution.text())));
        }

        @Override
        public Object drawing(Drawing block) {
            LinePlot plot = block.plot();
            return map(
                    "title", VisibleText.of(plot.title()),
                    "xName", VisibleText.of(plot.xName()),
                    "yName", VisibleText.of(plot.yName()),
                    "curves",
                            list(
                                    plot.curves(),
                                    curve -> map(
                                            "mark", String.valueOf(curve.mark()),
                                            "name", VisibleText.of(curve.name()),
                                            "points",
                                                    list(
                                                            curve.points(),
                                                            point -> map(
                                                                    "x", figure(point.x()), "y", figure(point.y()))))));
        }
    }
}
