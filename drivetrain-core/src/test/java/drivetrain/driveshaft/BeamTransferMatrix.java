package drivetrain.driveshaft;

import java.util.ArrayList;
import java.util.List;

/**
 * The exact solution for a stepped beam with tilting ends by another way than elements: Timoshenko's equations carried from section to section by the
 * exponential of their matrix, the frequency being where the determinant of the end conditions changes its sign.
 */
final class BeamTransferMatrix {

    private final List<double[]> stretches = new ArrayList<>();

    /** Adds a stretch: length, E I, k G A, mass and rotary inertia per length. */
    BeamTransferMatrix span(double length, BeamSection s) {
        stretches.add(new double[] {length, s.bending(), s.shear(), s.massPerLength(), s.rotaryInertia()});
        return this;
    }

    /** Adds a spring across and a mass at one place. */
    BeamTransferMatrix point(double spring, double mass) {
        stretches.add(new double[] {spring, mass});
        return this;
    }

    /** The angular frequencies up to a limit, found by steps that must be finer than their distances. */
    List<Double> frequencies(double limit, double step) {
        List<Double> found = new ArrayList<>();
        double before = determinant(step);
        for (double w = 2 * step; w <= limit; w += step) {
            double now = determinant(w);
            if (before * now < 0) {
                found.add(bisect(w - step, w));
            }
            before = now;
        }
        return found;
    }

    private double bisect(double low, double high) {
        double a = low;
        double b = high;
        double atA = determinant(a);
        for (int i = 0; i < 100; i++) {
            double middle = (a + b) / 2;
            double at = determinant(middle);
            if (atA * at > 0) {
                a = middle;
                atA = at;
            } else {
                b = middle;
            }
        }
        return (a + b) / 2;
    }

    private double determinant(double w) {
        double[][] t = identity();
        for (double[] s : stretches) {
            t = times(s.length == 2 ? jump(s, w) : exponential(s, w), t);
        }
        return t[0][1] * t[2][3] - t[0][3] * t[2][1];
    }

    private static double[][] jump(double[] s, double w) {
        double[][] t = identity();
        t[3][0] = s[0] - s[1] * w * w;
        return t;
    }

    /** State: deflection, slope of the section, moment, shear force. */
    private static double[][] exponential(double[] s, double w) {
        int halvings = 12;
        double h = s[0] / (1 << halvings);
        double[][] a = new double[4][4];
        a[0][1] = h;
        a[0][3] = h / s[2];
        a[1][2] = h / s[1];
        a[2][1] = -h * s[4] * w * w;
        a[2][3] = -h;
        a[3][0] = -h * s[3] * w * w;
        double[][] sum = identity();
        double[][] term = identity();
        for (int n = 1; n <= 10; n++) {
            term = times(term, a);
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j < 4; j++) {
                    term[i][j] /= n;
                    sum[i][j] += term[i][j];
                }
            }
        }
        for (int i = 0; i < halvings; i++) {
            sum = times(sum, sum);
        }
        return sum;
    }

    private static double[][] identity() {
        double[][] one = new double[4][4];
        for (int i = 0; i < 4; i++) {
            one[i][i] = 1;
        }
        return one;
    }

    private static double[][] times(double[][] a, double[][] b) {
        double[][] c = new double[4][4];
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                for (int k = 0; k < 4; k++) {
                    c[i][j] += a[i][k] * b[k][j];
                }
            }
        }
        return c;
    }
}
