package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Stiffness;
import drivetrain.refusal.RefusedException;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

class BeamLineTest {

    private static final ShaftMaterial STEEL = ShaftMaterial.parse("modulus 205 GPa poisson 0.29 density 7850 kg/m3");
    private static final Tube TUBE = Tube.parse("3 in x 0.083 in");
    private static final Tube STUB = Tube.solid(Length.ofMillimeters(38));

    private static BeamSpan span(double meters, Tube tube) {
        return BeamSpan.of(Length.ofMeters(meters), tube, STEEL);
    }

    private static BeamSection section(Tube tube) {
        return BeamSection.of(tube, STEEL);
    }

    private static double[] hertz(BeamLine line, int elements, int count) {
        return BeamModes.of(BeamMesh.of(line, elements)).lowest(count).stream()
                .mapToDouble(mode -> mode.frequency().toHertz())
                .toArray();
    }

    @Test
    void aUniformTubeConvergesToTheClosedForm() {
        BeamSection section = section(TUBE);
        for (double length : new double[] {0.4, 1.0, 1.8}) {
            double[] coarse = hertz(BeamLine.uniform(Length.ofMeters(length), TUBE, STEEL), 20, 3);
            double[] fine = hertz(BeamLine.uniform(Length.ofMeters(length), TUBE, STEEL), 40, 3);
            for (int n = 0; n < 3; n++) {
                double exact = BeamFormula.speed(section, length / (n + 1)) / (2 * Math.PI);
                assertThat(fine[n]).isCloseTo(exact, withinPercentage(0.006 * Math.pow(n + 1, 3)));
                assertThat(fine[n]).isBetween(exact, coarse[n]);
            }
        }
    }

    /** Shear and rotary inertia go with the square of diameter over length; without them the closed form is the one of the handbooks. */
    @Test
    void aSlenderTubeHasTheHandbookFrequency() {
        BeamSection section = section(TUBE);

        assertThat(BeamFormula.speed(section, 20.0) / BeamFormula.slenderSpeed(section, 20.0))
                .isCloseTo(1.0, within(1e-4));
        assertThat(BeamFormula.speed(section, 1.0)).isLessThan(BeamFormula.slenderSpeed(section, 1.0));
    }

    @Test
    void theLengthForASpeedIsTheInverseOfTheSpeedForALength() {
        for (double length : new double[] {0.1, 0.5, 1.3, 4.0}) {
            double speed = BeamFormula.speed(section(TUBE), length);

            assertThat(BeamFormula.length(section(TUBE), speed)).isCloseTo(length, within(1e-12));
        }
        assertThat(BeamFormula.length(section(TUBE), 1e9)).isZero();
    }

    @Test
    void aSteppedShaftAgreesWithTheTransferMatrix() {
        BeamLine line = BeamLine.of(
                span(0.07, Tube.solid(Length.ofMillimeters(55))),
                span(0.25, STUB),
                span(0.9, TUBE),
                new BeamMass(Mass.ofKilograms(0.6)),
                span(0.3, TUBE),
                span(0.07, Tube.solid(Length.ofMillimeters(55))));
        List<Double> exact = new BeamTransferMatrix()
                .span(0.07, section(Tube.solid(Length.ofMillimeters(55))))
                .span(0.25, section(STUB))
                .span(0.9, section(TUBE))
                .point(0.0, 0.6)
                .span(0.3, section(TUBE))
                .span(0.07, section(Tube.solid(Length.ofMillimeters(55))))
                .frequencies(7_000, 20);
        double[] found = hertz(line, 160, 3);

        for (int i = 0; i < 3; i++) {
            assertThat(found[i] * 2 * Math.PI).isCloseTo(exact.get(i), withinPercentage(0.01));
        }
        assertThat(line.firstFrequency().toHertz() * 2 * Math.PI).isCloseTo(exact.get(0), withinPercentage(0.002));
    }

