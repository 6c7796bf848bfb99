package drivetrain.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The reference: visits every combination in order, one by one, and works everything out as the figures define it. */
final class PlainLoop {

    private PlainLoop() {}

    static Selection select(Query query) {
        List<Pick> passing = new ArrayList<>();
        int[] choice = new int[query.sizes().size()];
        do {
            double score = score(query, choice);
            if (!Double.isNaN(score)) {
                passing.add(Pick.of(choice, score));
            }
        } while (next(choice, query.sizes()));
        List<Pick> best = passing.stream().sorted().limit(query.best()).toList();
        return new Selection(query.combinations(), passing.size(), best);
    }

    /** Every passing combination against every other one. */
    static List<List<Integer>> front(Query query) {
        List<int[]> passing = new ArrayList<>();
        int[] choice = new int[query.sizes().size()];
        do {
            if (!Double.isNaN(score(query, choice))) {
                passing.add(choice.clone());
            }
        } while (next(choice, query.sizes()));
        List<long[]> steps = passing.stream()
                .map(one -> query.objectives().stream()
                        .mapToLong(wish -> Math.round(wish.score(wish.figure().at(one)) * 1e9))
                        .toArray())
                .toList();
        List<Integer> front = new ArrayList<>();
        for (int i = 0; i < passing.size(); i++) {
            boolean stands = true;
            for (int j = 0; j < passing.size() && stands; j++) {
                boolean isEqual = Arrays.equals(steps.get(i), steps.get(j));
                stands = isEqual ? j >= i : !isNowhereWorse(steps.get(j), steps.get(i));
            }
            if (stands) {
                front.add(i);
            }
        }
        front.sort((a, b) -> Arrays.compare(steps.get(a), steps.get(b)));
        return front.stream()
                .map(i -> Arrays.stream(passing.get(i)).boxed().toList())
                .toList();
    }

    private static boolean isNowhereWorse(long[] one, long[] other) {
        for (int k = 0; k < one.length; k++) {
            if (one[k] > other[k]) {
                return false;
            }
        }
        return true;
    }

    private static double score(Query query, int[] choice) {
        for (Constraint constraint : query.constraints()) {
            double value = constraint.figure().at(choice);
            if (!(value >= constraint.low() && value <= constraint.high())) {
                return Double.NaN;
            }
        }
        double score = 0.0;
        for (Objective objective : query.objectives()) {
            score += objective.score(objective.figure().at(choice));
        }
        return score;
    }

    private static boolean next(int[] choice, List<Integer> sizes) {
        for (int d = choice.length - 1; d >= 0; d--) {
            if (++choice[d] < sizes.get(d)) {
                return true;
            }
            choice[d] = 0;
        }
        return false;
    }
}
