package drivetrain.report;

import drivetrain.combination.Combination;
import drivetrain.comparison.Measure;
import drivetrain.comparison.Solve;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What one part would have to be for a wish. */
public final class SolveReport {

    private SolveReport() {}

    /**
     * Words a solution.
     *
     * @param solve the solution
     * @param combination the order as it stands
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(Solve solve, Combination combination, UnitSystem units) {
        Measure measure = solve.measure();
        String wish =
                measure.word() + " is " + measure.scale().figure(solve.target()).text(units);
        String exact = solve.lever().figure(solve.exact()).text(units);
        List<Facts.Fact> facts = List.of(
                Facts.Fact.of(
                        "exact",
                        solve.lever().meaning() + ", exactly",
                        solve.lever().figure(solve.exact())),
                Facts.Fact.of(
                        "target", measure.word() + ", wished", measure.scale().figure(solve.target())),
                Facts.Fact.of(
                        "before",
                        solve.lever().meaning() + ", as it stands",
                        solve.lever().figure(solve.before())),
                Facts.Fact.of(
                        "measured",
                        measure.word() + ", as it stands",
                        measure.scale().figure(solve.measured())));
        List<List<Cell>> rows = new ArrayList<>();
        solve.below().ifPresent(near -> rows.add(row("below", near, solve)));
        solve.above().ifPresent(near -> rows.add(row("at or above", near, solve)));
        Grid near = new Grid(
                "near",
                "The nearest parts on the shelf",
                List.of(
                        Column.ofText("side", "side"),
                        Column.ofText("part", "part"),
                        Column.ofFigures("number", solve.lever().meaning()),
                        Column.ofFigures("gives", measure.word())),
                rows);
        String shelf = rows.isEmpty() ? " No part on the shelf has one." : nearest(solve, units);
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(
                "With " + article(solve.lever().meaning()) + " of " + exact + ", " + wish + "." + shelf));
        blocks.add(new Facts("solution", "", facts));
        blocks.add(near);
        Ground.add(blocks, List.of(measure), List.of(combination), solve.assumptions());
        return new Report("solve", blocks);
    }

    private static String article(String meaning) {
        return (meaning.startsWith("a") || meaning.startsWith("i") ? "an " : "a ") + meaning;
    }

    private static String nearest(Solve solve, UnitSystem units) {
        List<String> sides = new ArrayList<>();
        for (Optional<Solve.Near> side : List.of(solve.below(), solve.above())) {
            side.ifPresent(near -> sides.add(near.name() + " gives "
                    + solve.measure().scale().figure(near.measured()).text(units)));
        }
        return " On the shelf, " + String.join(" and ", sides) + ".";
    }

    private static List<Cell> row(String side, Solve.Near near, Solve solve) {
        Figure number = solve.lever().figure(near.number());
        return List.of(
                Cell.of(side),
                Cell.of(near.name()),
                Cell.of(number),
                Cell.of(solve.measure().scale().figure(near.measured())));
    }
}