    @Test
    void aShaftOnSpringsAgreesWithTheTransferMatrix() {
        Optional<Stiffness> soft = Optional.of(Stiffness.ofNewtonsPerMillimeter(900));
        BeamLine line = new BeamLine(
                Optional.empty(),
                List.of(span(0.8, TUBE), BeamBearing.of(Stiffness.ofNewtonsPerMillimeter(250)), span(0.7, TUBE)),
                Optional.empty());
        List<Double> exact = new BeamTransferMatrix()
                .span(0.8, section(TUBE))
                .point(250e3, 0)
                .span(0.7, section(TUBE))
                .frequencies(6_000, 20);
        double[] found = hertz(line, 160, 3);

        for (int i = 0; i < 3; i++) {
            assertThat(found[i] * 2 * Math.PI).isCloseTo(exact.get(i), withinPercentage(0.01));
        }
        BeamLine free = new BeamLine(soft, line.pieces(), soft);
        assertThat(free.firstFrequency()).isLessThan(line.firstFrequency());
    }

    /** Two pieces on a firm bearing at their joint do not know of each other: both have the frequency of one. */
    @Test
    void twoEqualPiecesOnAFirmBearingHaveTheFrequencyOfOneTwice() {
        BeamLine two = BeamLine.of(span(1.0, TUBE), BeamBearing.firm(), new BeamHinge(), span(1.0, TUBE));
        double one = hertz(BeamLine.uniform(Length.ofMeters(1), TUBE, STEEL), 20, 1)[0];
        double[] found = hertz(two, 40, 3);

        assertThat(found[0]).isCloseTo(one, within(1e-6));
        assertThat(found[1]).isCloseTo(one, within(1e-6));
        assertThat(found[2]).isGreaterThan(3.5 * one);
    }

    /** Without the joint the first mode bends to either side alternately, so that each half is free at the bearing, too. */
    @Test
    void findsTheFirstModeThoughItIsOdd() {
        BeamLine through = BeamLine.of(span(1.0, TUBE), BeamBearing.firm(), span(1.0, TUBE));
        double one = hertz(BeamLine.uniform(Length.ofMeters(1), TUBE, STEEL), 20, 1)[0];

        assertThat(hertz(through, 40, 1)[0]).isCloseTo(one, within(1e-6));
        assertThat(through.firstFrequency().toHertz()).isCloseTo(one, within(1e-6));
    }

    /** Two stiff pieces with a joint on a soft mount: a mass on a spring. Each piece turns about its end: together m L / 3 on either side. */
    @Test
    void aSoftMountLetsThePiecesBounce() {
        BeamLine line = BeamLine.of(
                span(0.5, TUBE),
                BeamBearing.of(Stiffness.ofNewtonsPerMillimeter(20)),
                new BeamHinge(),
                span(0.5, TUBE));
        double mass = section(TUBE).massPerLength() / 3.0;
        BeamMode lowest = line.modes(2).get(0);

        assertThat(lowest.frequency().toHertz())
                .isCloseTo(Math.sqrt(20e3 / mass) / (2 * Math.PI), withinPercentage(1.0));
        assertThat(lowest.mountShare()).isGreaterThan(0.95);
        assertThat(lowest.isBending()).isFalse();
        assertThat(line.modes(2).get(1).isBending()).isTrue();
    }

    @Test
    void aShapeStartsAndEndsAtTheJointsAndSwingsToOne() {
        List<BeamMode> modes = BeamLine.uniform(Length.ofMeters(1), TUBE, STEEL).modes(3);

        for (int n = 0; n < 3; n++) {
            List<BeamMode.Point> shape = modes.get(n).shape();
            assertThat(shape).hasSize(41);
            assertThat(shape.get(0).deflection()).isCloseTo(0.0, within(1e-9));
            assertThat(shape.get(40).place().toMeters()).isCloseTo(1.0, within(1e-12));
            for (BeamMode.Point point : shape) {
                double sine = Math.sin((n + 1) * Math.PI * point.place().toMeters());
                assertThat(point.deflection()).isCloseTo(sine, offset(0.02));
            }
        }
        assertThat(modes.get(0).mountShare()).isZero();
    }

    /** The whole spectrum of many random shafts against the dense solver of a library, on the same matrices. */
    @Test
    void agreesWithADenseSolverOnRandomShafts() {
        Random random = new Random(1_966L);
        for (int i = 0; i < 40; i++) {
            BeamMesh mesh = BeamMesh.of(RandomBeams.next(random), 12);
            List<BeamMode> modes = BeamModes.of(mesh).lowest(3);
            double[] dense = dense(mesh);
            for (int n = 0; n < 3; n++) {
                assertThat(modes.get(n).frequency().toHertz()).isCloseTo(dense[n], withinPercentage(1e-5));
            }
            assertThat(BeamModes.of(mesh).first().toHertz()).isCloseTo(dense[0], withinPercentage(1e-5));
        }
    }

