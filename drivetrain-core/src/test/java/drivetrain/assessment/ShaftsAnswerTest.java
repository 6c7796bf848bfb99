package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.HouseLimits;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.finding.Finding;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Frequency;
import drivetrain.quantity.Length;
import drivetrain.quantity.Speed;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class ShaftsAnswerTest {

    private static final String STEEP_FRONT = "output 2 deg up, shaft 640 mm 9 deg down, pinion 2 deg up";

    private static final Specification TYPED =
            Builds.TOURER.with(Slot.VEHICLE, "mass 2600 kg front 1500 kg rear 1900 kg");

    private static ShaftsAnswer ask(Specification order) {
        return ShaftsAnswer.of(Builds.of(order)).orThrow();
    }

    private static Specification both() {
        return Builds.TOURER
                .with(Slot.FRONT_SHAFT, "tube 2 in x 0.12 in of steel, yokes in phase, joints to 25 deg")
                .with(Slot.FRONT_LINE, STEEP_FRONT);
    }

    /** A shaft turns with the wheels of its axle: road speed over rolling radius times the axle ratio, whichever gear is in. */
    @Test
    void shaftTurnsWithItsWheels() {
        Combination tourer = Builds.tourer();
        double wheel = Speed.ofMilesPerHour(70.0).toMetersPerSecond() / 2.457;

        AngularSpeed speed = ShaftSpeeds.at(tourer, ShaftPlace.REAR, Speed.ofMilesPerHour(70.0))
                .orThrow();

        assertThat(speed.toRpm()).isCloseTo(wheel * 60.0 * 41.0 / 11.0, within(0.01));
        assertThat(CruiseAnswer.at(tourer, Speed.ofMilesPerHour(70.0), GearChoice.TOP)
                        .orThrow()
                        .driveshaftSpeed()
                        .toRpm())
                .isCloseTo(speed.toRpm(), within(0.01));
    }

    private static Combination withLimit(String limit, double value) {
        HouseLimits own = HouseLimits.packed().with(limit, value, "the shop");
        return Combination.resolve(TYPED, Catalog.titled("own").limits(own).build());
    }

    private static void heeds(List<Finding> packed, List<Finding> own, String checked) {
        assertThat(named(packed, checked).verdict()).isEqualTo(Verdict.MET);
        assertThat(named(own, checked).verdict()).isGreaterThan(Verdict.MET);
        assertThat(named(own, checked).rule().citation()).isEqualTo("the shop");
    }

    private static Finding named(List<Finding> findings, String checked) {
        return findings.stream()
                .filter(finding -> finding.checked().contains(checked))
                .findFirst()
                .orElseThrow();
    }

    /** Every question about the shafts asks the catalog for its limits. */
    @Test
    void heedsTheLimitsOfTheShop() {
        Combination tourer = Combination.resolve(TYPED, Catalog.empty());
        Combination still = withLimit("inertialAccelerationMostRadiansPerSecondSquared", 501.0);
        Combination slow = withLimit("criticalSpeedShareGood", 0.3);
        Combination slack = withLimit("splineEngagementLeastDiameters", 3.0);
        Combination spared = withLimit("torqueRatingReserveLeast", 0.9);
        Combination near = withLimit("vibrationToleranceMost", 0.01);

        assertThat(ShaftsAnswer.of(still).orThrow().shafts().get(0).speedLimit().orElseThrow())
                .isLessThan(ShaftsAnswer.of(tourer)
                        .orThrow()
                        .shafts()
                        .get(0)
                        .speedLimit()
                        .orElseThrow());
        heeds(
                CriticalSpeedAnswer.of(tourer).orThrow().findings(),
                CriticalSpeedAnswer.of(slow).orThrow().findings(),
                "rear shaft speed");
        heeds(Assessment.of(tourer).findings(), Assessment.of(slow).findings(), "rear shaft speed");
        heeds(
                TravelAnswer.of(tourer).orThrow().findings(),
                TravelAnswer.of(slack).orThrow().findings(),
                "engagement");
        heeds(
                StrengthAnswer.of(tourer).orThrow().findings(),
                StrengthAnswer.of(spared).orThrow().findings(),
                "joints");
        assertThat(TubesAnswer.at(slow, Length.ofMillimeters(1200), AngularSpeed.ofRpm(4000))
                        .working()
                        .sources())
                .extracting(Source::citation)
                .contains("the shop");
        assertThat(SuspectAnswer.of(
                                near,
                                Frequency.ofHertz(30.0),
                                Speed.ofMilesPerHour(40.0),
                                GearChoice.TOP,
                                OptionalInt.empty(),
                                OptionalDouble.empty())
                        .orThrow()
                        .tolerance())
                .isEqualTo(0.01);
    }

    @Test
    void hubReductionTurnsTheShaftFaster() {
        Combination portal = Builds.of(Builds.TOURER.with(Slot.HUBS, "24/16"));

        assertThat(ShaftSpeeds.shaftRatio(portal, ShaftPlace.REAR).orThrow())
                .isCloseTo(41.0 / 11.0 * 1.5, within(1e-12));
    }

    @Test
    void judgesAtCruiseAndAtTopSpeed() {
        ShaftAnswer rear = ask(Builds.TOURER).shafts().get(0);

        assertThat(rear.motions().orThrow())
                .extracting(ShaftAnswer.Motion::when)
                .containsExactly("at cruise", "at the tire's limit");
        assertThat(rear.judgedSpeed().orThrow().toRpm()).isBetween(2500.0, 3000.0);
        assertThat(rear.findings())
                .extracting(Finding::checked)
                .anyMatch(checked -> checked.contains("torsional acceleration at cruise"))
                .anyMatch(checked -> checked.contains("inertial acceleration at the tire's limit"));
        assertThat(rear.pinionSlope().orThrow().best().toDegrees()).isCloseTo(3.2, within(0.05));
        assertThat(rear.reclocking().orThrow().teeth()).isZero();
        assertThat(rear.tolerances().orThrow()).hasSize(4);
    }

    private static ShaftSpeeds.Judged fastest(Specification order) {
        return ShaftSpeeds.fastest(ShaftGround.of(Builds.of(order))).orElseThrow();
    }

    /** The tire's speed symbol holds the top speed where power and gearing would allow more. */
    @Test
    void topSpeedIsTheLesserOfPowerGearingAndTire() {
        assertThat(fastest(Builds.TOURER).road().toKilometersPerHour()).isCloseTo(170.0, within(1e-9));
        assertThat(fastest(Builds.TOURER).where()).isEqualTo("tire at its speed symbol R");
    }

    /** What the vehicle reaches by power, not what its overdriven gear would allow at the engine's maximum speed. */
    @Test
    void topSpeedIsThatOfPowerWhereTheTireTellsNone() {
        Specification plain = Builds.TOURER.with(Slot.TIRE, "LT265/75R16 rollout 2457 mm");
        Speed reached = TopAnswer.of(Builds.of(plain))
                .orThrow()
                .fastest()
                .top()
                .orThrow()
                .speed();

        assertThat(fastest(plain).when()).isEqualTo("at top speed");
        assertThat(fastest(plain).road()).isEqualTo(reached);
        assertThat(reached.toKilometersPerHour()).isLessThan(300.0);
        assertThat(ask(plain).assumptions()).extracting("subject").contains("top speed of the shafts");
    }

    @Test
    void topSpeedIsTheGearingsWhereThePowerIsNotKnown() {
        Specification plain =
                Builds.TOURER.with(Slot.TIRE, "LT265/75R16 rollout 2457 mm").without(Slot.VEHICLE);

        assertThat(fastest(plain).when()).isEqualTo("at the end of the gearing");
        assertThat(fastest(plain).road().toKilometersPerHour()).isGreaterThan(300.0);
        assertThat(ask(plain).assumptions()).extracting("subject").doesNotContain("top speed of the shafts");
    }

    /** The driver alone keeps a vehicle with more power than its tires may see from the speed at which its shaft whirls. */
    @Test
    void whatOnlyTheDriverPreventsIsMarginal() {
        assertThat(ask(Builds.TOURER).findings())
                .filteredOn(finding -> finding.checked().startsWith("rear shaft speed, top speed by power"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.MARGINAL);
                    assertThat(finding.statement()).contains("only the driver");
                });
    }

    @Test
    void holdsASpeedAgainstTheCriticalSpeedAsTheQuestionAboutItDoes() {
        assertThat(ask(both()).findings())
                .containsAll(CriticalSpeedAnswer.of(Builds.of(both())).orThrow().findings());
    }

    /** Couples at the torque of the load path: T tan b and T sin b of a single joint. */
    @Test
    void findsTheSecondaryCouplesAtTheGreatestTorque() {
        ShaftAnswer rear = ask(Builds.TOURER).shafts().get(0);
        ShaftAnswer.Couples couples = rear.couples().orThrow();
        double torque = StrengthAnswer.of(Builds.tourer())
                .orThrow()
                .shafts()
                .get(0)
                .torque()
                .toNewtonMeters();
        double bend = rear.installed().line().angle(0).toRadians();

        assertThat(couples.torque().toNewtonMeters()).isEqualTo(torque);
        assertThat(couples.where()).isEqualTo("tires slip on dry asphalt");
        assertThat(couples.joints().get(0).onDriving().toNewtonMeters())
                .isCloseTo(torque * Math.tan(bend), within(1e-9));
        assertThat(couples.joints().get(0).onDriven().toNewtonMeters())
                .isCloseTo(torque * Math.sin(bend), within(1e-9));
        assertThat(ask(Builds.TOURER).working().steps())
                .anySatisfy(step -> assertThat(step.name()).isEqualTo("second order of the rear joint 2"));
        assertThat(ask(Builds.TOURER.without(Slot.TRANSMISSION))
                        .shafts()
                        .get(0)
                        .couples()
                        .reason())
                .contains("no transmission is chosen");
        assertThat(ask(Builds.TOURER.without(Slot.VEHICLE))
                        .shafts()
                        .get(0)
                        .couples()
                        .orThrow()
                        .where())
                .isEqualTo("engine limited, tire slip not known");
    }

    @Test
    void saysWhatIsMissingForTheMotion() {
        Specification noTire = Builds.TOURER.without(Slot.TIRE);
        Specification noSpeed = new Specification(
                "",
                Builds.TOURER.without(Slot.TIRE).choices(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");

        assertThat(ask(noTire).shafts().get(0).motions().reason()).contains("no tire is chosen");
        assertThat(ask(noSpeed).shafts().get(0).motions().reason().orElseThrow())
                .contains("type cruise 65 mph");
        assertThat(ask(noTire).findings()).extracting(Finding::verdict).contains(Verdict.NOT_EVALUATED);
    }

    @Test
    void holdsTheSpeedsAgainstTheCriticalSpeed() {
        ShaftAnswer rear = ask(Builds.TOURER).shafts().get(0);

        assertThat(rear.critical().orThrow().speed().toRpm()).isBetween(6000.0, 8500.0);
        assertThat(rear.findings())
                .extracting(Finding::checked)
                .contains("rear shaft speed, tire at its speed symbol R", "rear shaft, half critical speed, cruise");
        assertThat(ask(Builds.TOURER).cautions()).extracting("hazard").contains("rotating shaft");
    }

    /** A joint past its own rating is not answered for in motion. */
    @Test
    void answersForNoMotionWhereAJointIsOverbent() {
        ShaftAnswer rear = ask(Builds.TOURER.with(
                        Slot.REAR_LINE, "output 3 deg down, shaft 600 mm 30 deg down, pinion 3 deg down"))
                .shafts()
                .get(0);

        assertThat(rear.motions().reason().orElseThrow())
                .isEqualTo("joint 1 of the rear shaft bends 27.0 deg and its maker allows 25.0 deg");
        assertThat(rear.pinionSlope().value()).isEmpty();
        assertThat(rear.findings()).extracting(Finding::verdict).contains(Verdict.EXCEEDED, Verdict.NOT_EVALUATED);
    }

    /** The front shaft of a part-time drive can rest: what it does at speed is never worse than marginal. */
    @Test
    void frontShaftOfAPartTimeDriveCanRest() {
        ShaftsAnswer partTime = ask(both());
        ShaftsAnswer locked = ask(both().with(Slot.TRANSFER, "1.00 2.72 locked"));

        assertThat(motionVerdicts(partTime)).contains(Verdict.MARGINAL).doesNotContain(Verdict.EXCEEDED);
        assertThat(motionVerdicts(locked)).contains(Verdict.EXCEEDED);
        assertThat(partTime.assumptions()).extracting("subject").contains("front hubs");
        assertThat(locked.assumptions()).extracting("subject").doesNotContain("front hubs");
    }

    private static List<Verdict> motionVerdicts(ShaftsAnswer answer) {
        return answer.findings().stream()
                .filter(finding -> finding.checked().startsWith("front shaft, inertial"))
                .map(Finding::verdict)
                .toList();
    }

    @Test
    void namesWhatIsMissingForOneShaftAndAnswersForTheOther() {
        ShaftsAnswer answer = ask(both().without(Slot.FRONT_LINE));

        assertThat(answer.shafts()).hasSize(1);
        assertThat(answer.missing()).containsExactly("the line of the front shaft is not measured");
        assertThat(ShaftsAnswer.of(Builds.crawler()).reason()).contains("no driveshaft is chosen");
        assertThat(TravelAnswer.of(Builds.crawler()).reason()).contains("no driveshaft is chosen");
    }

    @Test
    void shaftAndLineMustHaveAsManyJoints() {
        assertThat(ShaftsAnswer.of(Builds.of(Builds.TOURER.with(
                                Slot.REAR_LINE,
                                "output level, shaft 600 mm 2 deg down, shaft 900 mm 4 deg down, pinion level")))
                        .reason())
                .contains("the rear shaft has 2 joints and its line 3");
    }

    @Test
    void travelNeedsASuspensionThatCanFollow() {
        assertThat(TravelAnswer.of(Builds.of(Builds.TOURER.without(Slot.REAR_SUSPENSION)))
                        .reason())
                .contains("the suspension of the rear axle is not described");
        assertThat(TravelAnswer.of(
                                Builds.of(
                                        Builds.TOURER.with(
                                                Slot.REAR_SUSPENSION,
                                                "four links, lower from 0 mm ahead 90 mm below 900 mm apart to 150 mm ahead 90 mm below 900 mm apart,"
                                                        + " upper from 0 mm ahead 150 mm above 400 mm apart to 150 mm ahead 150 mm above 400 mm apart,"
                                                        + " pinion 260 mm ahead 30 mm above, bump 300 mm, droop 300 mm, track 1500 mm")))
                        .reason()
                        .orElseThrow())
                .contains("cannot follow");
    }
}
