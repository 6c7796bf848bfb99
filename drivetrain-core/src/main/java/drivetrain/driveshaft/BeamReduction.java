package drivetrain.driveshaft;

/** Solves the small full problem m a = a / w^2 that is left in a subspace whose vectors are orthogonal in stiffness. */
final class BeamReduction {

    private static final int MOST_SWEEPS = 60;

    private BeamReduction() {}

    /**
     * Turns the problem to its diagonal by Jacobi's rotations.
     *
     * @param m mass of the subspace, the stiffness of which is 1; overwritten
     * @param values where the squared frequencies go, in rising order
     * @return the vectors, one a column, of length 1
     */
    static double[][] turn(double[][] m, double[] values) {
        int size = m.length;
        double[][] b = new double[size][size];
        for (int i = 0; i < size; i++) {
            b[i][i] = 1.0;
        }
        rotate(m, b);
        double[][] turn = new double[size][size];
        boolean[] taken = new boolean[size];
        for (int place = 0; place < size; place++) {
            int greatest = greatest(m, taken);
            taken[greatest] = true;
            values[place] = 1.0 / Math.max(m[greatest][greatest], Double.MIN_NORMAL);
            for (int i = 0; i < size; i++) {
                turn[i][place] = b[i][greatest];
            }
        }
        return turn;
    }

    private static int greatest(double[][] s, boolean[] taken) {
        int greatest = -1;
        for (int i = 0; i < s.length; i++) {
            if (!taken[i] && (greatest < 0 || s[i][i] > s[greatest][greatest])) {
                greatest = i;
            }
        }
        return greatest;
    }

    private static void rotate(double[][] s, double[][] b) {
        int size = s.length;
        for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
            double off = 0.0;
            double on = 0.0;
            for (int i = 0; i < size; i++) {
                on += s[i][i] * s[i][i];
                for (int j = 0; j < i; j++) {
                    off += s[i][j] * s[i][j];
                }
            }
            if (off <= 1e-30 * on) {
                return;
            }
            for (int p = 0; p < size; p++) {
                for (int q = p + 1; q < size; q++) {
                    rotate(s, b, p, q);
                }
            }
        }
    }

    private static void rotate(double[][] s, double[][] b, int p, int q) {
        if (s[p][q] == 0.0) {
            return;
        }
        double theta = (s[q][q] - s[p][p]) / (2.0 * s[p][q]);
        double t = Math.copySign(1.0, theta) / (Math.abs(theta) + Math.sqrt(theta * theta + 1.0));
        double c = 1.0 / Math.sqrt(t * t + 1.0);
        double sine = t * c;
        for (int i = 0; i < s.length; i++) {
            double ip = s[i][p];
            double iq = s[i][q];
            s[i][p] = c * ip - sine * iq;
            s[i][q] = sine * ip + c * iq;
            double bp = b[i][p];
            double bq = b[i][q];
            b[i][p] = c * bp - sine * bq;
            b[i][q] = sine * bp + c * bq;
        }
        for (int i = 0; i < s.length; i++) {
            double pi = s[p][i];
            double qi = s[q][i];
            s[p][i] = c * pi - sine * qi;
            s[q][i] = sine * pi + c * qi;
        }
    }
}
