package drivetrain.gearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.CapacityFactor;
import drivetrain.quantity.Torque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ConverterCurveTest {

    private static final ConverterCurve CURVE = new ConverterCurve(
            List.of(point(0.0, 2.0, 150.0), point(0.5, 1.5, 160.0), point(0.9, 1.0, 220.0), point(0.98, 0.98, 450.0)));

    private static ConverterCurve.Point point(double speedRatio, double torqueRatio, double k) {
        return new ConverterCurve.Point(speedRatio, torqueRatio, CapacityFactor.ofRpmPerRootPoundFoot(k));
    }

    private static ConverterMatch.FullLoad flat(double poundFeet, double lowest, double highest) {
        return new ConverterMatch.FullLoad(
                AngularSpeed.ofRpm(lowest),
                AngularSpeed.ofRpm(highest),
                speed -> Torque.ofPoundFeet(poundFeet),
                speed -> Torque.ofPoundFeet(poundFeet));
    }

    private static Converter with(ConverterCurve curve) {
        return new Converter(
                OptionalDouble.empty(), true, OptionalDouble.empty(), Optional.empty(), Optional.of(curve));
    }

    private static ConverterMatch match() {
        return ConverterMatch.of(with(CURVE), flat(400.0, 800.0, 6000.0)).orThrow();
    }

    @Test
    void joinsItsPointsByLines() {
        assertThat(CURVE.torqueRatioAt(0.25)).isCloseTo(1.75, within(1e-12));
        assertThat(CURVE.capacityAt(0.7).toRpmPerRootPoundFoot()).isCloseTo(190.0, within(1e-9));
        assertThat(CURVE.stallTorqueRatio()).isEqualTo(2.0);
        assertThat(Refusals.of(() -> CURVE.torqueRatioAt(0.99)).problem()).contains("outside the curve");
    }

    @ParameterizedTest
    @CsvSource({
        "0.1, 2.0, 150, out of order",
        "0, 5.1, 150, impossible",
        "0, 2.0, 10, impossible",
        "0, 2.0, 4000, impossible",
        "0, 0.4, 150, impossible"
    })
    void refusesAnImpossibleStart(double speedRatio, double torqueRatio, double k, String problem) {
        assertThat(Refusals.of(() ->
                                new ConverterCurve(List.of(point(speedRatio, torqueRatio, k), point(0.9, 0.39, 300.0))))
                        .problem())
                .contains(problem);
    }

    @ParameterizedTest
    @CsvSource({"0, 1.5", "0.5, 2.1", "0.995, 0.9", "0.9, 1.2"})
    void refusesAnImpossibleSecondPoint(double speedRatio, double torqueRatio) {
        assertThat(Refusals.of(() -> new ConverterCurve(
                                List.of(point(0.0, 2.0, 150.0), point(speedRatio, torqueRatio, 300.0))))
                        .allowed())
                .contains("efficiency up to 1");
    }

    @Test
    void refusesTooFewAndTooManyPoints() {
        assertThat(Refusals.of(() -> new ConverterCurve(List.of(point(0.0, 2.0, 150.0))))
                        .problem())
                .contains("cannot be drawn");
        List<ConverterCurve.Point> many = IntStream.range(0, 41)
                .mapToObj(i -> point(i * 0.02, 1.0, 150.0))
                .toList();
        assertThat(Refusals.of(() -> new ConverterCurve(many)).problem()).contains("cannot be drawn");
    }

    /** K = n / sqrt(T): 400 lbf·ft and K 150 stall at 150 sqrt(400) = 3000 rpm. */
    @Test
    void stallsWhereThePumpTakesWhatTheEngineGives() {
        ConverterMatch.Point stall = match().stall();
        assertThat(stall.pumpSpeed().toRpm()).isCloseTo(3000.0, within(1e-6));
        assertThat(stall.pumpTorque().toPoundFeet()).isCloseTo(400.0, within(1e-6));
        assertThat(stall.turbineTorque().toPoundFeet()).isCloseTo(800.0, within(1e-6));
        assertThat(stall.turbineSpeed().si()).isZero();
        assertThat(stall.heat().toHorsepower()).isCloseTo(400.0 * 3000.0 * Math.PI / 30.0 / 550.0, within(1e-6));
    }

    @Test
    void everyPointAtFullLoadBalancesAndLosesPower() {
        List<ConverterMatch.Point> points = match().fullLoad();
        assertThat(points).hasSizeGreaterThan(8);
        for (ConverterMatch.Point point : points) {
            double k = CURVE.capacityAt(point.speedRatio()).si();
            assertThat(Math.pow(point.pumpSpeed().si() / k, 2.0))
                    .isCloseTo(point.pumpTorque().si(), within(1e-6));
            assertThat(point.heat().si()).isGreaterThanOrEqualTo(0.0);
        }
        assertThat(points).isSortedAccordingTo((a, b) -> a.turbineSpeed().compareTo(b.turbineSpeed()));
        assertThat(match().atCurvePoints()).first().isEqualTo(match().stall());
    }

    @Test
    void interpolatesTurbineTorqueBetweenItsPoints() {
        ConverterMatch match = match();
        ConverterMatch.Point third = match.fullLoad().get(2);
        assertThat(match.turbineTorqueAt(third.turbineSpeed()).si())
                .isCloseTo(third.turbineTorque().si(), within(1e-6));
        assertThat(match.turbineTorqueAt(AngularSpeed.ofRpm(0.0)).si())
                .isCloseTo(match.stall().turbineTorque().si(), within(1e-6));
        assertThat(match.fastestTurbine())
                .isEqualTo(match.fullLoad().get(match.fullLoad().size() - 1).turbineSpeed());
    }

    @Test
    void findsTheStateOfALoad() {
        ConverterMatch match = match();
        AngularSpeed turbine = AngularSpeed.ofRpm(1800.0);
        ConverterMatch.Point point =
                match.atLoad(turbine, Torque.ofPoundFeet(100.0)).orThrow();
        assertThat(point.turbineSpeed().toRpm()).isCloseTo(1800.0, within(1e-6));
        assertThat(point.turbineTorque().toPoundFeet()).isCloseTo(100.0, within(1e-6));
        assertThat(point.pumpSpeed().isGreaterThan(turbine)).isTrue();
        assertThat(match.atLoad(turbine, Torque.ofPoundFeet(1.0)).orThrow().speedRatio())
                .isEqualTo(0.98);
        assertThat(match.atLoad(turbine, Torque.ofPoundFeet(-5.0)).reason()).isPresent();
        assertThat(match.atLoad(AngularSpeed.ofRpm(0.1), Torque.ofPoundFeet(900.0))
                        .reason())
                .isPresent();
    }

    @Test
    void creepsAtIdle() {
        ConverterMatch match = match();
        AngularSpeed idle = AngularSpeed.ofRpm(600.0);
        assertThat(match.creepTorque(idle).toPoundFeet()).isCloseTo(2.0 * 16.0, within(1e-9));
        assertThat(match.creepSpeed(idle, Torque.ofPoundFeet(40.0)).si()).isZero();
        AngularSpeed moving = match.creepSpeed(idle, Torque.ofPoundFeet(10.0));
        assertThat(moving.toRpm()).isBetween(300.0, 590.0);
        assertThat(match.creepSpeed(idle, Torque.ofPoundFeet(0.1)).toRpm()).isCloseTo(588.0, within(1e-9));
    }

    @Test
    void saysWhenCurveAndEngineNeverMeet() {
        assertThat(ConverterMatch.of(with(CURVE), flat(10.0, 800.0, 6000.0)).reason())
                .hasValueSatisfying(why -> assertThat(why).contains("so tight"));
        assertThat(ConverterMatch.of(with(CURVE), flat(400.0, 800.0, 2500.0)).reason())
                .hasValueSatisfying(why -> assertThat(why).contains("so loose"));
    }

    @Test
    void estimatesACurveThroughTheStallPoint() {
        Converter converter = Converter.parse("stall 2.2 stall-speed 2400 rpm");
        ConverterMatch match =
                ConverterMatch.of(converter, flat(400.0, 800.0, 6000.0)).orThrow();
        assertThat(match.stall().pumpSpeed().toRpm()).isCloseTo(2400.0, within(1e-6));
        assertThat(match.stall().turbineTorque().toPoundFeet()).isCloseTo(880.0, within(1e-6));
        assertThat(match.assumptions())
                .singleElement()
                .satisfies(assumption -> assertThat(assumption.flagged()).isTrue());
        assertThat(match.working().steps()).hasSize(4);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0, 1.6, 2.0, 3.0, 5.0})
    void everyEstimateIsPossible(double stallTorqueRatio) {
        ConverterCurve curve = ConverterCurve.estimate(stallTorqueRatio, CapacityFactor.ofRpmPerRootPoundFoot(140.0));
        assertThat(curve.stallTorqueRatio()).isEqualTo(stallTorqueRatio);
    }

    @Test
    void asksForWhatItLacks() {
        assertThat(ConverterMatch.of(Converter.unknown(), flat(400.0, 800.0, 6000.0))
                        .reason())
                .hasValueSatisfying(why -> assertThat(why).contains("stall-speed 2200 rpm"));
        assertThat(ConverterMatch.of(Converter.parse("stall 2 stall-speed 7000 rpm"), flat(400.0, 800.0, 6000.0))
                        .reason())
                .hasValueSatisfying(why -> assertThat(why).contains("not known at the converter's stall speed"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "3.06 1.63 1.00 converter stall 2.2 stall-speed 2200 rpm lockup slip 3 % rating 600 lb-ft",
                "3.06 1.63 1.00 converter curve 0:2.1:150 0.5:1.5:160.25 0.95:0.99:300 no lockup",
                "4.03 2.36 1.00 clutch clutch-rating 450 lb-ft efficiency 96 % rating 650 N·m",
                "4.03 2.36 1.00 rating 650 lb-ft"
            })
    void transmissionsReadBackWithCurveAndRatings(String text) {
        Transmission read = Transmission.parse(text);
        assertThat(Transmission.parse(read.text())).isEqualTo(read);
        assertThat(Transmission.parse(read.text()).text()).isEqualTo(read.text());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "3.06 1 converter stall-speed 400 rpm; outside 500 to 8000 rpm",
                "3.06 1 converter stall-speed 2200; no unit",
                "3.06 1 converter curve 0:2:150; 1 points cannot be drawn",
                "3.06 1 converter curve 0:2 0.9:1:200; is not SPEED RATIO",
                "3.06 1 converter stall 2.5 curve 0:2:150 0.9:1:200; not the first one of its curve",
                "3.06 1 converter stall-speed 2200 rpm stall-speed 2300 rpm; twice",
                "3.06 1 clutch-rating 450 lb-ft; not understood",
                "3.06 1 clutch stall-speed 2200 rpm; wants \"converter\" ahead",
                "3.06 1 rating 450 lb; is a unit of mass",
                "3.06 1 rating -5 lb-ft; wanted"
            })
    void locatesFaultsOfCurvesAndRatings(String text, String problem) {
        assertThat(Refusals.of(() -> Transmission.parse(text)).problem()).contains(problem);
    }

    @Test
    void partsReadBackWithTheirRatings() {
        AxleRatio axle = AxleRatio.parse(
                "41/10 efficiency 96 % ring-rating 5500 lb-ft shaft-rating 3000 lb-ft joint-rating 2500.5 N·m");
        assertThat(AxleRatio.parse(axle.text())).isEqualTo(axle);
        assertThat(axle.ratings().ringAndPinion()).contains(Torque.ofPoundFeet(5500.0));
        TransferCase transfer = TransferCase.parse("1.00 2.72 part-time rating 2000 lb-ft output-rating 5000 lb-ft");
        assertThat(TransferCase.parse(transfer.text())).isEqualTo(transfer);
        assertThat(Refusals.of(() -> AxleRatio.parse("41/10 ring-rating")).problem())
                .contains("ends where");
    }

    @Test
    void refusesACurveThatContradictsTheStallTorqueRatio() {
        assertThat(Refusals.of(() -> new Converter(
                                OptionalDouble.of(2.5),
                                true,
                                OptionalDouble.empty(),
                                Optional.empty(),
                                Optional.of(CURVE)))
                        .problem())
                .contains("not that of the curve");
        assertThat(with(CURVE).stallMultiplication()).hasValue(2.0);
        assertThat(Converter.parse(with(CURVE).text().substring("converter ".length())))
                .isEqualTo(with(CURVE));
    }
}
