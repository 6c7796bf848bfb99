package drivetrain.planner;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/**
 * Spreads one position on some axes out into the combinations that it stands for: the members of those positions, with every choice of the other
 * dimensions, in the order of the choices.
 */
final class Spread {

    private final List<Axis> axes;
    private final Predicate<int[]> isOpen;
    private final int[] choice;
    private final int[] given;
    private int left;

    /**
     * Makes a spread.
     *
     * @param axes one for each dimension, in their order
     * @param isOpen tells of a start of a combination, the dimensions behind it being -1, whether it can be completed; not asked about what is given
     */
    Spread(List<Axis> axes, Predicate<int[]> isOpen) {
        this.axes = axes;
        this.isOpen = isOpen;
        this.choice = new int[axes.size()];
        this.given = new int[axes.size()];
    }

    /** Receives a combination. */
    interface Taker {
        /** Takes it; false to hear of no more. */
        boolean take(int[] choice);
    }

    /**
     * Spreads.
     *
     * @param positions the position on each axis by dimension, -1 for every choice of the dimension
     * @param most how many combinations are wanted
     * @param taker receives them
     */
    void run(int[] positions, int most, Taker taker) {
        System.arraycopy(positions, 0, given, 0, positions.length);
        Arrays.fill(choice, -1);
        left = most;
        if (left > 0) {
            extend(0, taker);
        }
    }

    private boolean extend(int dimension, Taker taker) {
        if (dimension == choice.length) {
            left--;
            return taker.take(choice) && left > 0;
        }
        Axis axis = axes.get(dimension);
        boolean goesOn = true;
        if (given[dimension] >= 0) {
            int[] members = axis.members[given[dimension]];
            for (int i = 0; i < members.length && goesOn; i++) {
                choice[dimension] = members[i];
                goesOn = extend(dimension + 1, taker);
            }
        } else {
            for (int i = 0; i < axis.position.length && goesOn; i++) {
                choice[dimension] = i;
                if (axis.position[i] >= 0 && isOpen.test(choice)) {
                    goesOn = extend(dimension + 1, taker);
                }
            }
        }
        choice[dimension] = -1;
        return goesOn;
    }
}
