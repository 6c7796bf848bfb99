package drivetrain.planner;

/**
 * A declared figure in logarithms: the least or the greatest of a run of terms, each of them a sum over the axes.
 *
 * @param from the index of its first term
 * @param to the index behind its last term
 * @param least true for the least of the terms, false for the greatest
 */
record Form(int from, int to, boolean least) {

    /** Works out the figure from three addends a term: what is fixed, what an axis adds, and what the axes behind it add. */
    double sum(double[] fixed, double[] part, int offset, double[] rest) {
        double extreme = fixed[from] + part[offset + from] + rest[from];
        for (int t = from + 1; t < to; t++) {
            double other = fixed[t] + part[offset + t] + rest[t];
            extreme = least ? Math.min(extreme, other) : Math.max(extreme, other);
        }
        return extreme;
    }

    /** Works out the figure from two addends a term. */
    double sum(double[] fixed, double[] rest) {
        double extreme = fixed[from] + rest[from];
        for (int t = from + 1; t < to; t++) {
            double other = fixed[t] + rest[t];
            extreme = least ? Math.min(extreme, other) : Math.max(extreme, other);
        }
        return extreme;
    }

    /** Works out the figure when the last axis is at a position. */
    double sumAt(double[] fixed, double[][] addend, int position) {
        double extreme = fixed[from] + addend[from][position];
        for (int t = from + 1; t < to; t++) {
            double other = fixed[t] + addend[t][position];
            extreme = least ? Math.min(extreme, other) : Math.max(extreme, other);
        }
        return extreme;
    }

    /** Tells whether the figure is one term. */
    boolean isSingle() {
        return to == from + 1;
    }
}
