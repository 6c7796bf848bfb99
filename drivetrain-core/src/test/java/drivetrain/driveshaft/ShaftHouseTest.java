package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.driveshaft.ShaftHouse.Rule;
import drivetrain.finding.Finding;
import drivetrain.finding.HouseLimit;
import drivetrain.finding.HouseSet;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Angle;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Length;
import drivetrain.quantity.Torque;
import drivetrain.quantity.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ShaftHouseTest {

    private static final ShaftHouse PACKED = ShaftHouse.packed();
    private static final Source SHOP = Source.given("the shop");
    private static final AngularSpeed CRITICAL = AngularSpeed.ofRpm(8000);
    private static final String ROUGH = "output 2 deg down, shaft 1 m 8 deg down, pinion 4 deg down";
    private static final Source MAKER = Source.given("the shaft's maker");
    private static final Suspension ARMS = Suspension.parse("radius arms 880 mm ahead 40 mm below 640 mm apart,"
            + " pinion 260 mm ahead 30 mm above, bump 90 mm, droop 120 mm, track 1500 mm");

    private static ShaftHouse with(Map<Rule, Double> own) {
        return new ShaftHouse(HouseSet.of(
                Rule.class, rule -> own.containsKey(rule) ? new HouseLimit(own.get(rule), SHOP) : PACKED.of(rule)));
    }

    private static ShaftHouse with(Rule rule, double value) {
        return with(Map.of(rule, value));
    }

    private static ShaftSpeed held(double rpm) {
        return ShaftSpeed.held("cruise", AngularSpeed.ofRpm(rpm));
    }

    private static void judges(Finding finding, Verdict verdict, Source source) {
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(finding.rule()).isEqualTo(source);
    }

    @ParameterizedTest
    @EnumSource(Rule.class)
    void packsEveryRuleWithinItsRangeAndInTheUnitOfItsName(Rule rule) {
        String unit = rule.key().endsWith("Degrees")
                ? "deg"
                : rule.key().endsWith("Millimeters")
                        ? "mm"
                        : rule.key().endsWith("RadiansPerSecondSquared") ? "rad/s2" : "1";

        assertThat(rule.range().contains(PACKED.of(rule).value())).isTrue();
        assertThat(PACKED.of(rule).isGiven()).isFalse();
        assertThat(ShaftLimitTest.unit(rule)).isEqualTo(unit);
    }

    @ParameterizedTest
    @CsvSource({
        "CRITICAL_GOOD, 0.8, CRITICAL_MOST",
        "TORSIONAL_GOOD, 401, TORSIONAL_MOST",
        "INERTIAL_GOOD, 1001, INERTIAL_MOST",
        "JOINT_LEAST, 3.1, JOINT_MOST"
    })
    void refusesWhatIsGoodAboveWhatIsTooMuch(Rule low, double value, Rule high) {
        assertThatThrownBy(() -> with(low, value))
                .hasMessageContaining(low.key())
                .hasMessageContaining(high.key());
        assertThat(with(Map.of(low, value, high, value)).of(high).value()).isEqualTo(value);
    }

    @Test
    void holdsASpeedAgainstTheShopsOwnShares() {
        ShaftHouse strict = with(Map.of(Rule.CRITICAL_GOOD, 0.6, Rule.CRITICAL_MOST, 0.65));

        judges(
                ShaftSpeedChecks.critical("rear", CRITICAL, held(5000), PACKED),
                Verdict.MET,
                PACKED.source(Rule.CRITICAL_GOOD));
        judges(ShaftSpeedChecks.critical("rear", CRITICAL, held(5000), strict), Verdict.MARGINAL, SHOP);
        Finding beyond = ShaftSpeedChecks.critical("rear", CRITICAL, held(5300), strict);
        judges(beyond, Verdict.EXCEEDED, SHOP);
        assertThat(beyond.statement()).contains("the shop allows no more than 65 %");
        judges(
                ShaftSpeedChecks.critical("rear", CRITICAL, held(6100), with(Rule.CRITICAL_GOOD, 0.6)),
                Verdict.EXCEEDED,
                PACKED.source(Rule.CRITICAL_MOST));
        assertThat(ShaftSpeedChecks.allowed(CRITICAL, strict).toRpm()).isCloseTo(4800, within(1e-9));
    }

    @Test
    void keepsTheShopsOwnDistanceFromHalfTheCriticalSpeedAndFromTheBounce() {
        ShaftHouse wide = with(Rule.HALF_CRITICAL, 0.2);
        Optional<Angle> bent = Optional.of(Angle.ofDegrees(5));

        judges(
                ShaftSpeedChecks.half("rear", CRITICAL, held(3500), bent, PACKED),
                Verdict.MET,
                PACKED.source(Rule.HALF_CRITICAL));
        judges(ShaftSpeedChecks.half("rear", CRITICAL, held(3500), bent, wide), Verdict.MARGINAL, SHOP);
        judges(
                ShaftSpeedChecks.half("rear", CRITICAL, held(4000), bent, with(Rule.HALF_CRITICAL_ANGLE, 6.0)),
                Verdict.MET,
                SHOP);
        judges(ShaftSpeedChecks.bounce("rear", AngularSpeed.ofRpm(3000), held(3500), wide), Verdict.MARGINAL, SHOP);
        Finding packed = ShaftSpeedChecks.bounce("rear", AngularSpeed.ofRpm(3000), held(3500), PACKED);
        assertThat(packed.verdict()).isEqualTo(Verdict.MET);
        assertThat(packed.rule()).isNotEqualTo(SHOP);
    }

    @Test
    void sizesATubeByTheShopsOwnShare() {
        ShaftHouse strict = with(Rule.CRITICAL_GOOD, 0.5);
        AngularSpeed speed = AngularSpeed.ofRpm(4000);
        Length length = Length.ofMillimeters(1200);

        assertThat(TubeSizing.of(speed, length, strict).rows())
                .filteredOn(TubeSizing.Row::willDo)
                .hasSizeLessThan((int) TubeSizing.of(speed, length, PACKED).rows().stream()
                        .filter(TubeSizing.Row::willDo)
                        .count());
        assertThat(TubeSizing.of(speed, length, strict).working().sources()).contains(SHOP);
    }

    @Test
    void judgesJointsByTheShopsOwnAngles() {
        InstalledShaft installed = Lines.rear("output 2 deg down, shaft 1 m 4 deg down, pinion 2.5 deg down");

        Finding straight = LineChecks.angles(installed, with(Map.of(Rule.JOINT_LEAST, 2.5)))
                .get(0);
        judges(straight, Verdict.MARGINAL, SHOP);
        assertThat(straight.statement()).contains("at least 2.5 deg");
        judges(LineChecks.angles(installed, with(Rule.JOINT_MOST, 1.5)).get(0), Verdict.MARGINAL, SHOP);
        judges(LineChecks.angles(installed, PACKED).get(2), Verdict.MET, PACKED.source(Rule.JOINT_DIFFERENCE));
        judges(LineChecks.angles(installed, with(Rule.JOINT_DIFFERENCE, 0.4)).get(2), Verdict.MARGINAL, SHOP);
    }

    /** A shop may bend its joints further than the rule, but never further than their maker lets it. */
    @Test
    void letsTheMakersAngleStandBeforeTheShops() {
        InstalledShaft bent = Lines.rear("output 2 deg down, shaft 1 m 34 deg down, pinion 2 deg down");
        Source maker = LineChecks.angles(bent, PACKED).get(0).rule();

        judges(LineChecks.angles(bent, with(Rule.JOINT_MOST, 40.0)).get(0), Verdict.EXCEEDED, maker);
        assertThat(maker).isNotEqualTo(SHOP);
    }

    @Test
    void holdsAGivenLengthAgainstTheShopsOwnDifference() {
        InstalledShaft installed = Lines.rear(
                "tube 3 in x 0.083 in of steel, length 1012 mm",
                "output 2 deg down, shaft 1 m 4 deg down, pinion 2 deg down");

        judges(LineChecks.angles(installed, with(Rule.LENGTH_DIFFERENCE, 15.0)).get(2), Verdict.MET, SHOP);
    }

    @Test
    void judgesMotionByTheShopsOwnAccelerations() {
        InstalledShaft installed = Lines.rear(ROUGH);
        LineMotion motion = installed.motionAt(AngularSpeed.ofRpm(1500));
        ShaftHouse calm = with(Map.of(
                Rule.TORSIONAL_GOOD,
                10.0,
                Rule.TORSIONAL_MOST,
                20.0,
                Rule.INERTIAL_GOOD,
                10.0,
                Rule.INERTIAL_MOST,
                20.0));

        assertThat(Finding.worst(LineChecks.motion(installed, motion, "at a test", PACKED)))
                .isEqualTo(Verdict.MET);
        assertThat(LineChecks.motion(installed, motion, "at a test", calm))
                .allSatisfy(finding -> judges(finding, Verdict.EXCEEDED, SHOP));
        Finding lowered = LineChecks.motion(installed, motion, "at a test", with(Rule.TORSIONAL_GOOD, 10.0))
                .get(0);
        judges(lowered, Verdict.MARGINAL, SHOP);
        assertThat(lowered.limit().orElseThrow().text(UnitSystem.US)).isEqualTo("10 rad/s2");
        assertThat(LineChecks.speedLimit(installed, calm).orElseThrow())
                .isLessThan(LineChecks.speedLimit(installed, PACKED).orElseThrow());
    }

    @Test
    void slopesAndReadingsAreJudgedByTheShopsOwnAccelerations() {
        InstalledShaft installed = Lines.rear(ROUGH);
        AngularSpeed speed = AngularSpeed.ofRpm(2000);
        ShaftHouse calm = with(Map.of(Rule.TORSIONAL_GOOD, 100.0, Rule.TORSIONAL_MOST, 120.0));

        assertThat(PinionSlope.of(installed, speed, calm).most().orElseThrow())
                .isLessThan(PinionSlope.of(installed, speed, PACKED).most().orElseThrow());
        assertThat(tolerances(speed, calm)).isNotEqualTo(tolerances(speed, PACKED));
    }

    private static List<OptionalDouble> tolerances(AngularSpeed speed, ShaftHouse house) {
        return ReadingTolerance.of(
                        LineSurvey.parse(ROUGH), ShaftPlace.REAR, Driveshaft.parse(Lines.SHAFT), speed, house)
                .stream()
                .map(ReadingTolerance::torsional)
                .toList();
    }

    @Test
    void holdsATubeAgainstTheShopsOwnFactor() {
        Torsion torsion = new Torsion(
                Tube.of(Length.ofMillimeters(76.2), Length.ofMillimeters(2.1)),
                ShaftMaterial.parse("steel-1026-drawn"),
                Torque.ofNewtonMeters(1000));
        double factor = torsion.factor().orElseThrow();

        judges(
                TorsionChecks.tube("rear shaft", torsion, "1st low", PACKED),
                Verdict.MET,
                PACKED.source(Rule.YIELD_FACTOR));
        judges(
                TorsionChecks.tube("rear shaft", torsion, "1st low", with(Rule.YIELD_FACTOR, factor * 1.01)),
                Verdict.MARGINAL,
                SHOP);
    }

    /** A reserve is the shop's; what is beyond the rating is beyond it whatever the shop says. */
    @Test
    void keepsTheShopsOwnReserveBelowASuppliersRating() {
        Torque rating = Torque.ofNewtonMeters(1700);
        ShaftHouse careful = with(Rule.RATING_RESERVE, 0.1);

        Finding near = TorsionChecks.rating("joints", Torque.ofNewtonMeters(1600), rating, "1st low", careful);
        judges(near, Verdict.MARGINAL, SHOP);
        assertThat(near.statement()).contains("less is left than the 10 % that the shop wants");
        judges(
                TorsionChecks.rating("joints", Torque.ofNewtonMeters(1500), rating, "1st low", careful),
                Verdict.MET,
                SHOP);
        Finding beyond = TorsionChecks.rating("joints", Torque.ofNewtonMeters(1701), rating, "1st low", careful);
        assertThat(beyond.verdict()).isEqualTo(Verdict.EXCEEDED);
        assertThat(beyond.rule()).isNotEqualTo(SHOP);
        judges(
                TorsionChecks.rating("joints", Torque.ofNewtonMeters(1600), rating, "1st low", PACKED),
                Verdict.MET,
                PACKED.source(Rule.RATING_RESERVE));
    }

    @Test
    void judgesTheTravelByTheShopsOwnReserves() {
        ShaftTravel travel =
                ShaftTravel.of(Lines.rear("output 3 deg down, shaft 1100 mm 9 deg down, pinion 3 deg down"), ARMS);
        ShaftHouse strict = with(
                Map.of(Rule.JOINT_RESERVE, 0.9, Rule.ENGAGEMENT, 3.0, Rule.SLIP_RESERVE, 60.0, Rule.BUSH_GIVE, 0.01));

        assertThat(Finding.worst(TravelChecks.of(travel, PACKED))).isEqualTo(Verdict.MET);
        judges(TravelChecks.of(travel, with(Rule.SLIP_RESERVE, 1.0)).get(3), Verdict.MET, SHOP);
        assertThat(TravelChecks.of(travel, strict))
                .hasSize(5)
                .allSatisfy(finding -> judges(finding, Verdict.MARGINAL, SHOP));
    }

    @Test
    void letsTheMakersEngagementStandBeforeTheShops() {
        InstalledShaft installed = Lines.rear(
                "tube 3 in x 0.083 in of steel, slip 24 teeth 38 mm across 95 mm engaged 20 mm least",
                "output 3 deg down, shaft 1100 mm 9 deg down, pinion 3 deg down");

        judges(
                TravelChecks.of(ShaftTravel.of(installed, ARMS), with(Rule.ENGAGEMENT, 3.0))
                        .get(2),
                Verdict.MET,
                MAKER);
    }

    @Test
    void takesTheShopsOwnToleranceOfAVibration() {
        assertThat(Suspect.usualTolerance(with(Rule.ORDER_TOLERANCE, 0.03))).isEqualTo(0.03);
        assertThat(Suspect.usualToleranceTaken(with(Rule.ORDER_TOLERANCE, 0.03)).source())
                .isEqualTo(SHOP);
    }
}