    private static double[] dense(BeamMesh mesh) {
        RealMatrix k = BeamMatrixTest.dense(mesh.stiffness());
        RealMatrix lower = new CholeskyDecomposition(k, 1e-12, 0.0).getL();
        RealMatrix inverse = new LUDecomposition(lower).getSolver().getInverse();
        RealMatrix s = inverse.multiply(BeamMatrixTest.dense(mesh.mass())).multiply(inverse.transpose());
        RealMatrix even = s.add(s.transpose()).scalarMultiply(0.5);
        return java.util.Arrays.stream(new EigenDecomposition(even).getRealEigenvalues())
                .sorted()
                .map(value -> 1.0 / (2 * Math.PI * Math.sqrt(value)))
                .filter(Double::isFinite)
                .sorted()
                .limit(3)
                .toArray();
    }

    /** A short stiff stretch and a heavy mass on a soft mount: the first mode is ten thousand times softer than the next. */
    @Test
    void findsTheModesThoughTheFirstIsFarSofterThanTheOthers() {
        BeamLine line = new BeamLine(
                Optional.empty(),
                List.of(
                        span(0.024, Tube.of(Length.ofMillimeters(29), Length.ofMillimeters(1))),
                        new BeamMass(Mass.ofKilograms(88))),
                Optional.of(Stiffness.ofNewtonsPerMillimeter(430)));
        List<BeamMode> modes = line.modes(3);

        assertThat(modes.get(0).frequency().toHertz())
                .isCloseTo(Math.sqrt(430e3 / 88) / (2 * Math.PI), withinPercentage(0.1));
        assertThat(modes.get(2).frequency()).isGreaterThan(modes.get(1).frequency());
        assertThat(modes.get(1).frequency().toHertz())
                .isGreaterThan(1_000 * modes.get(0).frequency().toHertz());
    }

    @Test
    void hasNoMoreModesThanUnknowns() {
        BeamMesh one = BeamMesh.of(BeamLine.uniform(Length.ofMeters(1), TUBE, STEEL), 1);

        assertThat(BeamModes.of(one).first().toHertz()).isPositive();
        assertThatThrownBy(() -> BeamModes.of(one).lowest(3)).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void refusesABeamThatWouldFall() {
        BeamPiece[][] falling = {
            {},
            {new BeamMass(Mass.ofKilograms(1))},
            {span(1, TUBE), new BeamHinge(), span(1, TUBE)},
            {new BeamHinge(), BeamBearing.firm(), span(1, TUBE)},
            {span(1, TUBE), BeamBearing.firm(), new BeamHinge()}
        };
        for (BeamPiece[] pieces : falling) {
            assertThatThrownBy(() -> BeamLine.of(pieces)).isInstanceOf(RefusedException.class);
        }
        BeamPiece[] many = new BeamPiece[61];
        java.util.Arrays.fill(many, span(0.1, TUBE));
        assertThatThrownBy(() -> BeamLine.of(many)).hasMessageContaining("more than 60 pieces");
    }

    @Test
    void refusesImpossibleStretchesMassesAndMounts() {
        assertThatThrownBy(() -> span(0.0, TUBE)).hasMessageContaining("greater than zero");
        assertThatThrownBy(() -> span(-1.0, TUBE)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> span(1_185.0, TUBE)).hasMessageContaining("out of range");
        assertThatThrownBy(() -> new BeamMass(Mass.ofKilograms(-1))).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> BeamBearing.of(Stiffness.ofNewtonsPerMeter(0))).isInstanceOf(RefusedException.class);
        BeamLine line = BeamLine.uniform(Length.ofMeters(1), TUBE, STEEL);
        assertThatThrownBy(() -> line.modes(0)).hasMessageContaining("1 to 6");
        assertThatThrownBy(() -> line.modes(7)).hasMessageContaining("1 to 6");
    }
}
