package drivetrain.comparison;

import drivetrain.planner.Constraint;
import drivetrain.planner.Planner;
import drivetrain.planner.Query;
import drivetrain.planner.Watch;
import java.util.List;

/**
 * The fewest wishes that no package keeps together: one that none keeps at all, else a pair, else all of them.
 *
 * @param wishes the wishes; empty if there is no conflict
 */
public record Conflict(List<Wish> wishes) {

    /** Copies the list. */
    public Conflict {
        wishes = List.copyOf(wishes);
    }

    static Conflict none() {
        return new Conflict(List.of());
    }

    /** Finds the conflict of wishes that no package keeps all. */
    static Conflict of(List<Wish> wishes, List<Constraint> constraints, Query query, Planner planner, Watch watch) {
        Query counting = new Query(query.sizes(), List.of(), List.of(), 0);
        for (int i = 0; i < wishes.size(); i++) {
            if (isEmpty(counting, List.of(constraints.get(i)), planner, watch)) {
                return new Conflict(List.of(wishes.get(i)));
            }
        }
        for (int i = 0; i < wishes.size(); i++) {
            for (int j = i + 1; j < wishes.size(); j++) {
                if (isEmpty(counting, List.of(constraints.get(i), constraints.get(j)), planner, watch)) {
                    return new Conflict(List.of(wishes.get(i), wishes.get(j)));
                }
            }
        }
        return new Conflict(wishes);
    }

    private static boolean isEmpty(Query counting, List<Constraint> constraints, Planner planner, Watch watch) {
        return planner.select(counting.with(constraints), watch).passing() == 0;
    }
}
