package drivetrain.driveshaft;

/** A few vectors that turn, round by round, into the lowest modes. */
final class BeamSubspace {

    private final BeamMatrix mass;
    private final BeamMatrix factor;
    private final int size;
    private final double[][] vectors;
    private final double[][] loads;
    private final double[][] products;
    private final double[] values;
    private final double[] before;

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
        long seed = 1;
        for (int v = 0; v < size; v++) {
            for (int i = 0; i < unknowns; i++) {
                seed = (seed * 1_103_515_245L + 12_345L) & 0x7FFF_FFFFL;
                double along = 2.0 * i / (unknowns - 1) - 1.0;
                vectors[v][i] = Math.cos(v * Math.acos(along)) + 0.1 * (seed / (double) 0x4000_0000L - 1.0);
            }
            mass.times(vectors[v], loads[v]);
        }
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
        double[][] k = new double[size][size];
        double[][] m = new double[size][size];
        for (int v = 0; v < size; v++) {
            System.arraycopy(loads[v], 0, vectors[v], 0, mass.size());
            factor.solve(vectors[v]);
            mass.times(vectors[v], products[v]);
        }
        for (int v = 0; v < size; v++) {
            for (int u = 0; u <= v; u++) {
                k[v][u] = k[u][v] = dot(vectors[v], loads[u]);
                m[v][u] = m[u][v] = dot(vectors[v], products[u]);
            }
        }
        double[][] turn = BeamReduction.turn(k, m, values);
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
