package drivetrain.engine;

import drivetrain.quantity.DecimalText;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;

/**
 * Shape-preserving interpolation of measured points by one cubic an interval (monotone piecewise cubic Hermite interpolation).
 *
 * <p>The curve passes through every point, has a continuous slope, is monotone wherever the points are, has its extremes at points only, and
 * is exact for points on a line. The slopes lie in the region of monotonicity of Fritsch and Carlson (SIAM J. Numer. Anal. 17 (1980)
 * 238-246); inside they are the weighted harmonic means of Fritsch and Butland (SIAM J. Sci. Stat. Comput. 5 (1984) 300-304), at the ends
 * the three-point estimate, limited so that the end intervals stay monotone. This is the scheme known as PCHIP.
 */
public final class MonotoneCubic {

    /**
     * A point of the curve.
     *
     * @param x the abscissa
     * @param y the ordinate
     */
    public record Point(double x, double y) {}

    private final double[] x;
    private final double[] y;
    private final CubicPolynomial[] pieces; // over s = (x - x_i) / (x_(i+1) - x_i)

    private MonotoneCubic(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        double[] slopes = slopes(x, y);
        pieces = new CubicPolynomial[x.length - 1];
        for (int i = 0; i < pieces.length; i++) {
            double h = x[i + 1] - x[i];
            double rise = y[i + 1] - y[i];
            double left = slopes[i] * h;
            double right = slopes[i + 1] * h;
            pieces[i] = new CubicPolynomial(y[i], left, 3.0 * rise - 2.0 * left - right, left + right - 2.0 * rise);
        }
    }

    /**
     * Lays the curve through points.
     *
     * @param x the abscissas, at least 2, finite and strictly increasing
     * @param y as many ordinates, finite
     * @return the curve
     * @throws RefusedException if the points are too few, not finite or not in order
     */
    public static MonotoneCubic of(double[] x, double[] y) {
        if (x.length < 2 || x.length != y.length) {
            throw refusal(x.length + " abscissas, " + y.length + " ordinates", "cannot be interpolated")
                    .allowing("at least 2 points")
                    .asException();
        }
        for (int i = 0; i < x.length; i++) {
            if (!Double.isFinite(x[i]) || !Double.isFinite(y[i])) {
                throw refusal("(" + x[i] + ", " + y[i] + ")", "is not finite").asException();
            }
            if (i > 0 && !(x[i] > x[i - 1])) {
                throw refusal(x[i] + " after " + x[i - 1], "is not in order")
                        .allowing("strictly increasing abscissas")
                        .asException();
            }
        }
        return new MonotoneCubic(x.clone(), y.clone());
    }

    /**
     * Returns the ordinate at an abscissa.
     *
     * @param at the abscissa, {@link #first} to {@link #last}
     * @return the ordinate
     * @throws RefusedException if the abscissa lies outside the points or is not a number
     */
    public double valueAt(double at) {
        int i = piece(at);
        return at == x[i + 1] ? y[i + 1] : pieces[i].at((at - x[i]) / (x[i + 1] - x[i]));
    }

    /**
     * Returns the slope at an abscissa.
     *
     * @param at the abscissa, {@link #first} to {@link #last}
     * @return the first derivative
     * @throws RefusedException if the abscissa lies outside the points or is not a number
     */
    public double slopeAt(double at) {
        int i = piece(at);
        double h = x[i + 1] - x[i];
        return pieces[i].slopeAt((at - x[i]) / h) / h;
    }

    /**
     * Returns the least abscissa.
     *
     * @return the abscissa of the first point
     */
    public double first() {
        return x[0];
    }

    /**
     * Returns the greatest abscissa.
     *
     * @return the abscissa of the last point
     */
    public double last() {
        return x[x.length - 1];
    }

