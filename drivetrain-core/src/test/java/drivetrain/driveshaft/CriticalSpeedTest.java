package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import drivetrain.finding.Assumption;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class CriticalSpeedTest {

    private static final Length LENGTH = Length.ofMillimeters(1300);
    private static final String TUBE = "tube 76.2 mm x 2.1 mm of steel";

    private static CriticalSpeed critical(String shaft, Length... lengths) {
        return CriticalSpeed.of(Driveshaft.parse(shaft), List.of(lengths)).orThrow();
    }

    @Test
    void aTubeAloneHasTheSpeedOfTheClosedForm() {
        CriticalSpeed critical = critical(TUBE, LENGTH);

        assertThat(critical.speed().toRpm()).isCloseTo(critical.tubeAlone().toRpm(), withinPercentage(0.01));
        assertThat(critical.frequency().toHertz() * 60)
                .isCloseTo(critical.speed().toRpm(), withinPercentage(1e-9));
        assertThat(critical.bounce()).isEmpty();
        assertThat(critical.modes()).hasSize(3);
        assertThat(critical.beam().assumptions())
                .extracting(Assumption::subject)
                .contains("yokes", "shaft ends", "shaft material steel");
    }

    @Test
    void yokesRaiseAndASlenderStubLowersTheCriticalSpeed() {
        AngularSpeed tube = critical(TUBE, LENGTH).speed();
        AngularSpeed yokes =
                critical(TUBE + ", yokes 1.4 kg 75 mm long", LENGTH).speed();
        AngularSpeed stub = critical(TUBE + ", yokes 1.4 kg 75 mm long, slip 24 teeth 35 mm across 220 mm long", LENGTH)
                .speed();

        assertThat(yokes.toRpm()).isCloseTo(tube.toRpm(), withinPercentage(6));
        assertThat(stub).isLessThan(yokes);
    }

    @Test
    void saysWhatItTakesForGranted() {
        assertThat(critical(TUBE + ", slip 24 teeth", LENGTH).beam().assumptions())
                .filteredOn(assumption -> assumption.subject().equals("slip stub"))
                .singleElement()
                .satisfies(assumption -> assertThat(assumption.statement()).contains("taken as tube"));
        assertThat(critical(TUBE + ", yokes 1.4 kg 75 mm long", LENGTH).beam().assumptions())
                .filteredOn(assumption -> assumption.subject().equals("yokes"))
                .singleElement()
                .satisfies(assumption -> assertThat(assumption.statement()).contains("round bar"));
    }

    @Test
    void aThickerWallLowersAndAluminumHardlyChangesTheCriticalSpeed() {
        ShaftMaterial steel = ShaftMaterial.parse("steel");
        AngularSpeed thin = CriticalSpeed.ofUniform(Tube.parse("3 in x 0.065 in"), steel, LENGTH);
        AngularSpeed thick = CriticalSpeed.ofUniform(Tube.parse("3 in x 0.25 in"), steel, LENGTH);
        AngularSpeed aluminum =
                CriticalSpeed.ofUniform(Tube.parse("3 in x 0.065 in"), ShaftMaterial.parse("aluminum"), LENGTH);

        assertThat(thick).isLessThan(thin);
        assertThat(aluminum.toRpm()).isCloseTo(thin.toRpm(), withinPercentage(1.0));
    }

    @Test
    void aLaminateTubeHasSteelYokes() {
        String carbon = "tube 90 mm x 3 mm of laminate modulus 110 GPa shear 14 GPa density 1580 kg/m3";

        AngularSpeed plain = critical(carbon, LENGTH).speed();
        AngularSpeed yokes =
                critical(carbon + ", yokes 1.4 kg 75 mm long", LENGTH).speed();

        assertThat(plain).isGreaterThan(critical(TUBE, LENGTH).speed());
        assertThat(yokes.toRpm()).isCloseTo(plain.toRpm(), withinPercentage(15));
    }

    @Test
    void twoPiecesAreOneSystemOnTheirMount() {
        String two = "tube 76.2 mm x 2.1 mm of steel, yokes 1.4 kg 75 mm long, tube 76.2 mm x 2.1 mm of steel, "
                + "yokes 1.4 kg 75 mm long";
        Length front = Length.ofMillimeters(700);
        Length rear = Length.ofMillimeters(1100);

        CriticalSpeed soft = critical(two + ", bearing 300 N/mm", front, rear);
        CriticalSpeed firm = critical(two + ", bearing 300000 N/mm", front, rear);

        assertThat(soft.bounce()).isPresent();
        assertThat(soft.bounce().orElseThrow()).isLessThan(soft.speed());
        assertThat(firm.bounce()).isEmpty();
        assertThat(CriticalSpeed.of(Driveshaft.parse(two), List.of(front, rear))
                        .reason()
                        .orElseThrow())
                .contains("bearing 300 N/mm");
        assertThat(soft.working().steps())
                .extracting(Working.Step::name)
                .contains("bounce on the mount, mode 1", "bending mode 2", "critical speed");
    }

    @Test
    void refusesLengthsThatLeaveNoTube() {
        Driveshaft shaft = Driveshaft.parse(TUBE + ", yokes 1.4 kg 75 mm long");

        assertThatThrownBy(() -> CriticalSpeed.of(shaft, List.of(Length.ofMillimeters(150))))
                .hasMessageContaining("leaves no tube");
        assertThatThrownBy(() -> CriticalSpeed.of(shaft, List.of(LENGTH, LENGTH)))
                .hasMessageContaining("not as many");
        assertThatThrownBy(() -> CriticalSpeed.ofUniform(
                        Tube.parse("3 in x 0.083 in"), ShaftMaterial.parse("steel"), Length.ofMeters(0)))
                .hasMessageContaining("greater than zero");
    }

    @Test
    void showsHowItIsWorkedOut() {
        Working working = critical(TUBE + ", yokes 1.4 kg 75 mm long", LENGTH).working();

        assertThat(working.inputs()).extracting(Working.Input::symbol).contains("D", "t", "L", "E", "G", "rho", "m_y");
        assertThat(working.steps()).hasSizeGreaterThan(7);
        assertThat(working.sources()).isNotEmpty();
    }
}
