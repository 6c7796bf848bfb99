package drivetrain.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Published results of the same scheme; each file names its source. */
class MonotoneCubicWorkedExamplesTest {

    private static final MonotoneCubic RADIOCHEMICAL = MonotoneCubic.of(
            new double[] {7.99, 8.09, 8.19, 8.70, 9.20, 10.00, 12.00, 15.00, 20.00},
            new double[] {0.0, 0.27643e-4, 0.43750e-1, 0.16918, 0.46943, 0.94374, 0.99864, 0.99992, 0.99999});

    @ParameterizedTest
    @CsvFileSource(resources = "/drivetrain/engine/monotone-cubic-values.csv", useHeadersInDisplayName = true)
    void agreesWithThePrintedValues(double x, double y) {
        assertThat(RADIOCHEMICAL.valueAt(x)).isCloseTo(y, within(0.5001e-4));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/drivetrain/engine/monotone-cubic-coefficients.csv", useHeadersInDisplayName = true)
    void agreesWithThePublishedCoefficients(String xs, String ys, String coefficients) {
        double[] x = numbers(xs);
        double[] y = numbers(ys);
        MonotoneCubic curve = MonotoneCubic.of(x, y);
        String[] pieces = coefficients.split(";");
        assertThat(pieces).hasSize(x.length - 1);
        for (int i = 0; i < pieces.length; i++) {
            double[] c = numbers(pieces[i]);
            for (double part : new double[] {0.0, 0.1, 0.25, 0.5, 0.75, 0.9}) {
                double t = part * (x[i + 1] - x[i]);
                double expected = c[3] + t * (c[2] + t * (c[1] + t * c[0]));
                assertThat(curve.valueAt(x[i] + t)).isCloseTo(expected, within(1e-13 * Math.max(1.0, expected)));
                double slope = c[2] + t * (2.0 * c[1] + t * 3.0 * c[0]);
                assertThat(curve.slopeAt(x[i] + t)).isCloseTo(slope, within(1e-12 * Math.max(1.0, Math.abs(slope))));
            }
        }
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.split(" "))
                .mapToDouble(MonotoneCubicWorkedExamplesTest::number)
                .toArray();
    }

    private static double number(String text) {
        double[] parts =
                Stream.of(text.split("/")).mapToDouble(Double::parseDouble).toArray();
        return parts.length == 2 ? parts[0] / parts[1] : parts[0];
    }
}
