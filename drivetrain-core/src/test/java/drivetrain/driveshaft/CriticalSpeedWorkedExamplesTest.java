package drivetrain.driveshaft;

import static drivetrain.driveshaft.ShaftExamples.printed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Density;
import drivetrain.quantity.Frequency;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Torque;
import org.junit.jupiter.api.Test;

/** Speeds, stresses and orders of shafts against what others have published; the sources stand in {@code shaft-examples.csv}. */
class CriticalSpeedWorkedExamplesTest {

    /** A square beam, of which the section is written out; Cowper's coefficient for the rectangle is 10 (1 + nu) / (12 + 11 nu). */
    @Test
    void hasTheFrequenciesOfTheDeepBeamBenchmark() {
        double e = 200e9;
        double k = 10 * 1.3 / (12 + 11 * 0.3);
        BeamSection deep = new BeamSection(e * 16 / 12, k * e / 2.6 * 4, 8000 * 4, 8000 * 16.0 / 12);

        for (int n = 1; n <= 3; n++) {
            double hertz = BeamFormula.speed(deep, 10.0 / n) / (2 * Math.PI);
            assertThat(hertz).isCloseTo(printed("deep-beam-" + n), within(0.0055));
        }
    }

    /** The trade's constant is 7.5 pi sqrt(E / rho): 4.740e6 in inches at 205 GPa and 7850 kg/m3; the printed one belongs to 210 GPa. */
    @Test
    void theTradesConstantIsThatOfASlenderTube() {
        Tube tube = Tube.parse("3 in x 0.083 in");
        double inches = 48;
        double root = Math.hypot(3.0, 3.0 - 0.166);
        ShaftMaterial steel = ShaftMaterial.parse("modulus 205 GPa poisson 0.29 density 7850 kg/m3");
        ShaftMaterial stiffer = ShaftMaterial.parse("modulus 210 GPa poisson 0.29 density 7850 kg/m3");

        assertThat(constant(steel, tube, inches, root)).isCloseTo(4.740e6, within(500.0));
        assertThat(constant(stiffer, tube, inches, root)).isCloseTo(printed("trade-inches"), within(0.5e5));
        assertThat(constant(stiffer, tube, inches, root) * 25.4)
                .isCloseTo(printed("trade-millimeters"), within(0.01e8));
    }

    private static double constant(ShaftMaterial material, Tube tube, double inches, double root) {
        return CriticalSpeed.ofSlender(tube, material, Length.ofInches(inches)).toRpm() * inches * inches / root;
    }

    @Test
    void twistsATubeLikeTheTextbook() {
        Tube tube = Tube.of(Length.ofInches(1.75), Length.ofInches(0.25));
        double fourth = Math.pow(0.0254, 4);
        Torsion torsion = new Torsion(tube, ShaftMaterial.parse("aluminum"), Torque.ofPoundInches(6200));

        assertThat(tube.polarMoment() / fourth).isCloseTo(printed("torsion-polar-moment-in4"), within(0.0005));
        assertThat(torsion.stress().toPsi()).isCloseTo(printed("torsion-stress-psi"), within(1.5));
        double shearModulus = torsion.material().shearModulus().toPascals();
        double fourDegrees = torsion.twist(Length.ofInches(24)).toRadians()
                * shearModulus
                / Pressure.ofPsi(6200 * 24 / (0.68112 * Math.toRadians(4))).toPascals();
        assertThat(Math.toDegrees(fourDegrees)).isCloseTo(4.0, within(0.001));
    }

    /** The textbook leaves shear and the mass of the shaft out; shear lowers the speed by half a percent. */
    @Test
    void aSteppedShaftWithAFlywheelWhirlsLikeTheTextbooks() {
        double second = 0.3e-6;
        double weight = 400;
        double gravity = 9.80665;
        double deflection = printed("stepped-deflection-factor") * weight / (200e9 * second);
        Mass none = Mass.ofKilograms(1e-6);
        ShaftMaterial metal = ShaftMetal.of(Pressure.ofGigapascals(200), 0.0, Density.ofKilogramsPerCubicMeter(7850));
        Tube thin = Tube.solid(Length.ofMeters(Math.pow(64 * second / Math.PI, 0.25)));
        Tube thick = Tube.solid(Length.ofMeters(Math.pow(128 * second / Math.PI, 0.25)));
        BeamLine shaft = BeamLine.of(
                new BeamSpan(Length.ofMeters(0.25), thin, metal, none),
                new BeamSpan(Length.ofMeters(0.25), thick, metal, none),
                new BeamMass(Mass.ofKilograms(weight / gravity)),
                new BeamSpan(Length.ofMeters(0.25), thick, metal, none),
                new BeamSpan(Length.ofMeters(0.25), thin, metal, none));

        double textbook = Math.sqrt(gravity / deflection);
        assertThat(shaft.firstFrequency().toAngularSpeed().toRadiansPerSecond())
                .isCloseTo(textbook, withinPercentage(0.6))
                .isLessThan(textbook);
    }

    @Test
    void hasCowpersCoefficientForTheSolidCircle() {
        ShaftMaterial metal = ShaftMetal.of(Pressure.ofGigapascals(200), 0.3, Density.ofKilogramsPerCubicMeter(7850));

        assertThat(metal.shearCoefficient(Tube.solid(Length.ofMillimeters(50))))
                .isCloseTo(printed("cowper-solid"), within(0.0005));
    }

    @Test
    void countsOrdersLikeTheWorkshopPage() {
        AngularSpeed shaft = Frequency.ofHertz(7).toAngularSpeed().times(3.08);

        assertThat(VibrationOrders.ofShaft("rear driveshaft", shaft)
                        .get(0)
                        .frequency()
                        .toHertz())
                .isCloseTo(printed("orders-first"), within(0.5));
        assertThat(VibrationOrders.ofShaft("rear driveshaft", shaft)
                        .get(1)
                        .frequency()
                        .toHertz())
                .isCloseTo(printed("orders-second"), within(1.0));
    }
}
