package drivetrain.gearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Verdict;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Length;
import drivetrain.quantity.RevolutionsPerDistance;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Torque;
import drivetrain.quantity.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures printed elsewhere; each resource and each test names its source. */
class GearingWorkedExamplesTest {

    /** The tolerance is half of the last printed digit. */
    @ParameterizedTest
    @CsvFileSource(resources = "tractive-effort.csv", useHeadersInDisplayName = true)
    void agreesWithGillespieOnTractiveEffort(
            double gear,
            double gearEfficiency,
            double axle,
            double axleEfficiency,
            double torquePoundFeet,
            double rpm,
            double revsPerMile,
            double forcePounds,
            double mph,
            double mphTolerance) {
        GearTrain train = new GearTrain(
                new Transmission(
                        "example",
                        List.of(Ratio.of(gear)),
                        Optional.empty(),
                        new Clutch(),
                        Optional.of(Efficiency.of(gearEfficiency))),
                Overdrive.none(),
                TransferCase.none(),
                new AxleRatio("example", Ratio.of(axle), Optional.of(Efficiency.of(axleEfficiency))),
                HubReduction.none());
        double radius =
                RevolutionsPerDistance.ofPerMile(revsPerMile).perRevolution().toFeet() / (2.0 * Math.PI);
        DriveGear first = train.top();
        assertThat(first.wheelTorque(Torque.ofPoundFeet(torquePoundFeet)).toPoundFeet() / radius)
                .isCloseTo(forcePounds, within(0.5));
        assertThat(first.speedAt(AngularSpeed.ofRpm(rpm), Length.ofFeet(radius)).toMilesPerHour())
                .isCloseTo(mph, within(mphTolerance));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "un-r39.csv", useHeadersInDisplayName = true)
    void agreesWithTheLimitsOfUnRegulation39(double trueKmh, double leastKmh, double mostKmh) {
        assertThat(verdict(trueKmh, leastKmh)).isEqualTo(Verdict.MET);
        assertThat(verdict(trueKmh, mostKmh)).isEqualTo(Verdict.MET);
        assertThat(verdict(trueKmh, leastKmh - 0.001)).isEqualTo(Verdict.EXCEEDED);
        assertThat(verdict(trueKmh, mostKmh + 0.001)).isEqualTo(Verdict.EXCEEDED);
    }

    /** The shown speed is set by the tire: calibrated over fitted circumference. */
    private static Verdict verdict(double trueKmh, double shownKmh) {
        Length fitted = Length.ofMillimeters(2400.0);
        Speedometer speedometer = new Speedometer(
                SpeedometerDrive.WHEELS,
                fitted.times(shownKmh / trueKmh),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty());
        return speedometer
                .unR39At(Speed.ofKilometersPerHour(trueKmh), fitted, Ratio.of(4.1), HubReduction.none())
                .verdict();
    }

    /** rpm = 336 mph i / d with d in inches: common practice, no source. 336 is 63360 / (60 pi) = 336.135 and wants the rolling diameter. */
    @Test
    void agreesWithTheTradeConstant336WithinItsRounding() {
        double constant = 63360.0 / (60.0 * Math.PI);
        assertThat(constant).isCloseTo(336.135, within(0.0005));
        DriveGear direct = single("1.00", "3.08");
        double rpm = direct.engineSpeedAt(Speed.ofMilesPerHour(65.0), Length.ofInches(15.0))
                .toRpm();
        assertThat(rpm).isCloseTo(65.0 * 3.08 * constant / 30.0, within(1e-9));
        assertThat(rpm).isCloseTo(2242.0, within(2242.0 * 0.135 / 336.0 + 0.5));
    }

    /** km/h = 0.377 n r / i with n in rpm and r in meters: textbook constant, from memory; 0.377 = 2 pi 60 / 1000. */
    @Test
    void agreesWithTheMetricConstant0377WithinItsRounding() {
        double kmh = single("1.00", "4.00")
                .speedAt(AngularSpeed.ofRpm(4000.0), Length.ofMeters(0.35))
                .toKilometersPerHour();
        assertThat(kmh).isCloseTo(0.377 * 4000.0 * 0.35 / 4.0, within(132.0 * 0.0005 / 0.377));
    }

    /** A vehicle maker's workshop page on vibration: at 40 mph the tire turns 7 times a second, with a 3.08 axle the driveshaft 22 times. */
    @Test
    void agreesWithAWorkshopPageOnDriveshaftSpeed() {
        DriveGear direct = single("1.00", "3.08");
        AngularSpeed engine = AngularSpeed.ofRpm(7.0 * 60.0 * 3.08);
        assertThat(direct.driveshaftSpeedAt(engine).toRpm() / 60.0).isCloseTo(22.0, within(0.5));
        assertThat(direct.speedAt(engine, Length.ofFeet(40.0 * 5280.0 / 3600.0 / 7.0 / (2.0 * Math.PI)))
                        .toMilesPerHour())
                .isCloseTo(40.0, within(1e-9));
    }

    /** Common practice, no source: these decimals are how the trade calls these pairs. */
    @ParameterizedTest
    @CsvSource({
        "41/11, 3.73",
        "41/10, 4.10",
        "37/9, 4.11",
        "41/9, 4.56",
        "39/8, 4.88",
        "41/8, 5.13",
        "43/8, 5.38",
        "41/12, 3.42",
        "43/14, 3.07",
        "39/11, 3.55"
    })
    void showsToothPairsAsTheTradeCallsThem(String pair, String shown) {
        assertThat(Ratio.parse(pair).figure().text(UnitSystem.US)).isEqualTo(shown);
    }

    private static DriveGear single(String gear, String axle) {
        return new GearTrain(
                        Transmission.parse(gear),
                        Overdrive.none(),
                        TransferCase.none(),
                        AxleRatio.parse(axle),
                        HubReduction.none())
                .top();
    }
}
