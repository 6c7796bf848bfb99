package drivetrain.comparison;

import drivetrain.combination.Combination;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Finds the factor on a lever's number that makes a measure what is wished. It works on x, the logarithm of the factor, and y, the logarithm of the measure over
 * what is wished.
 *
 * <p>First by secant steps from where the package stands, of which one is enough for a product of powers. Where those do not arrive, because something else sets
 * the measure there, factors are tried in both directions until y changes its sign, and Brent's method closes in.
 */
final class FactorSearch {

    private static final int MOST_STEPS = 60;
    private static final double PROBE = Math.log(1.001);
    private static final double FLAT = 1e-12;
    private static final double SOLVED = 1e-13;
    private static final double STRIDE = Math.log(1.05);
    private static final double FARTHEST = Math.log(8.0);
    private static final double ACCURACY = 1e-15;
    private static final int MOST_EVALUATIONS = 200;

    private final Adjusted adjusted;
    private final Lever lever;
    private final Measure measure;
    private final double target;
    private final double before;
    private Optional<Impossible> impossible = Optional.empty();

    FactorSearch(Adjusted adjusted, Lever lever, double before, Measure measure, double target) {
        this.adjusted = adjusted;
        this.lever = lever;
        this.before = before;
        this.measure = measure;
        this.target = target;
    }

    private record Tried(double x, double y) {}

    private record Impossible(double x, Refusal why) {}

    /** Returns the factor; refuses where there is none. */
    double find() {
        Tried secant = secant();
        Optional<Impossible> aimedAt = impossible;
        return Math.exp(Math.abs(secant.y) <= SOLVED ? secant.x : bracketed(secant, aimedAt));
    }

    /** Where the steps end: at y = 0, at a y that is not known, or where y does not move. */
    private Tried secant() {
        Tried at = at(0.0);
        double slope = (at(PROBE).y - at.y) / PROBE;
        for (int step = 0; step < MOST_STEPS && Math.abs(at.y) > SOLVED && Math.abs(slope) >= FLAT; step++) {
            Tried next = at(at.x - at.y / slope);
            slope = next.x == at.x ? slope : (next.y - at.y) / (next.x - at.x);
            at = next;
        }
        return at;
    }

    private double bracketed(Tried secant, Optional<Impossible> aimedAt) {
        List<Tried> tried = new ArrayList<>();
        Tried up = at(0.0);
        Tried down = up;
        tried.add(up);
        for (double x = STRIDE; x <= FARTHEST; x += STRIDE) {
            Tried higher = at(x);
            Tried lower = at(-x);
            if (isBetween(up, higher)) {
                return closeIn(up, higher);
            }
            if (isBetween(lower, down)) {
                return closeIn(lower, down);
            }
            up = higher;
            down = lower;
            tried.add(higher);
            tried.add(lower);
        }
        if (Math.abs(secant.y) <= Solve.ROUND_TRIP) {
            return secant.x;
        }
        throw none(tried.stream().filter(one -> !Double.isNaN(one.y)).toList(), aimedAt);
    }

    private static boolean isBetween(Tried low, Tried high) {
        return low.y * high.y <= 0.0;
    }

    private double closeIn(Tried low, Tried high) {
        if (low.y == 0.0 || high.y == 0.0) {
            return low.y == 0.0 ? low.x : high.x;
        }
        return new BrentSolver(ACCURACY, ACCURACY, ACCURACY).solve(MOST_EVALUATIONS, x -> at(x).y, low.x, high.x);
    }

    /** Tries a factor; y is NaN where there is no such part or the measure is not known with it. */
    private Tried at(double x) {
        try {
            Combination with = adjusted.with(Map.of(lever, Math.exp(x)));
            return new Tried(
                    x,
                    measure.of(with)
                            .value()
                            .map(value -> Math.log(value / target))
                            .orElse(Double.NaN));
        } catch (RefusedException refused) {
            if (impossible.isEmpty()) {
                impossible = Optional.of(new Impossible(x, refused.refusal()));
            }
            return new Tried(x, Double.NaN);
        }
    }

    private RefusedException none(List<Tried> known, Optional<Impossible> aimedAt) {
        double least = known.stream().mapToDouble(Tried::y).min().orElse(0.0);
        double greatest = known.stream().mapToDouble(Tried::y).max().orElse(0.0);
        if (greatest - least <= FLAT) {
            return refusal("it does not depend on the " + lever.meaning());
        }
        if (aimedAt.isPresent()) {
            String problem = aimedAt.get().why().problem();
            int question = problem.indexOf(':');
            return refusal("the " + lever.meaning() + " that gives it, some "
                    + aimed(aimedAt.get().x()) + ", " + (question < 0 ? problem : problem.substring(0, question)));
        }
        return refusal("no " + lever.meaning() + " gives it; whatever that is, the " + measure.word()
                + " stays between " + shown(least) + " and " + shown(greatest));
    }

    private String aimed(double x) {
        return lever.figure(before * Math.exp(x)).text(UnitSystem.US);
    }

    private String shown(double y) {
        return figure(target * Math.exp(y));
    }

    private RefusedException refusal(String why) {
        return Refusal.of(measure.word(), figure(target), why).asException();
    }

    private String figure(double number) {
        Figure figure = measure.scale().figure(number);
        return figure.text(UnitSystem.US);
    }
}
