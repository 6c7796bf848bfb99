package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Verdict;
import drivetrain.finding.Working;
import drivetrain.quantity.Length;
import drivetrain.quantity.Torque;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TorsionTest {

    private static final Tube TUBE = Tube.parse("3 in x 0.083 in");
    private static final ShaftMaterial STRONG =
            ShaftMaterial.parse("modulus 205 GPa poisson 0.29 density 7850 kg/m3 yield 400 MPa");

    private static Torsion torsion(double newtonMeters) {
        return new Torsion(TUBE, STRONG, Torque.ofNewtonMeters(newtonMeters));
    }

    @Test
    void yieldsAtTheFactorTimesTheTorque() {
        Torsion torsion = torsion(1500);
        double factor = torsion.factor().orElseThrow();

        assertThat(torsion.yieldTorque().orElseThrow().toNewtonMeters()).isCloseTo(1500 * factor, within(1e-6));
        assertThat(torsion(1500 * factor).stress().toPascals())
                .isCloseTo(STRONG.shearStrength().orElseThrow().toPascals(), within(1e-3));
        assertThat(torsion.twist(Length.ofMeters(2)).toRadians())
                .isCloseTo(2 * torsion.twist(Length.ofMeters(1)).toRadians(), within(1e-12));
    }

    @Test
    void hasNoFactorWithoutStrengthOrTorque() {
        assertThat(new Torsion(TUBE, ShaftMaterial.parse("steel"), Torque.ofNewtonMeters(1500)).factor())
                .isEmpty();
        assertThat(torsion(0).factor()).isEmpty();
        assertThat(torsion(0).stress().toPascals()).isZero();
        assertThatThrownBy(() -> torsion(-1)).hasMessageContaining("driveshaft torque");
    }

    @ParameterizedTest
    @CsvSource({"0.6, MET", "0.7, MARGINAL", "1.0001, EXCEEDED"})
    void holdsATorqueAgainstYield(double share, Verdict verdict) {
        double yield = torsion(1).yieldTorque().orElseThrow().toNewtonMeters();

        assertThat(TorsionChecks.tube("rear shaft", torsion(share * yield), "1st low", ShaftHouse.packed())
                        .verdict())
                .isEqualTo(verdict);
    }

    @Test
    void doesNotJudgeATubeOfUnknownStrength() {
        Torsion unknown = new Torsion(TUBE, ShaftMaterial.parse("steel"), Torque.ofNewtonMeters(1500));

        assertThat(TorsionChecks.tube("rear shaft", unknown, "1st low", ShaftHouse.packed())
                        .verdict())
                .isEqualTo(Verdict.NOT_EVALUATED);
    }

    @Test
    void holdsATorqueAgainstASuppliersRating() {
        Torque rating = Torque.ofNewtonMeters(1700);

        assertThat(TorsionChecks.rating(
                                "rear shaft joints",
                                Torque.ofNewtonMeters(1700),
                                rating,
                                "1st low",
                                ShaftHouse.packed())
                        .verdict())
                .isEqualTo(Verdict.MET);
        assertThat(TorsionChecks.rating(
                                "rear shaft joints",
                                Torque.ofNewtonMeters(1701),
                                rating,
                                "1st low",
                                ShaftHouse.packed())
                        .verdict())
                .isEqualTo(Verdict.EXCEEDED);
    }

    @Test
    void showsHowItIsWorkedOut() {
        Working working = torsion(1500).working(Optional.of(Length.ofMeters(1.2)));

        assertThat(working.steps())
                .extracting(Working.Step::name)
                .containsExactly("polar moment of area", "shear stress", "twist", "factor against yield");
        assertThat(new Torsion(TUBE, ShaftMaterial.parse("steel"), Torque.ofNewtonMeters(1500))
                        .working(Optional.empty())
                        .steps())
                .hasSize(2);
    }
}
