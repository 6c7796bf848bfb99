package drivetrain.comparison;

import drivetrain.assessment.Assessment;
import drivetrain.combination.Combination;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Verdict;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Drivetrain packages side by side: their parts, their measures with the change against the first one, and their checks.
 *
 * @param orders the packages, the one that the others are held against first
 * @param rows the measures that at least one of them has
 * @param checks every check of any of them, each once
 */
public record SideBySide(List<Order> orders, List<Row> rows, List<Check> checks) {

    /** Changes below this fraction are rounding and count as none. */
    private static final double SAME = 1e-9;

    /**
     * One package.
     *
     * @param name what it is called
     * @param assessment its answers
     */
    public record Order(String name, Assessment assessment) {

        /**
         * Assesses a package.
         *
         * @param name what it is called
         * @param combination the package
         * @return the order
         */
        public static Order of(String name, Combination combination) {
            return new Order(name, Assessment.of(combination));
        }
    }

    /**
     * One measure.
     *
     * @param measure the measure
     * @param numbers its number in each package, or what is missing
     * @param changes for each package the change against the first one, as a fraction; empty where a number is missing, and for the first one
     */
    public record Row(Measure measure, List<Outcome<Double>> numbers, List<Optional<Double>> changes) {

        /** Copies the lists. */
        public Row {
            numbers = List.copyOf(numbers);
            changes = List.copyOf(changes);
        }

        /**
         * Tells whether a package differs from the first one.
         *
         * @return true if a change is more than rounding, or if a number is missing in one package alone
         */
        public boolean differs() {
            long missing =
                    numbers.stream().filter(number -> number.value().isEmpty()).count();
            return (missing > 0 && missing < numbers.size())
                    || changes.stream().flatMap(Optional::stream).anyMatch(change -> change != 0.0);
        }
    }

    /**
     * One check.
     *
     * @param checked what is checked
     * @param findings the finding in each package; empty where it is not checked
     */
    public record Check(String checked, List<Optional<Finding>> findings) {

        /** Copies the list. */
        public Check {
            findings = List.copyOf(findings);
        }

        /**
         * Tells whether the check is made in every package and met by it.
         *
         * @return true if nobody need look at it
         */
        public boolean isMetByAll() {
            return findings.stream()
                    .allMatch(finding -> finding.map(Finding::verdict).equals(Optional.of(Verdict.MET)));
        }

        /**
         * Tells whether the packages do not all have the same verdict.
         *
         * @return true if a verdict differs
         */
        public boolean differs() {
            return findings.stream()
                            .map(finding -> finding.map(Finding::verdict))
                            .distinct()
                            .count()
                    > 1;
        }
    }

    /** Copies the lists. */
    public SideBySide {
        orders = List.copyOf(orders);
        rows = List.copyOf(rows);
        checks = List.copyOf(checks);
    }

    /**
     * Puts packages side by side.
     *
     * @param orders the packages, at least two
     * @return the comparison; engine speed is compared at the cruise speed of the first package that names one
     * @throws drivetrain.refusal.RefusedException if there are fewer than two
     */
    public static SideBySide of(List<Order> orders) {
        if (orders.size() < 2) {
            throw Refusal.of("comparison", orders.size() + " packages", "needs something to compare with")
                    .allowing("two packages or more")
                    .asException();
        }
        List<Measure> measures = Measures.all(orders.stream()
                .flatMap(order -> order.assessment().cruiseSpeed().stream())
                .findFirst());
        List<Row> rows = new ArrayList<>();
        for (Measure measure : measures) {
            List<Outcome<Double>> numbers = orders.stream()
                    .map(order -> measure.of(order.assessment().combination()))
                    .toList();
            if (numbers.stream().anyMatch(number -> number.value().isPresent())) {
                rows.add(new Row(measure, numbers, changes(numbers)));
            }
        }
        return new SideBySide(orders, rows, checks(orders));
    }

    private static List<Optional<Double>> changes(List<Outcome<Double>> numbers) {
        List<Optional<Double>> changes = new ArrayList<>();
        Optional<Double> first = numbers.get(0).value();
        for (int i = 0; i < numbers.size(); i++) {
            Optional<Double> number = i == 0 ? Optional.empty() : numbers.get(i).value();
            changes.add(number.flatMap(known -> first.map(base -> change(known, base))));
        }
        return changes;
    }

    private static double change(double number, double base) {
        double change = number / base - 1.0;
        return Math.abs(change) < SAME ? 0.0 : change;
    }

    private static List<Check> checks(List<Order> orders) {
        Map<String, List<Optional<Finding>>> byName = new LinkedHashMap<>();
        for (int i = 0; i < orders.size(); i++) {
            for (Finding finding : orders.get(i).assessment().findings()) {
                List<Optional<Finding>> row = byName.computeIfAbsent(finding.checked(), none -> {
                    List<Optional<Finding>> empty = new ArrayList<>();
                    orders.forEach(order -> empty.add(Optional.empty()));
                    return empty;
                });
                row.set(
                        i,
                        row.get(i)
                                .filter(known -> known.verdict().worse(finding.verdict()) == known.verdict())
                                .or(() -> Optional.of(finding)));
            }
        }
        List<Check> checks = new ArrayList<>();
        byName.forEach((checked, findings) -> checks.add(new Check(checked, findings)));
        return checks;
    }

    /**
     * Returns the worst verdict of each package.
     *
     * @return the verdicts, in the order of the packages
     */
    public List<Verdict> verdicts() {
        return orders.stream().map(order -> order.assessment().verdict()).toList();
    }

    /**
     * Returns what the answers rest on.
     *
     * @return every assumption of every package, each once
     */
    public List<Assumption> assumptions() {
        Set<Assumption> all = new LinkedHashSet<>();
        orders.forEach(order -> all.addAll(order.assessment().assumptions()));
        return List.copyOf(all);
    }

    /**
     * Returns the warnings that belong to acting on the answers.
     *
     * @return every caution of every package, each once
     */
    public List<Caution> cautions() {
        Set<Caution> all = new LinkedHashSet<>();
        orders.forEach(order -> all.addAll(order.assessment().cautions()));
        return List.copyOf(all);
    }
}
