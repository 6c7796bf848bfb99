package drivetrain.engine;

/**
 * A full-load torque curve through two stated peaks, in SI numbers.
 *
 * <p>The derivation of each part stands in the documentation of the package.
 */
final class PeakShape {

    /** The estimate starts at this fraction of the speed of peak torque. */
    static final double LOWEST = 0.5;

    /** The estimate ends at this multiple of the speed of peak power. */
    static final double HIGHEST = 1.2;

    /** Depth of the parabola below the torque peak: the cubic power curve x + x^2 - x^3 has T = 5/4 (1 - (1 - 2x)^2 / 5). */
    private static final double DEPTH = 0.2;

    /** A cubic that leaves its peak level and arrives with slope m is monotone up to m = 3 times the mean slope. */
    private static final double STEEPEST = 3.0;

    private final double n1;
    private final double t1;
    private final double n2;
    private final double p2;
    private final double torqueHeldTo;
    private final double powerHeldFrom;
    private final CubicPolynomial fall;

    /** Needs 0 &lt; n1 &lt; n2 and p2/n2 &lt;= t1 &lt;= p2/n1, which the caller has checked. */
    PeakShape(double n1, double t1, double n2, double p2) {
        this.n1 = n1;
        this.t1 = t1;
        this.n2 = n2;
        this.p2 = p2;
        powerHeldFrom = Math.min(n2, n1 / heldPowerRatio(t1 * n1 / p2));
        double end = p2 / powerHeldFrom;
        double drop = t1 - end;
        double run = powerHeldFrom - n1;
        torqueHeldTo = end * run > STEEPEST * drop * powerHeldFrom
                ? Math.max(n1, powerHeldFrom - STEEPEST * drop * powerHeldFrom / end)
                : n1;
        double m = -end / powerHeldFrom * (powerHeldFrom - torqueHeldTo);
        fall = new CubicPolynomial(t1, 0.0, -3.0 * drop - m, m + 2.0 * drop);
    }

    /**
     * The ratio r of the speeds of peak torque and of the start of held power at which the cubic just reaches its greatest power at its
     * end: r^3 - 4 r^2 + 6 r = 3 c, c the power at the torque peak over the peak power. The left side rises over [0, 1].
     */
    private static double heldPowerRatio(double c) {
        double[] ratio = {1.0};
        new CubicPolynomial(-3.0 * c, 6.0, -4.0, 1.0).roots(root -> ratio[0] = root);
        return ratio[0];
    }

    double lowest() {
        return LOWEST * n1;
    }

    double highest() {
        return HIGHEST * n2;
    }

    double torqueHeldTo() {
        return torqueHeldTo;
    }

    double powerHeldFrom() {
        return powerHeldFrom;
    }

    double torqueAt(double n) {
        if (n < n1) {
            double below = 1.0 - n / n1;
            return t1 * (1.0 - DEPTH * below * below);
        }
        if (n <= torqueHeldTo) {
            return t1;
        }
        if (n < powerHeldFrom) {
            return fall.at((n - torqueHeldTo) / (powerHeldFrom - torqueHeldTo));
        }
        if (n <= n2) {
            return p2 / n;
        }
        double x = n / n2;
        return p2 / n2 * (1.0 + x - x * x);
    }
}
