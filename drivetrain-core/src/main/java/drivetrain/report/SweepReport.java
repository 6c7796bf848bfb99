package drivetrain.report;

import drivetrain.comparison.Measure;
import drivetrain.comparison.Sweep;
import drivetrain.comparison.SweepResult;
import drivetrain.comparison.Wish;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a sweep over lists of parts found. */
public final class SweepReport {

    private SweepReport() {}

    /**
     * Words a sweep.
     *
     * @param result what was found
     * @param missed the wishes that the order misses as it stands
     * @param units the units of the sentences
     * @return the report
     */
    public static Report of(SweepResult result, List<Wish> missed, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence(result, units)));
        blocks.add(new Facts("counts", "", facts(result, missed, units)));
        if (!result.rows().isEmpty()) {
            blocks.add(rows("best", "The best of them", result.sweep(), result.rows(), true));
            addGround(blocks, result.sweep(), result.rows());
        }
        if (!result.alone().isEmpty()) {
            blocks.add(alone(result, units));
        }
        return new Report("sweep", blocks);
    }

    /**
     * Words a front.
     *
     * @param sweep what was searched
     * @param front the packages of the front
     * @param units the units of the sentences
     * @return the report
     */
    public static Report front(Sweep sweep, List<SweepResult.Row> front, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        String aims = sweep.aims().stream().map(aim -> aim.text(units)).collect(Collectors.joining(" against "));
        blocks.add(Sentence.answer(
                front.isEmpty()
                        ? "No package keeps every wish."
                        : "Of " + Counts.text(sweep.combinations(), "package", "packages") + ", "
                                + Counts.text(front.size())
                                + " cannot be bettered in one figure without a loss in another: " + aims + "."));
        blocks.add(rows("front", "The front", sweep, front, false));
        addGround(blocks, sweep, front);
        return new Report("front", blocks);
    }

    private static String sentence(SweepResult result, UnitSystem units) {
        String of = " of " + Counts.text(result.combinations(), "package", "packages");
        if (result.passing() > 0) {
            String keep = result.sweep().wishes().isEmpty()
                    ? " can be ranked"
                    : (result.passing() == 1 ? " keeps every wish" : " keep every wish");
            return Counts.text(result.passing()) + of + keep + ".";
        }
        List<Wish> conflict = result.conflict().wishes();
        String none = "None" + of + " keeps every wish";
        return switch (conflict.size()) {
            case 0 -> none + ".";
            case 1 -> none + ": none keeps \"" + conflict.get(0).text(units) + "\" even alone.";
            case 2 ->
                none + ": \"" + conflict.get(0).text(units) + "\" and \""
                        + conflict.get(1).text(units) + "\" exclude each other.";
            default -> none + "; any two of them can be kept together, all of them cannot.";
        };
    }

    private static List<Facts.Fact> facts(SweepResult result, List<Wish> missed, UnitSystem units) {
        List<Facts.Fact> facts = new ArrayList<>();
        facts.add(Facts.Fact.of("combinations", "packages tried", Figure.plain((double) result.combinations(), 0)));
        facts.add(Facts.Fact.of("passing", "keep every wish", Figure.plain((double) result.passing(), 0)));
        if (!result.sweep().aims().isEmpty()) {
            facts.add(Facts.Fact.of(
                    "ranked",
                    "ranked by",
                    result.sweep().aims().stream().map(aim -> aim.text(units)).collect(Collectors.joining(", "))));
        }
        if (!result.sweep().wishes().isEmpty()) {
            facts.add(Facts.Fact.of(
                    "order",
                    "the order as it stands",
                    missed.isEmpty()
                            ? "keeps every wish"
                            : "misses "
                                    + missed.stream()
                                            .map(wish -> wish.text(units))
                                            .collect(Collectors.joining("; "))));
        }
        return facts;
    }

    private static Grid rows(String key, String title, Sweep sweep, List<SweepResult.Row> rows, boolean isRanked) {
        boolean hasScore = isRanked && !sweep.aims().isEmpty();
        List<Column> columns = new ArrayList<>();
        columns.add(Column.ofFigures("rank", isRanked ? "rank" : "number"));
        sweep.lists()
                .forEach(list -> columns.add(Column.ofText(
                        list.place().slots().get(0).key(), list.place().word())));
        sweep.measures().forEach(measure -> columns.add(Column.ofFigures(measure.key(), measure.word())));
        if (hasScore) {
            columns.add(Column.ofFigures("behind", "behind the first"));
        }
        List<List<Cell>> cells = new ArrayList<>();
        for (SweepResult.Row row : rows) {
            List<Cell> line = new ArrayList<>();
            line.add(Cell.of(Figure.plain(cells.size() + 1.0, 0)));
            row.parts().forEach(part -> line.add(Cell.of(part)));
            List<Measure> measures = sweep.measures();
            for (int i = 0; i < measures.size(); i++) {
                Outcome<Double> number = row.numbers().get(i);
                line.add(Cell.of(number.map(measures.get(i).scale()::figure)));
            }
            if (hasScore) {
                line.add(Cell.of(Figure.percent(row.behind(), 1)));
            }
            cells.add(line);
        }
        return new Grid(key, title, columns, cells);
    }

    private static Grid alone(SweepResult result, UnitSystem units) {
        List<List<Cell>> rows = new ArrayList<>();
        for (SweepResult.Alone one : result.alone()) {
            rows.add(List.of(Cell.of(one.wish().text(units)), Cell.of(Figure.plain((double) one.passing(), 0))));
        }
        return new Grid(
                "alone",
                "Each wish by itself",
                List.of(Column.ofText("wish", "wish"), Column.ofFigures("passing", "packages that keep it")),
                rows);
    }

    private static void addGround(List<Block> blocks, Sweep sweep, List<SweepResult.Row> rows) {
        Ground.add(
                blocks,
                sweep.measures(),
                rows.stream().map(SweepResult.Row::combination).toList());
    }
}
