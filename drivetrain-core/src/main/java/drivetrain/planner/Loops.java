package drivetrain.planner;

import java.util.Arrays;
import java.util.List;

/**
 * The order in which the axes are run through, and between which extremes the sums of the axes behind each place lie.
 *
 * <p>What is at depth {@code d} holds for the axes from {@code d} on, up to those that are kept apart at the end.
 */
final class Loops {

    final Axis[] axes;
    final double[][] restLow;
    final double[][] restHigh;
    final long[] restWeight;
    private final int[] only;
    private final int depths;

    /**
     * Orders axes.
     *
     * @param depths how many of the axes the sums take in; the others are kept apart
     */
    Loops(List<Axis> ordered, int depths, int width) {
        axes = ordered.toArray(Axis[]::new);
        this.depths = depths;
        restLow = new double[depths + 1][width];
        restHigh = new double[depths + 1][width];
        restWeight = new long[depths + 1];
        only = new int[axes.length];
        Arrays.fill(only, -1);
        addUp();
    }

    /** Restricts some axes to one position each. */
    void restrict(int[] positionOfDimension) {
        for (int d = 0; d < axes.length; d++) {
            only[d] = positionOfDimension[axes[d].dimension];
        }
        addUp();
    }

    /** Returns the one position of an axis, or -1 if all are free. */
    int only(int depth) {
        return only[depth];
    }

    private void addUp() {
        restWeight[depths] = 1;
        for (int d = depths - 1; d >= 0; d--) {
            Axis axis = axes[d];
            restWeight[d] = restWeight[d + 1] * (only[d] >= 0 ? 1 : axis.weight());
            for (int t = 0; t < axis.width; t++) {
                double low = only[d] >= 0 ? axis.addend[t][only[d]] : axis.least[t];
                double high = only[d] >= 0 ? low : axis.greatest[t];
                restLow[d][t] = restLow[d + 1][t] + low;
                restHigh[d][t] = restHigh[d + 1][t] + high;
            }
        }
    }
}
