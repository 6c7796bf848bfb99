package drivetrain.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A query after the constraints that are about one dimension alone: they are held against each choice of it, once, and what fails is left out.
 *
 * @param query the query with the other constraints
 * @param kept for each dimension which choices are left
 */
record Kept(Query query, List<boolean[]> kept) {

    static Kept of(Query query) {
        List<boolean[]> kept = new ArrayList<>();
        for (int size : query.sizes()) {
            boolean[] all = new boolean[size];
            Arrays.fill(all, true);
            kept.add(all);
        }
        List<Constraint> others = new ArrayList<>();
        int[] choice = new int[kept.size()];
        for (Constraint constraint : query.constraints()) {
            int[] dimensions = constraint.figure().columns().stream()
                    .mapToInt(Column::dimension)
                    .distinct()
                    .toArray();
            if (dimensions.length == 1) {
                boolean[] choices = kept.get(dimensions[0]);
                for (int i = 0; i < choices.length; i++) {
                    choice[dimensions[0]] = i;
                    choices[i] &= constraint.passes(constraint.figure().at(choice));
                }
                choice[dimensions[0]] = 0;
            } else {
                others.add(constraint);
            }
        }
        return new Kept(query.with(others), kept);
    }

    boolean[] choices(int dimension) {
        return kept.get(dimension);
    }
}
