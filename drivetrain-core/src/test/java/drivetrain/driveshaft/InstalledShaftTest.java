package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Angle;
import drivetrain.quantity.AngularSpeed;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InstalledShaftTest {

    private static final AngularSpeed CRUISE = AngularSpeed.ofRpm(2500);
    private static final String DOUBLE =
            "tube 3 in x 0.083 in of steel, yokes in phase, double joint at output to 28 deg, slip 24 teeth";
    private static final String TWO_PIECE =
            "tube 3 in x 0.083 in of steel, yokes in phase, tube 3 in x 0.083 in of steel, yokes in phase, slip 16 teeth";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "output 3 deg down, shaft 1000 mm 9 deg down, pinion 3 deg down",
                "output 3 deg down, shaft 1000 mm 9 deg down, pinion 15 deg down",
                "output 3 deg down, shaft 1000 mm 9 deg down 80 mm left, pinion 3 deg down"
            })
    void parallelAndBrokenBackLinesCancel(String line) {
        InstalledShaft installed = Lines.rear(line);

        assertThat(Lines.residual(installed)).isCloseTo(0.0, within(1e-6));
        assertThat(installed.motionAt(CRUISE).torsional().toRadiansPerSecondSquared())
                .isCloseTo(0.0, within(1e-6));
        assertThat(installed.motionAt(CRUISE).drive().get(0).toRadiansPerSecondSquared())
                .isGreaterThan(500.0);
    }

    /** Equal angles whose planes stand across each other do not cancel, they add. */
    @Test
    void equalAnglesInCrossedPlanesAdd() {
        InstalledShaft installed =
                Lines.rear("output 5 deg down, shaft 1000 mm level 0 mm left, pinion level 5 deg left");

        assertThat(installed.line().angle(0).toDegrees()).isCloseTo(5.0, within(1e-9));
        assertThat(installed.line().angle(1).toDegrees()).isCloseTo(5.0, within(1e-9));
        assertThat(Math.abs(installed.line().planeTurn(0).toDegrees())).isCloseTo(90.0, within(1e-9));
        assertThat(Lines.residual(installed)).isCloseTo(5.0 * Math.sqrt(2.0), within(1e-6));
        assertThat(installed.isInOnePlane()).isFalse();
        Reclocking turned = Reclocking.of(installed).orThrow();
        assertThat(Math.abs(turned.teeth())).isEqualTo(6);
        assertThat(turned.after().toDegrees()).isCloseTo(0.0, within(1e-6));
        assertThat(turned.before().toDegrees()).isCloseTo(7.071, within(1e-3));
    }

    @Test
    void turnsTheSplineTheRightWay() {
        InstalledShaft installed =
                Lines.rear("output 2 deg down, shaft 1000 mm 8 deg down 60 mm left, pinion 1 deg down 4 deg left");

        Reclocking turned = Reclocking.of(installed).orThrow();

        InstalledShaft after = new InstalledShaft(
                installed.place(), installed.shaft().withLastPhase(turned.phase()), installed.line());
        assertThat(turned.teeth()).isNotZero();
        assertThat(Lines.residual(after)).isEqualTo(turned.after().toDegrees()).isLessThan(Lines.residual(installed));
        assertThat(turned.phase().toDegrees()).isCloseTo(turned.teeth() * 15.0, within(1e-9));
    }

    @Test
    void leavesASplineThatIsRightAlone() {
        assertThat(Reclocking.of(Lines.rear("output 3 deg down, shaft 1000 mm 9 deg down, pinion 3 deg down"))
                        .orThrow()
                        .teeth())
                .isZero();
    }

    @Test
    void clocksNoDoubleJointAndNoUnknownSpline() {
        String line = "output 3 deg down, shaft 1000 mm 9 deg down, pinion 3 deg down";

        assertThat(Reclocking.of(Lines.rear(DOUBLE, line)).reason().orElseThrow())
                .contains("double joint");
        assertThat(Reclocking.of(Lines.rear("tube 3 in x 0.083 in of steel", line))
                        .reason()
                        .orElseThrow())
                .contains("spline teeth");
    }

    @Test
    void straightLineAnswersZeroWithAFinding() {
        InstalledShaft installed = Lines.rear("output 4 deg down, shaft 1000 mm 4 deg down, pinion 4 deg down");

        assertThat(installed.line().angle(0).toRadians()).isCloseTo(0.0, within(1e-9));
        assertThat(Lines.residual(installed)).isCloseTo(0.0, within(1e-6));
        assertThat(installed.motionAt(CRUISE).torsional().toRadiansPerSecondSquared())
                .isCloseTo(0.0, within(1e-6));
        assertThat(LineChecks.angles(installed, ShaftHouse.packed()))
                .filteredOn(finding -> finding.checked().contains("joint "))
                .filteredOn(finding -> finding.verdict() == Verdict.MARGINAL)
                .hasSize(2)
                .allSatisfy(finding -> assertThat(finding.statement()).contains("needles"));
    }

    @Test
    void exactlyStraightLevelLineIsNeverNaN() {
        InstalledShaft installed = Lines.rear(
                TWO_PIECE, "output level, shaft 500 mm level 0 mm left, shaft 900 mm level 0 mm left, pinion level");

        assertThat(installed.line().angle(1).toRadians()).isZero();
        assertThat(Lines.residual(installed)).isZero();
        assertThat(installed.motionAt(CRUISE).drive())
                .allSatisfy(
                        shake -> assertThat(shake.toRadiansPerSecondSquared()).isZero());
        assertThat(LineChecks.speedLimit(installed, ShaftHouse.packed())).isEmpty();
    }

    /** A straight joint at the center bearing passes the joint plane on. */
    @Test
    void straightMiddleJointCarriesThePlaneOn() {
        InstalledShaft installed =
                Lines.rear(TWO_PIECE, "output 5 deg down, shaft 700 mm level, shaft 900 mm level, pinion 5 deg down");

        assertThat(Lines.residual(installed)).isCloseTo(Math.sqrt(2.0) * 5.0, within(1e-6));
    }

    @Test
    void doubleJointTurnsEvenlyAndLeavesThePinionJoint() {
        InstalledShaft parallel = Lines.rear(DOUBLE, "output 3 deg down, shaft 1000 mm 12 deg down, pinion 3 deg down");
        InstalledShaft aimed = Lines.rear(DOUBLE, "output 3 deg down, shaft 1000 mm 12 deg down, pinion 12 deg down");

        assertThat(Lines.residual(parallel)).isCloseTo(9.0, within(1e-9));
        assertThat(Lines.residual(aimed)).isCloseTo(0.0, within(1e-6));
        assertThat(parallel.assumptions()).extracting("subject").contains("double joint");
    }

    @Test
    void doubleJointAtThePinionLeavesTheOutputJoint() {
        InstalledShaft installed = Lines.rear(
                "tube 3 in x 0.083 in of steel, double joint at pinion",
                "output 3 deg down, shaft 1000 mm 7 deg down, pinion 20 deg down");

        assertThat(Lines.residual(installed)).isCloseTo(4.0, within(1e-9));
        assertThat(installed.motionAt(CRUISE).coast().get(0).toRadiansPerSecondSquared())
                .isCloseTo(0.0, within(1e-9));
        assertThat(installed.assumptions()).extracting("subject").contains("phase of the yokes");
    }

    @ParameterizedTest
    @CsvSource({"2, 8, 3, 2", "2, 8, 15, 14", "0, 6, 2.5, 0"})
    void solvesForTheNearerPinionSlopeThatCancels(double output, double shaft, double pinion, double best) {
        InstalledShaft installed = Lines.rear(
                "output " + output + " deg down, shaft 1000 mm " + shaft + " deg down, pinion " + pinion + " deg down");

        PinionSlope slope = PinionSlope.of(installed, AngularSpeed.ofRpm(2000), ShaftHouse.packed());

        assertThat(slope.present().toDegrees()).isCloseTo(pinion, within(1e-9));
        assertThat(slope.best().toDegrees()).isCloseTo(best, within(1e-3));
        assertThat(slope.residual().toDegrees()).isCloseTo(0.0, within(0.01));
        assertThat(slope.least().orElseThrow().toDegrees()).isLessThan(best);
        assertThat(slope.most().orElseThrow().toDegrees()).isGreaterThan(best);
    }

    /** At the ends of the range a limit is just reached. */
    @Test
    void rangeOfSlopesEndsWhereALimitIsReached() {
        InstalledShaft installed = Lines.rear("output 2 deg down, shaft 1000 mm 8 deg down, pinion 3 deg down");

        PinionSlope slope = PinionSlope.of(installed, CRUISE, ShaftHouse.packed());

        for (Angle edge : List.of(slope.least().orElseThrow(), slope.most().orElseThrow())) {
            InstalledShaft there =
                    Lines.rear("output 2 deg down, shaft 1000 mm 8 deg down, pinion " + edge.toDegrees() + " deg down");
            assertThat(LineChecks.worstUse(there, CRUISE, ShaftHouse.packed())).isCloseTo(1.0, within(1e-5));
        }
    }

    @Test
    void namesNoRangeWhereNoSlopeKeepsTheLimits() {
        InstalledShaft installed = Lines.rear("output 2 deg down, shaft 1000 mm 20 deg down, pinion 2 deg down");

        PinionSlope slope = PinionSlope.of(installed, AngularSpeed.ofRpm(4000), ShaftHouse.packed());

        assertThat(slope.least()).isEmpty();
        assertThat(slope.most()).isEmpty();
    }

    /** A compound line cannot be brought to zero by the slope of the pinion alone. */
    @Test
    void leavesTheCompoundRestThatNoSlopeCures() {
        InstalledShaft installed =
                Lines.rear("output 2 deg down, shaft 1000 mm 6 deg down 100 mm left, pinion 4 deg down 3 deg right");

        PinionSlope slope = PinionSlope.of(installed, CRUISE, ShaftHouse.packed());

        assertThat(slope.residual().toDegrees()).isBetween(0.1, Lines.residual(installed));
    }

    @Test
    void judgesMotionAgainstBothLimits() {
        InstalledShaft calm = Lines.rear("output 2 deg down, shaft 1000 mm 4 deg down, pinion 2 deg down");
        InstalledShaft rough = Lines.rear("output 2 deg down, shaft 1000 mm 9 deg down, pinion 7 deg down");

        assertThat(verdicts(calm, 2000)).containsExactly(Verdict.MET, Verdict.MET);
        assertThat(verdicts(rough, 3000)).containsExactly(Verdict.EXCEEDED, Verdict.EXCEEDED);
        assertThat(Finding.worst(LineChecks.motion(
                        rough, rough.motionAt(AngularSpeed.ofRpm(1600)), "at a test", ShaftHouse.packed())))
                .isEqualTo(Verdict.MARGINAL);
    }

    private static List<Verdict> verdicts(InstalledShaft installed, double rpm) {
        return LineChecks.motion(
                        installed, installed.motionAt(AngularSpeed.ofRpm(rpm)), "at a test", ShaftHouse.packed())
                .stream()
                .map(Finding::verdict)
                .toList();
    }

    @Test
    void speedLimitIsWhereTheMotionReachesALimit() {
        InstalledShaft installed = Lines.rear("output 2 deg down, shaft 1000 mm 8 deg down, pinion 5 deg down");

        AngularSpeed limit =
                LineChecks.speedLimit(installed, ShaftHouse.packed()).orElseThrow();

        assertThat(LineChecks.worstUse(installed, limit, ShaftHouse.packed())).isCloseTo(1.0, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "output 2 deg down, shaft 1 m 34 deg down, pinion 2 deg down | EXCEEDED | more than its maker allows",
                "output 2 deg down, shaft 1 m 8 deg down, pinion 2 deg down | MARGINAL | smooth road vehicle",
                "output 2 deg down, shaft 1 m 4 deg down, pinion 2 deg down | MET | within what its maker allows"
            })
    void judgesTheAngleOfAJoint(String line, Verdict verdict, String statement) {
        Finding first = LineChecks.angles(Lines.rear(line), ShaftHouse.packed()).get(0);

        assertThat(first.verdict()).isEqualTo(verdict);
        assertThat(first.statement()).contains(statement);
    }

    @Test
    void asksForTheRatingOfADoubleJointAndTakesTheRuleForASingleOne() {
        List<Finding> findings = LineChecks.angles(
                Lines.rear(
                        "tube 3 in x 0.083 in of steel, double joint at output",
                        "output 2 deg down, shaft 1 m 12 deg down, pinion 10 deg down"),
                ShaftHouse.packed());

        assertThat(findings).hasSize(2);
        assertThat(findings.get(0).verdict()).isEqualTo(Verdict.NOT_EVALUATED);
        assertThat(findings.get(1).verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void flagsJointsThatBendUnequally() {
        List<Finding> findings = LineChecks.angles(
                Lines.rear("output 2 deg down, shaft 1 m 8 deg down, pinion 4 deg down"), ShaftHouse.packed());

        assertThat(findings.get(2).checked()).contains("difference");
        assertThat(findings.get(2).verdict()).isEqualTo(Verdict.MARGINAL);
    }

    @ParameterizedTest
    @CsvSource({"1003 mm, MET", "1012 mm, MARGINAL"})
    void holdsAGivenLengthAgainstTheLine(String length, Verdict verdict) {
        InstalledShaft installed = Lines.rear(
                "tube 3 in x 0.083 in of steel, length " + length,
                "output 2 deg down, shaft 1 m 4 deg down, pinion 2 deg down");

        assertThat(LineChecks.angles(installed, ShaftHouse.packed()))
                .filteredOn(finding -> finding.checked().contains("length of piece 1"))
                .extracting(Finding::verdict)
                .containsExactly(verdict);
    }

    @Test
    void refusesAShaftThatDoesNotFitTheLine() {
        assertThatThrownBy(() -> Lines.rear(TWO_PIECE, "output 2 deg down, shaft 1 m 8 deg down, pinion 4 deg down"))
                .hasMessageContaining("2 joints where the shaft has 3");
    }

    @Test
    void leastRatingGoverns() {
        InstalledShaft installed = Lines.rear(
                Lines.SHAFT + ", flanges rated 1200 N\u00B7m",
                "output 2 deg down, shaft 1 m 8 deg down, pinion 4 deg down");

        assertThat(installed.rating().orElseThrow().toNewtonMeters()).isEqualTo(1200.0);
        assertThat(installed.lengths()).hasSize(1);
        assertThat(Residual.working(installed).steps()).hasSize(4);
    }

    /** A front shaft is the mirror of a rear one: the same slopes give the same angles. */
    @Test
    void frontShaftIsTheMirrorOfARearOne() {
        String line = "output 2 deg down, shaft 1 m 8 deg down 50 mm left, pinion 4 deg down";

        InstalledShaft front = Lines.front(Lines.SHAFT, line);
        InstalledShaft rear = Lines.rear(line);

        assertThat(front.line().angle(0).toDegrees())
                .isCloseTo(rear.line().angle(0).toDegrees(), within(1e-9));
        assertThat(front.line().planeTurn(0).toDegrees())
                .isCloseTo(-rear.line().planeTurn(0).toDegrees(), within(1e-9));
        assertThat(Lines.residual(front)).isCloseTo(Lines.residual(rear), within(1e-9));
    }

    @Test
    void toleranceIsTheErrorThatTurnsTheVerdict() {
        LineSurvey survey = LineSurvey.parse("output 2 deg down, shaft 1 m 6 deg down 20 mm left, pinion 3 deg down");
        Driveshaft shaft = Driveshaft.parse(Lines.SHAFT);

        List<ReadingTolerance> all = ReadingTolerance.of(survey, ShaftPlace.REAR, shaft, CRUISE, ShaftHouse.packed());

        assertThat(all)
                .extracting(ReadingTolerance::reading)
                .containsExactly(
                        "slope of the output",
                        "slope of the shaft",
                        "sideward offset of the shaft",
                        "slope of the pinion");
        ReadingTolerance pinion = all.get(3);
        double edge = pinion.torsional().orElseThrow();
        Verdict present = verdicts(
                        Lines.rear("output 2 deg down, shaft 1 m 6 deg down 20 mm left, pinion 3 deg down"), 2500)
                .get(0);
        assertThat(List.of(changed(present, edge + 1e-4), changed(present, -edge - 1e-4)))
                .contains(true);
        assertThat(List.of(changed(present, edge - 1e-4), changed(present, -edge + 1e-4)))
                .containsOnly(false);
        assertThat(pinion.residual()).isPositive();
    }

    private static boolean changed(Verdict present, double error) {
        double slope = 3.0 + Math.toDegrees(error);
        return verdicts(
                                Lines.rear("output 2 deg down, shaft 1 m 6 deg down 20 mm left, pinion " + slope
                                        + " deg down"),
                                2500)
                        .get(0)
                != present;
    }
}
