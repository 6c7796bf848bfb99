package drivetrain.driveshaft;

/**
 * A symmetric matrix of which only the diagonal and the three diagonals below it are filled: that is what beam elements in a row make. Entry (i, i - d)
 * stands at {@code 4 i + d}.
 */
final class BeamMatrix {

    /** Entries kept of each row: the diagonal and three below. */
    static final int WIDTH = 4;

    private final int size;
    private final double[] band;

    BeamMatrix(int size) {
        this.size = size;
        this.band = new double[WIDTH * size];
    }

    int size() {
        return size;
    }

    double get(int row, int column) {
        int high = Math.max(row, column);
        int apart = high - Math.min(row, column);
        return apart < WIDTH ? band[WIDTH * high + apart] : 0.0;
    }

    /** Adds to the entry and with it to its mirror image. */
    void add(int row, int column, double value) {
        int high = Math.max(row, column);
        band[WIDTH * high + high - Math.min(row, column)] += value;
    }

    /** Empties a row and its column and sets the diagonal. */
    void isolate(int index, double diagonal) {
        for (int d = 1; d < WIDTH; d++) {
            band[WIDTH * index + d] = 0.0;
            if (index + d < size) {
                band[WIDTH * (index + d) + d] = 0.0;
            }
        }
        band[WIDTH * index] = diagonal;
    }

    /** Multiplies: y = A x. */
    void times(double[] x, double[] y) {
        for (int i = 0; i < size; i++) {
            int at = WIDTH * i;
            double sum = band[at] * x[i];
            for (int d = 1; d < WIDTH && d <= i; d++) {
                double entry = band[at + d];
                sum += entry * x[i - d];
                y[i - d] += entry * x[i];
            }
            y[i] = sum;
        }
    }

    /**
     * Factorizes: A - shift B = L D L^T, L with a diagonal of ones, in place of a new matrix of which the diagonal holds 1 / D. A pivot of nothing becomes a tiny
     * one, so that a shift upon an eigenvalue does not divide by zero.
     */
    BeamMatrix factorized(double shift, BeamMatrix other) {
        BeamMatrix factor = new BeamMatrix(size);
        double[] l = factor.band;
        for (int i = 0; i < size; i++) {
            int at = WIDTH * i;
            int depth = Math.min(WIDTH - 1, i);
            for (int d = depth; d > 0; d--) {
                int row = WIDTH * (i - d);
                double sum = band[at + d] - shift * other.band[at + d];
                for (int e = d + 1; e <= depth; e++) {
                    sum -= l[at + e] * l[row + e - d];
                }
                l[at + d] = sum;
            }
            double pivot = band[at] - shift * other.band[at];
            for (int d = 1; d <= depth; d++) {
                double scaled = l[at + d] * l[WIDTH * (i - d)];
                pivot -= l[at + d] * scaled;
                l[at + d] = scaled;
            }
            l[at] = 1.0 / (pivot == 0.0 ? Double.MIN_NORMAL : pivot);
        }
        return factor;
    }

    /** Counts the negative pivots of a factor, which is how many eigenvalues lie below its shift (Sylvester). */
    int negativePivots() {
        int count = 0;
        for (int i = 0; i < size; i++) {
            if (band[WIDTH * i] < 0.0) {
                count++;
            }
        }
        return count;
    }

    /** Solves L D L^T x = b on a factor; x takes the place of b. */
    void solve(double[] b) {
        for (int i = 0; i < size; i++) {
            int at = WIDTH * i;
            double sum = b[i];
            for (int d = 1; d < WIDTH && d <= i; d++) {
                sum -= band[at + d] * b[i - d];
            }
            b[i] = sum;
        }
        for (int i = 0; i < size; i++) {
            b[i] *= band[WIDTH * i];
        }
        for (int i = size - 1; i >= 0; i--) {
            int at = WIDTH * i;
            for (int d = 1; d < WIDTH && d <= i; d++) {
                b[i - d] -= band[at + d] * b[i];
            }
        }
    }
}
