package drivetrain.report;

import drivetrain.combination.Condition;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.comparison.Measure;
import drivetrain.comparison.SideBySide;
import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Drivetrain packages side by side. */
public final class ComparisonReport {

    private ComparisonReport() {}

    /**
     * Words a comparison.
     *
     * @param question the machine name of the question
     * @param comparison the packages
     * @param onlyDifferences true to leave out what is alike in all of them
     * @return the report
     */
    public static Report of(String question, SideBySide comparison, boolean onlyDifferences) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence(comparison)));
        blocks.add(orders(comparison));
        parts(comparison).ifPresent(blocks::add);
        blocks.add(figures(comparison, onlyDifferences));
        blocks.addAll(checks(comparison, onlyDifferences));
        if (!comparison.assumptions().isEmpty()) {
            blocks.add(Notes.of(comparison.assumptions()));
        }
        if (!comparison.cautions().isEmpty()) {
            blocks.add(Cautions.of(comparison.cautions()));
        }
        return new Report(question, blocks);
    }

    private static String sentence(SideBySide comparison) {
        List<String> others = new ArrayList<>();
        for (int i = 1; i < comparison.orders().size(); i++) {
            others.add("\"" + comparison.orders().get(i).name() + "\"");
        }
        long differing =
                comparison.rows().stream().filter(SideBySide.Row::differs).count();
        String figures = differing == 0
                ? "no figure differs"
                : differing == 1 ? "one figure differs" : differing + " figures differ";
        return "Against \"" + comparison.orders().get(0).name() + "\", " + figures + " in "
                + String.join(" or ", others) + ".";
    }

    private static Grid orders(SideBySide comparison) {
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < comparison.orders().size(); i++) {
            SideBySide.Order order = comparison.orders().get(i);
            long exceeded = order.assessment().findings().stream()
                    .filter(finding -> finding.verdict() == Verdict.EXCEEDED)
                    .count();
            rows.add(List.of(
                    Cell.of(order.name()),
                    Cell.of(comparison.verdicts().get(i).label()),
                    Cell.of(Figure.plain((double) exceeded, 0))));
        }
        return new Grid(
                "orders",
                "",
                List.of(
                        Column.ofText("name", "package"),
                        Column.ofText("verdict", "worst check"),
                        Column.ofFigures("exceeded", "limits exceeded")),
                rows);
    }

    private static Optional<Grid> parts(SideBySide comparison) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Slot slot : Slot.values()) {
            choices(slot.word(), comparison, order -> order.choice(slot)).ifPresent(rows::add);
        }
        for (Condition condition : Condition.values()) {
            choices(condition.word(), comparison, condition::in).ifPresent(rows::add);
        }
        List<Column> columns = new ArrayList<>();
        columns.add(Column.ofText("place", "place"));
        for (int i = 0; i < comparison.orders().size(); i++) {
            columns.add(Column.ofText(key(i), comparison.orders().get(i).name()));
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new Grid("parts", "The parts that differ", columns, rows));
    }

    /** What is chosen for one place, if it is not the same in all packages. */
    private static Optional<List<Cell>> choices(
            String place, SideBySide comparison, Function<Specification, Optional<String>> choice) {
        List<String> choices = comparison.orders().stream()
                .map(order -> choice.apply(order.assessment().combination().specification())
                        .orElse("-"))
                .toList();
        if (choices.stream().distinct().count() == 1) {
            return Optional.empty();
        }
        List<Cell> row = new ArrayList<>();
        row.add(Cell.of(place));
        choices.forEach(text -> row.add(Cell.of(text)));
        return Optional.of(row);
    }

    private static String key(int index) {
        return "order" + (index + 1);
    }

    private static Grid figures(SideBySide comparison, boolean onlyDifferences) {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.ofText("figure", "figure"));
        for (int i = 0; i < comparison.orders().size(); i++) {
            String name = comparison.orders().get(i).name();
            columns.add(Column.ofFigures(key(i), name));
            if (i > 0) {
                boolean onlyTwo = comparison.orders().size() == 2;
                columns.add(Column.ofFigures("change" + (i + 1), onlyTwo ? "change" : "change of " + name));
                columns.add(Column.ofText("judged" + (i + 1), onlyTwo ? "which is" : name + " is"));
            }
        }
        List<List<Cell>> rows = new ArrayList<>();
        for (SideBySide.Row row : comparison.rows()) {
            if (!onlyDifferences || row.differs()) {
                rows.add(row(row));
            }
        }
        return new Grid("figures", "The figures", columns, rows);
    }

    private static List<Cell> row(SideBySide.Row row) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.of(row.measure().word()));
        for (int i = 0; i < row.numbers().size(); i++) {
            cells.add(Cell.of(row.numbers().get(i).map(row.measure().scale()::figure)));
            if (i > 0) {
                Optional<Double> change = row.changes().get(i);
                cells.add(change.map(fraction -> Cell.of(Figure.percent(fraction, 1)))
                        .orElseGet(Cell::empty));
                cells.add(change.map(fraction -> Cell.of(judged(row.measure(), fraction)))
                        .orElseGet(Cell::empty));
            }
        }
        return cells;
    }

    private static String judged(Measure measure, double change) {
        if (change == 0.0) {
            return "the same";
        }
        String way = change > 0.0 ? "higher" : "lower";
        return switch (measure.better()) {
            case NEITHER -> way;
            case LOWER -> way + (change < 0.0 ? ", better" : ", worse");
            case HIGHER -> way + (change > 0.0 ? ", better" : ", worse");
        };
    }

    /** The checks that some package does not meet; those that all of them meet are counted only. */
    private static List<Block> checks(SideBySide comparison, boolean onlyDifferences) {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.ofText("check", "check"));
        for (int i = 0; i < comparison.orders().size(); i++) {
            columns.add(Column.ofText(key(i), comparison.orders().get(i).name()));
        }
        List<List<Cell>> rows = new ArrayList<>();
        long met = comparison.checks().stream()
                .filter(SideBySide.Check::isMetByAll)
                .count();
        for (SideBySide.Check check : comparison.checks()) {
            if (onlyDifferences ? check.differs() : !check.isMetByAll()) {
                List<Cell> row = new ArrayList<>();
                row.add(Cell.of(check.checked()));
                check.findings()
                        .forEach(finding -> row.add(Cell.of(finding.map(Finding::verdict)
                                .map(Verdict::label)
                                .orElse("-"))));
                rows.add(row);
            }
        }
        Grid grid = new Grid("checks", "The checks", columns, rows);
        String more = rows.isEmpty() ? "" : "more ";
        Sentence alike = new Sentence(
                "metByAll",
                met == 1
                        ? "One " + more + "check is met by every package."
                        : met + " " + more + "checks are met by every package.");
        return met == 0 ? List.of(grid) : List.of(grid, alike);
    }
}
