package drivetrain.planner;

import java.util.List;

/** Asks the counter whether a start of a combination can be completed to one that passes. */
final class Prospect {

    private final Counter counter;
    private final List<Axis> counted;
    private final int[] asked;

    /**
     * Makes a prospect.
     *
     * @param counted the axes of the counter by dimension
     */
    Prospect(Counter counter, List<Axis> counted) {
        this.counter = counter;
        this.counted = counted;
        this.asked = new int[counted.size()];
    }

    /**
     * Asks.
     *
     * @param start the choices made so far, -1 where none is
     * @param positions the position of each axis that is given, -1 where none is
     * @param choice a choice at each given position, which any other one there equals
     */
    boolean of(int[] start, int[] positions, int[] choice) {
        for (int d = 0; d < start.length; d++) {
            int chosen = start[d] >= 0 ? start[d] : positions[d] >= 0 ? choice[d] : -1;
            asked[d] = chosen < 0 ? -1 : counted.get(d).position[chosen];
            if (chosen >= 0 && asked[d] < 0) {
                return false;
            }
        }
        return counter.exists(asked);
    }
}
