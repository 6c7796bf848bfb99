package drivetrain.driveshaft;

/**
 * A few vectors that turn, round by round, into the lowest modes. They are kept orthogonal in stiffness, each with an energy of one half: left alone they would all turn
 * into the first mode where that is much softer than the others.
 */
final class BeamSubspace {

    private static final double ROUGHNESS = 0.1;
    /** A vector of which so little is left, beside those before it, is nothing but rounding. */
    private static final double NOTHING = 1e-12;

    private static final int MOST_RENEWALS = 20;

    private final BeamMatrix mass;
    private final BeamMatrix factor;
    private final int size;
    private final double[][] vectors;
    private final double[][] loads;
    private final double[][] products;
    private final double[] values;
    private final double[] before;
    private long seed = 1;

    /** Starts with loads of the lowest powers of the place, roughened so that no mode is missing in them. */
    BeamSubspace(BeamMatrix mass, BeamMatrix factor, int size) {
        this.mass = mass;
        this.factor = factor;
        this.size = size;
        int unknowns = mass.size();
        vectors = new double[size][unknowns];
        loads = new double[size][unknowns];
        products = new double[size][unknowns];
        values = new double[size];
        before = new double[size];
        for (int v = 0; v < size; v++) {
            for (int i = 0; i < unknowns; i++) {
                double along = 2.0 * i / (unknowns - 1) - 1.0;
                vectors[v][i] = Math.cos(v * Math.acos(along)) + ROUGHNESS * rough();
            }
            mass.times(vectors[v], loads[v]);
        }
    }

    /** The next of a fixed row of numbers between -1 and 1 without order (a linear congruence, modulus 2^31). */
    private double rough() {
        seed = (seed * 1_103_515_245L + 12_345L) & 0x7FFF_FFFFL;
        return seed / (double) 0x4000_0000L - 1.0;
    }

    /** The squared angular frequency, in rising order. */
    double value(int index) {
        return values[index];
    }

    double[] vector(int index) {
        return vectors[index];
    }

    /** One round; returns by how much, relatively, the values that are wanted have moved. */
    double improve(int wanted) {
        double[][] m = new double[size][size];
        for (int v = 0; v < size; v++) {
            System.arraycopy(loads[v], 0, vectors[v], 0, mass.size());
            factor.solve(vectors[v]);
            for (int times = 0; !separate(v); times++) {
                if (times == MOST_RENEWALS) {
                    throw new ArithmeticException(
                            "a beam of " + mass.size() + " unknowns has less than " + size + " modes");
                }
                renew(v);
            }
            mass.times(vectors[v], products[v]);
            for (int u = 0; u <= v; u++) {
                m[v][u] = dot(vectors[v], products[u]);
                m[u][v] = m[v][u];
            }
        }
        double[][] turn = BeamReduction.turn(m, values);
        combine(vectors, turn);
        combine(products, turn);
        for (int v = 0; v < size; v++) {
            System.arraycopy(products[v], 0, loads[v], 0, mass.size());
        }
        double moved = 0.0;
        for (int v = 0; v < wanted; v++) {
            moved = Math.max(moved, Math.abs(values[v] - before[v]) / values[v]);
        }
        System.arraycopy(values, 0, before, 0, size);
        return moved;
    }

    /** Takes out of a vector and its load what it shares with those before it, twice for the rounding; returns whether anything is left. */
    private boolean separate(int v) {
        double[] x = vectors[v];
        double[] load = loads[v];
        double energy = dot(x, load);
        for (int time = 0; time < 2; time++) {
            for (int u = 0; u < v; u++) {
                double shared = dot(x, loads[u]);
                for (int i = 0; i < x.length; i++) {
                    x[i] -= shared * vectors[u][i];
                    load[i] -= shared * loads[u][i];
                }
            }
        }
        double left = dot(x, load);
        if (!(left > NOTHING * NOTHING * energy)) {
            return false;
        }
        double scale = 1.0 / Math.sqrt(left);
        for (int i = 0; i < x.length; i++) {
            x[i] *= scale;
            load[i] *= scale;
        }
        return true;
    }

    /** Begins a vector anew with a load without order. */
    private void renew(int v) {
        for (int i = 0; i < mass.size(); i++) {
            vectors[v][i] = rough();
        }
        mass.times(vectors[v], loads[v]);
        System.arraycopy(loads[v], 0, vectors[v], 0, mass.size());
        factor.solve(vectors[v]);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0.0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private void combine(double[][] old, double[][] turn) {
        double[] row = new double[size];
        for (int i = 0; i < mass.size(); i++) {
            for (int v = 0; v < size; v++) {
                double sum = 0.0;
                for (int u = 0; u < size; u++) {
                    sum += turn[u][v] * old[u][i];
                }
                row[v] = sum;
            }
            for (int v = 0; v < size; v++) {
                old[v][i] = row[v];
            }
        }
    }
}
