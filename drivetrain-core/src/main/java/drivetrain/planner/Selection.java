package drivetrain.planner;

import java.util.List;

/**
 * What a query selects.
 *
 * @param combinations how many combinations there are
 * @param passing how many of them pass every constraint and have a score
 * @param best the best of these, best first
 */
public record Selection(long combinations, long passing, List<Pick> best) {

    /** Copies the list. */
    public Selection {
        best = List.copyOf(best);
    }
}
