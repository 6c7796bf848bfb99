package drivetrain.gearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import drivetrain.finding.Working;
import drivetrain.quantity.Length;
import drivetrain.quantity.Speed;
import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.RefusedException;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpeedometerTest {

    private static final Length CALIBRATED = Length.ofMillimeters(2400.0);
    private static final Ratio AXLE = Ratio.ofTeeth(41, 10);
    private static final Speed TRUE = Speed.ofKilometersPerHour(100.0);

    private final Speedometer shaft = new Speedometer(
            SpeedometerDrive.DRIVESHAFT, CALIBRATED, Optional.of(AXLE), OptionalInt.of(20), OptionalInt.of(8));
    private final Speedometer wheels = new Speedometer(
            SpeedometerDrive.WHEELS, CALIBRATED, Optional.empty(), OptionalInt.empty(), OptionalInt.empty());

    @Test
    void showsTheTrueSpeedAsCalibrated() {
        SpeedometerReading reading = shaft.read(TRUE, CALIBRATED, Ratio.parse("4.10"));
        assertThat(reading.shown()).isEqualTo(TRUE);
        assertThat(reading.errorFraction()).isZero();
        assertThat(shaft.unR39(CALIBRATED, AXLE, HubReduction.none()).verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void showsTooLittleOnALargerTireAndFailsByAnyAmount() {
        Length larger = Length.ofMillimeters(2401.0);
        assertThat(shaft.read(TRUE, larger, AXLE).error().toKilometersPerHour())
                .isCloseTo(-100.0 / 2401.0, within(1e-9));
        Finding finding = shaft.unR39(larger, AXLE, HubReduction.none());
        assertThat(finding.verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(finding.statement()).startsWith("at a true 120 km/h it shows 120.0 km/h");
        assertThat(finding.margin().orElseThrow().number(UnitSystem.METRIC)).isNegative();
    }

    @Test
    void showsTooMuchWithAShorterAxleOnlyWhereTheShaftTurnsIt() {
        Ratio shorter = Ratio.ofTeeth(41, 8);
        assertThat(shaft.read(TRUE, CALIBRATED, shorter).errorFraction()).isCloseTo(0.25, within(1e-12));
        assertThat(wheels.read(TRUE, CALIBRATED, shorter).errorFraction()).isZero();
    }

    @Test
    void countsAHubReductionOnlyWhereTheShaftTurnsIt() {
        HubReduction hubs = HubReduction.parse("1.5");
        assertThat(shaft.shownOverTrue(CALIBRATED, AXLE, hubs)).isCloseTo(1.5, within(1e-12));
        assertThat(wheels.shownOverTrue(CALIBRATED, AXLE, hubs)).isEqualTo(1.0);
    }

    @Test
    void tiesTheWorstTestSpeedToItsLimit() {
        Finding fast = shaft.unR39(Length.ofMillimeters(2000.0), AXLE, HubReduction.none());
        assertThat(fast.verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(fast.limit().orElseThrow().number(UnitSystem.METRIC)).isCloseTo(136.0, within(1e-9));
        assertThat(fast.value().orElseThrow().number(UnitSystem.METRIC)).isCloseTo(144.0, within(1e-9));
    }

    @Test
    void holdsAnySpeedAgainstTheRelation() {
        Length smaller = Length.ofMillimeters(2000.0);
        assertThat(shaft.unR39At(Speed.ofKilometersPerHour(20.0), smaller, AXLE, HubReduction.none())
                        .verdict())
                .isEqualTo(Verdict.MET);
        assertThat(shaft.unR39At(Speed.ofKilometersPerHour(60.0), smaller, AXLE, HubReduction.none())
                        .verdict())
                .isEqualTo(Verdict.EXCEEDED);
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> shaft.unR39At(Speed.ofKilometersPerHour(0.0), smaller, AXLE, HubReduction.none()));
    }

    @Test
    void takesTheLegalNeighborThoughTheOtherIsNearer() {
        // exact count 20 x 2400 / 2443 = 19.648: 20 is nearer and shows 1.8 % too little
        DrivenGearChoice choice = shaft.drivenGearChoice(Length.ofMillimeters(2443.0), AXLE, HubReduction.none())
                .orElseThrow();
        assertThat(choice.exactTeeth()).isCloseTo(19.648, within(0.0005));
        assertThat(choice.more().orElseThrow().teeth()).isEqualTo(20);
        assertThat(choice.more().orElseThrow().legal()).isFalse();
        assertThat(choice.legal().orElseThrow().teeth()).isEqualTo(19);
        assertThat(choice.legal().orElseThrow().shownOverTrue()).isCloseTo(19.648 / 19.0, within(1e-4));
    }

    @Test
    void keepsAWholeCount() {
        DrivenGearChoice choice = shaft.drivenGearChoice(Length.ofMillimeters(3000.0), AXLE, HubReduction.none())
                .orElseThrow();
        assertThat(choice.exactTeeth()).isEqualTo(16.0);
        assertThat(choice.more()).isEmpty();
        assertThat(choice.legal().orElseThrow()).isEqualTo(new DrivenGear(16, 1.0, true));
    }

    @Test
    void findsNoLegalGearWhereOneToothIsTooMuch() {
        DrivenGearChoice choice = DrivenGearChoice.of(5, 1.19);
        assertThat(choice.fewer().orElseThrow().legal()).isFalse();
        assertThat(choice.more().orElseThrow().legal()).isFalse();
        assertThat(choice.legal()).isEmpty();
    }

    @Test
    void leavesOutGearsThatDoNotExist() {
        assertThat(DrivenGearChoice.of(5, 0.9).fewer()).isEmpty();
        assertThat(DrivenGearChoice.of(5, 0.9).more()).isPresent();
        assertThat(DrivenGearChoice.of(80, 1.001).more()).isEmpty();
        assertThat(wheels.drivenGearChoice(CALIBRATED, AXLE, HubReduction.none()))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"2400, MET", "2640, MET", "2670, MARGINAL", "2181.9, MET", "2000, MARGINAL"})
    void informsAboutUsCommercialVehicles(double circumference, Verdict verdict) {
        Finding finding = shaft.usCommercial(Length.ofMillimeters(circumference), AXLE, HubReduction.none());
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(finding.statement()).contains("for information");
        assertThat(finding.rule().citation()).isEqualTo("49 CFR 393.82");
    }

    @Test
    void explainsTheReading() {
        Working plain = shaft.working(TRUE, Length.ofMillimeters(2500.0), AXLE, HubReduction.none());
        assertThat(plain.steps()).first().satisfies(step -> {
            assertThat(step.formula()).isEqualTo("v_s = v x C_0 / C x i_x / i_0");
            assertThat(step.result().text(UnitSystem.METRIC)).isEqualTo("96.0 km/h");
        });
        assertThat(shaft.working(TRUE, CALIBRATED, AXLE, HubReduction.parse("1.5"))
                        .steps())
                .first()
                .extracting(Working.Step::formula)
                .isEqualTo("v_s = v x C_0 / C x i_x x i_h / i_0");
        assertThat(wheels.working(TRUE, CALIBRATED, AXLE, HubReduction.none()).steps())
                .first()
                .extracting(Working.Step::formula)
                .isEqualTo("v_s = v x C_0 / C");
    }

    @Test
    void refusesWhatDoesNotFitTogether() {
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> new Speedometer(
                        SpeedometerDrive.DRIVESHAFT,
                        CALIBRATED,
                        Optional.empty(),
                        OptionalInt.empty(),
                        OptionalInt.empty()))
                .withMessageContaining("axle ratio");
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> new Speedometer(
                        SpeedometerDrive.DRIVESHAFT,
                        CALIBRATED,
                        Optional.of(AXLE),
                        OptionalInt.of(20),
                        OptionalInt.empty()))
                .withMessageContaining("together");
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> new Speedometer(
                        SpeedometerDrive.WHEELS, CALIBRATED, Optional.empty(), OptionalInt.of(20), OptionalInt.of(8)))
                .withMessageContaining("together");
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> new Speedometer(
                        SpeedometerDrive.DRIVESHAFT,
                        CALIBRATED,
                        Optional.of(AXLE),
                        OptionalInt.of(20),
                        OptionalInt.of(4)))
                .withMessageContaining("5 to 80 teeth");
        assertThatExceptionOfType(RefusedException.class).isThrownBy(() -> new DrivenGear(81, 1.0, true));
    }

    @ParameterizedTest
    @CsvSource({"0", "-2400", "999", "5001"})
    void refusesImpossibleCircumferences(double millimeters) {
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> shaft.read(TRUE, Length.ofMillimeters(millimeters), AXLE))
                .withMessageContaining("1000 to 5000 mm");
    }

    @Test
    void namesItsDrives() {
        assertThat(SpeedometerDrive.DRIVESHAFT.label()).isEqualTo("driveshaft");
        assertThat(SpeedometerDrive.WHEELS.label()).isEqualTo("wheels");
    }
}
