package drivetrain.planner;

import java.util.List;

/**
 * The least score that a block of combinations can have.
 *
 * <p>Two bounds are known and the higher one counts. One adds up what each axis contributes to the linear part of the score, which is exact where figures
 * pull against each other. The other takes each objective by itself and uses that a figure which is held by a constraint does not get beyond it.
 */
final class ScoreBound {

    private final Terms terms;
    private final int score;
    private final int count;
    private final Objective[] objective;
    private final Form[] form;
    private final boolean[] isLinear;
    private final double[] low;
    private final double[] high;
    private final boolean isHeld;

    ScoreBound(Terms terms) {
        this.terms = terms;
        this.score = terms.score();
        List<Objective> objectives = terms.objectives();
        count = objectives.size();
        objective = objectives.toArray(Objective[]::new);
        form = new Form[count];
        isLinear = new boolean[count];
        low = new double[count];
        high = new double[count];
        boolean held = false;
        for (int k = 0; k < count; k++) {
            form[k] = terms.formOf(objective[k].figure());
            isLinear[k] = terms.isLinear(objective[k]);
            low[k] = Double.NEGATIVE_INFINITY;
            high[k] = Double.POSITIVE_INFINITY;
            for (int c = 0; c < terms.form.length; c++) {
                if (terms.form[c].equals(form[k])) {
                    low[k] = Math.max(low[k], terms.low[c]);
                    high[k] = Math.min(high[k], terms.high[c]);
                    held = true;
                }
            }
        }
        isHeld = held;
    }

    /** Returns how far a bound may be off. */
    double slack() {
        double weights = 1.0;
        for (Objective each : objective) {
            weights += each.weight();
        }
        return Terms.SLACK * weights;
    }

    /** Bounds what lies below a node. */
    double of(double[] fixed, Axis axis, int node, double[] restLow, double[] restHigh) {
        int offset = node * axis.width;
        double added = fixed[score] + axis.least[offset + score] + restLow[score];
        double apart = 0.0;
        for (int k = 0; k < count; k++) {
            double least = form[k].sum(fixed, axis.least, offset, restLow);
            double greatest = form[k].sum(fixed, axis.greatest, offset, restHigh);
            if (!isLinear[k]) {
                added += objective[k].leastScore(least, greatest);
            }
            apart += objective[k].leastScore(Math.max(least, low[k]), Math.min(greatest, high[k]));
        }
        return isHeld ? Math.max(added, apart) : added;
    }

    /** Bounds what is left when some choices are fixed. */
    double of(double[] fixed, double[] restLow, double[] restHigh) {
        double added = fixed[score] + restLow[score];
        for (int k = 0; k < count; k++) {
            if (!isLinear[k]) {
                added += objective[k].leastScore(form[k].sum(fixed, restLow), form[k].sum(fixed, restHigh));
            }
        }
        return added;
    }

    /** Works the declared part of the score out, nearly, when the last axis is at a position. */
    double at(double[] fixed, Axis axis, int position) {
        double added = fixed[score] + axis.addend[score][position];
        for (int k = 0; k < count; k++) {
            if (!isLinear[k]) {
                double sum = form[k].sumAt(fixed, axis.addend, position);
                added += objective[k].leastScore(sum, sum);
            }
        }
        return added;
    }

    /** Tells whether an axis changes the score. */
    boolean depends(Axis axis) {
        for (Form each : form) {
            if (axis.moves(each)) {
                return true;
            }
        }
        return false;
    }

    /** Returns the index of the linear part of the score, by which a position is judged at first sight. */
    int index() {
        return terms.score();
    }
}
