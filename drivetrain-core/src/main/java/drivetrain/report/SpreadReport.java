package drivetrain.report;

import drivetrain.combination.Combination;
import drivetrain.comparison.Sensitivity;
import drivetrain.comparison.Tolerance;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** How the figures of a package move with those of its parts. */
public final class SpreadReport {

    private SpreadReport() {}

    /**
     * Words a sensitivity.
     *
     * @param sensitivity the changes
     * @param combination the order as it stands
     * @return the report
     */
    public static Report of(Sensitivity sensitivity, Combination combination) {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.ofText("figure", "figure"));
        columns.add(Column.ofFigures("number", "as it stands"));
        sensitivity.levers().forEach(lever -> columns.add(Column.ofFigures(lever.key(), lever.word())));
        List<List<Cell>> rows = new ArrayList<>();
        for (Sensitivity.Row row : sensitivity.rows()) {
            List<Cell> cells = new ArrayList<>();
            cells.add(Cell.of(row.measure().word()));
            cells.add(Cell.of(row.measure().scale().figure(row.number())));
            for (Outcome<Double> change : row.changes()) {
                cells.add(Cell.of(change.map(fraction -> Figure.percent(fraction, 2))));
            }
            rows.add(cells);
        }
        String sentence = sensitivity.levers().isEmpty()
                ? "Nothing is chosen yet that could be varied."
                : "Each column shows what one percent more of one figure does to the others: "
                        + sensitivity.levers().stream()
                                .map(lever -> lever.word() + " is the " + lever.meaning())
                                .collect(Collectors.joining(", "))
                        + ".";
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence));
        blocks.add(new Grid("changes", "", columns, rows));
        Ground.add(
                blocks,
                sensitivity.rows().stream().map(Sensitivity.Row::measure).toList(),
                List.of(combination));
        return new Report("sensitivity", blocks);
    }

    /**
     * Words a tolerance.
     *
     * @param tolerance the ranges
     * @param combination the order as it stands
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(Tolerance tolerance, Combination combination, UnitSystem units) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Tolerance.Row row : tolerance.rows()) {
            List<Cell> cells = new ArrayList<>();
            cells.add(Cell.of(row.measure().word()));
            for (double number :
                    new double[] {row.number(), row.least(), row.greatest(), row.q05(), row.median(), row.q95()}) {
                cells.add(Cell.of(row.measure().scale().figure(number)));
            }
            rows.add(cells);
        }
        List<Column> columns = List.of(
                Column.ofText("figure", "figure"),
                Column.ofFigures("number", "as it stands"),
                Column.ofFigures("least", "least"),
                Column.ofFigures("greatest", "greatest"),
                Column.ofFigures("q05", "5 % below"),
                Column.ofFigures("median", "half below"),
                Column.ofFigures("q95", "95 % below"));
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence(tolerance, units)));
        blocks.add(new Grid("ranges", "", columns, rows));
        blocks.add(new Sentence(
                "method",
                "Least and greatest: every figure at one end or the other, and all that was drawn. The percentages: "
                        + Tolerance.SAMPLES
                        + " packages drawn by a fixed chance, each figure anywhere within its tolerance and "
                        + "independent of the others."));
        Ground.add(blocks, tolerance.rows().stream().map(Tolerance.Row::measure).toList(), List.of(combination));
        return new Report("tolerance", blocks);
    }

    private static String sentence(Tolerance tolerance, UnitSystem units) {
        String given =
                tolerance.uncertain().stream().map(one -> one.text(units)).collect(Collectors.joining(", "));
        return "With the " + given + " of what is given, the figures lie in these ranges.";
    }
}