    /**
     * Returns the highest point of the curve, from the stationary points of each cubic.
     *
     * @return the point; the one with the least abscissa if there are several
     */
    public Point highest() {
        Highest highest = new Highest();
        for (int i = 0; i < x.length; i++) {
            highest.consider(x[i], y[i]);
        }
        for (int i = 0; i < pieces.length; i++) {
            double start = x[i];
            double h = x[i + 1] - start;
            CubicPolynomial piece = pieces[i];
            piece.stationaryPoints(s -> highest.consider(start + s * h, piece.at(s)));
        }
        return new Point(highest.x, valueAt(highest.x));
    }

    /**
     * Returns the point at which abscissa times ordinate is greatest, from the stationary points of the product in each interval.
     *
     * @return the point of the curve; the one with the least abscissa if there are several
     */
    public Point highestProduct() {
        Highest highest = new Highest();
        for (int i = 0; i < x.length; i++) {
            highest.consider(x[i], x[i] * y[i]);
        }
        for (int i = 0; i < pieces.length; i++) {
            double start = x[i];
            double h = x[i + 1] - start;
            CubicPolynomial piece = pieces[i];
            // d/ds of (start + h s) (c0 + c1 s + c2 s^2 + c3 s^3)
            CubicPolynomial slope = new CubicPolynomial(
                    start * piece.c1() + h * piece.c0(),
                    2.0 * (start * piece.c2() + h * piece.c1()),
                    3.0 * (start * piece.c3() + h * piece.c2()),
                    4.0 * h * piece.c3());
            slope.roots(s -> highest.consider(start + s * h, (start + s * h) * piece.at(s)));
        }
        return new Point(highest.x, valueAt(highest.x));
    }

    /** Keeps the highest candidate; a later one must be higher by more than rounding, so that a measured point is not lost to its neighborhood. */
    private static final class Highest {

        private static final double ROUNDING = 1e-13;

        private double x;
        private double value = Double.NEGATIVE_INFINITY;

        private void consider(double at, double candidate) {
            if (!Double.isFinite(value) || candidate > value + ROUNDING * Math.abs(value)) {
                x = at;
                value = candidate;
            }
        }
    }

    private int piece(double at) {
        if (!(at >= x[0] && at <= x[x.length - 1])) {
            throw refusal(DecimalText.shortest(Double.isFinite(at) ? at : 0.0), "lies outside the points")
                    .allowing(DecimalText.shortest(first()) + " to " + DecimalText.shortest(last()))
                    .asException();
        }
        int low = 0;
        int high = pieces.length;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (at < x[middle]) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    private static double[] slopes(double[] x, double[] y) {
        int n = x.length;
        double[] d = new double[n];
        double h = x[1] - x[0];
        double secant = (y[1] - y[0]) / h;
        if (n == 2) {
            d[0] = secant;
            d[1] = secant;
            return d;
        }
        d[0] = endSlope(h, x[2] - x[1], secant, (y[2] - y[1]) / (x[2] - x[1]));
        for (int i = 1; i < n - 1; i++) {
            double nextH = x[i + 1] - x[i];
            double nextSecant = (y[i + 1] - y[i]) / nextH;
            d[i] = innerSlope(h, nextH, secant, nextSecant);
            if (i == n - 2) {
                d[n - 1] = endSlope(nextH, h, nextSecant, secant);
            }
            h = nextH;
            secant = nextSecant;
        }
        return d;
    }

    private static double innerSlope(double h, double nextH, double secant, double nextSecant) {
        if (Math.signum(secant) * Math.signum(nextSecant) <= 0.0) {
            return 0.0;
        }
        double weight = 2.0 * nextH + h;
        double nextWeight = nextH + 2.0 * h;
        return (weight + nextWeight) / (weight / secant + nextWeight / nextSecant);
    }

    private static double endSlope(double h, double nextH, double secant, double nextSecant) {
        double slope = ((2.0 * h + nextH) * secant - h * nextSecant) / (h + nextH);
        if (Math.signum(slope) != Math.signum(secant)) {
            return 0.0;
        }
        boolean turns = Math.signum(secant) != Math.signum(nextSecant);
        return turns && Math.abs(slope) > 3.0 * Math.abs(secant) ? 3.0 * secant : slope;
    }

    private static Refusal refusal(String given, String problem) {
        return Refusal.of("interpolation", given, problem);
    }
}
