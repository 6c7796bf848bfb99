package drivetrain.driveshaft;

/** Solves the small full problem k a = w^2 m a that is left in the subspace. */
final class BeamReduction {

    private static final int MOST_SWEEPS = 60;

    private BeamReduction() {}

    /**
     * Turns the problem into s b = b / w^2 with s = g^-1 m g^-T, g g^T = k, and that to its diagonal by Jacobi's rotations.
     *
     * @param k stiffness of the subspace; its lower half is overwritten by its Cholesky factor
     * @param m mass of the subspace
     * @param values where the squared frequencies go, in rising order
     * @return the vectors a, one a column, with a^T m a = 1
     */
    static double[][] turn(double[][] k, double[][] m, double[] values) {
        int size = k.length;
        cholesky(k);
        double[][] s = reduced(k, m);
        double[][] b = new double[size][size];
        for (int i = 0; i < size; i++) {
            b[i][i] = 1.0;
        }
        rotate(s, b);
        double[][] turn = new double[size][size];
        boolean[] taken = new boolean[size];
        for (int place = 0; place < size; place++) {
            int greatest = greatest(s, taken);
            taken[greatest] = true;
            double inverse = s[greatest][greatest];
            values[place] = 1.0 / inverse;
            double scale = 1.0 / Math.sqrt(inverse);
            for (int i = size - 1; i >= 0; i--) {
                double sum = b[i][greatest] * scale;
                for (int j = i + 1; j < size; j++) {
                    sum -= k[j][i] * turn[j][place];
                }
                turn[i][place] = sum / k[i][i];
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

    private static void cholesky(double[][] k) {
        for (int i = 0; i < k.length; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = k[i][j];
                for (int e = 0; e < j; e++) {
                    sum -= k[i][e] * k[j][e];
                }
                k[i][j] = i == j ? Math.sqrt(Math.max(sum, Double.MIN_NORMAL)) : sum / k[j][j];
            }
        }
    }

    /** g^-1 m g^-T: the columns first, then the rows. */
    private static double[][] reduced(double[][] g, double[][] m) {
        int size = g.length;
        double[][] s = new double[size][size];
        for (int column = 0; column < size; column++) {
            for (int i = 0; i < size; i++) {
                double sum = m[i][column];
                for (int e = 0; e < i; e++) {
                    sum -= g[i][e] * s[e][column];
                }
                s[i][column] = sum / g[i][i];
            }
        }
        for (int row = 0; row < size; row++) {
            for (int i = 0; i < size; i++) {
                double sum = s[row][i];
                for (int e = 0; e < i; e++) {
                    sum -= g[i][e] * s[row][e];
                }
                s[row][i] = sum / g[i][i];
            }
        }
        return s;
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
