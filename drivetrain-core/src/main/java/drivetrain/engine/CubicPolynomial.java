package drivetrain.engine;

import java.util.function.DoubleConsumer;

/**
 * A polynomial of at most third degree over the unit interval, with its roots there to the last digits.
 *
 * <p>The interval is cut at the stationary points (closed form of the quadratic), so that the polynomial is monotone in each part and has at
 * most one root there, which a bracketed Newton iteration finds. Unlike the closed form of the cubic this loses no digits when the leading
 * coefficients vanish.
 */
record CubicPolynomial(double c0, double c1, double c2, double c3) {

    private static final int MOST_STEPS = 200;

    double at(double s) {
        return c0 + s * (c1 + s * (c2 + s * c3));
    }

    double slopeAt(double s) {
        return c1 + s * (2.0 * c2 + s * 3.0 * c3);
    }

    /** Hands over the points strictly inside (0, 1) at which the slope is zero, in rising order. */
    void stationaryPoints(DoubleConsumer found) {
        double a = 3.0 * c3;
        double half = c2; // a s^2 + 2 half s + c1 = 0
        double discriminant = half * half - a * c1;
        if (!(discriminant >= 0.0)) {
            return;
        }
        double q = -(half + Math.copySign(Math.sqrt(discriminant), half));
        double one = q / a;
        double other = c1 / q;
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        if (Double.isNaN(low)) {
            low = Double.isNaN(one) ? other : one;
            high = low;
        }
        if (low > 0.0 && low < 1.0) {
            found.accept(low);
        }
        if (high > low && high > 0.0 && high < 1.0) {
            found.accept(high);
        }
    }

    /** Hands over the roots inside [0, 1] at which the sign changes, in rising order. */
    void roots(DoubleConsumer found) {
        double[] from = {0.0};
        stationaryPoints(point -> {
            rootBetween(from[0], point, found);
            from[0] = point;
        });
        rootBetween(from[0], 1.0, found);
    }

    private void rootBetween(double low, double high, DoubleConsumer found) {
        double valueLow = at(low);
        double valueHigh = at(high);
        if (valueLow == 0.0 || valueLow * valueHigh > 0.0) {
            return;
        }
        double a = low;
        double b = high;
        double s = 0.5 * (a + b);
        for (int i = 0; i < MOST_STEPS && b - a > Math.ulp(b); i++) {
            double value = at(s);
            if (value == 0.0) {
                break;
            }
            if (value * valueLow > 0.0) {
                a = s;
            } else {
                b = s;
            }
            double newton = s - value / slopeAt(s);
            double next = newton > a && newton < b ? newton : 0.5 * (a + b);
            if (next == s) {
                break;
            }
            s = next;
        }
        found.accept(s);
    }
}
