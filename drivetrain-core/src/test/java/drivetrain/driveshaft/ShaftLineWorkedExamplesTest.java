package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import drivetrain.quantity.Angle;
import drivetrain.quantity.AngularSpeed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines against what others have published, and against a kinematic simulation that shares no formula with them. */
class ShaftLineWorkedExamplesTest {

    /** Two public texts on the universal joint: at 30 degrees the ratio of the speeds lies between 0.8660 and 1.1547. */
    @ParameterizedTest
    @CsvFileSource(resources = "joint-ratio.csv", useHeadersInDisplayName = true)
    void swingsBetweenThePublishedRatios(double degrees, double least, double greatest) {
        JointLaw law = JointLaw.at(Angle.ofDegrees(degrees));

        assertThat(law.leastRatio()).isCloseTo(least, within(5e-5));
        assertThat(law.greatestRatio()).isCloseTo(greatest, within(5e-5));
    }

    /** A driveline maker's installation manual of 2008: 2.15 degrees in side view and 2.5 in plan view make a compound angle of 3.3 degrees. */
    @ParameterizedTest
    @CsvFileSource(resources = "compound-angle.csv", useHeadersInDisplayName = true)
    void compoundsSideAndPlanViewAsTheManualDoes(double side, double plan, double compound) {
        double aside = 1000.0 * Math.tan(Math.toRadians(plan));
        double down = 1000.0 * Math.tan(Math.toRadians(side));
        LineSurvey survey = LineSurvey.parse(
                "output x 0 mm y 0 mm z 0 mm level, pinion x -1000 mm y " + aside + " mm z " + -down + " mm level");

        assertThat(survey.line(ShaftPlace.REAR).angle(0).toDegrees()).isCloseTo(compound, within(0.05));
    }

    /** A table on a public engineering reference page that cites SAE AE-7, 3.1.1: joint 2 may bend by b2 with b2^2 = b1^2 + b_eq^2. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 4, 7})
    void leavesTheAngleByWhichTheSquaresDiffer(double first) {
        double equivalent = 3.0;
        double second = Math.sqrt(first * first + equivalent * equivalent);
        InstalledShaft installed = Lines.rear(
                "output level, shaft 1000 mm " + first + " deg down, pinion " + (second - first) + " deg up");

        assertThat(Lines.residual(installed)).isCloseTo(equivalent, within(1e-6));
    }

    /** The same table: between 1500 and 1700 rpm its residual angles mean 402 to 409 rad/s2, which is w2 b_eq2 here. */
    @Test
    void shakesAsTheTableImplies() {
        double speed = AngularSpeed.ofRpm(1600).toRadiansPerSecond();
        double equivalent = Math.sqrt(405.0) / speed;

        double shake = JointLaw.at(Angle.ofRadians(equivalent))
                .peakAcceleration(AngularSpeed.ofRpm(1600))
                .toRadiansPerSecondSquared();

        assertThat(shake).isCloseTo(405.0, withinPercentage(1.0));
    }

    /** Peak accelerations of every shaft and of the driven end, against crosses that are turned as pins in space. */
    @ParameterizedTest
    @CsvFileSource(resources = "simulated-lines.csv", delimiter = ';', useHeadersInDisplayName = true)
    void movesAsCrossesInSpaceDo(String shaft, String line) {
        InstalledShaft installed = Lines.rear(shaft, line);
        LineMotion motion = installed.motionAt(AngularSpeed.ofRadiansPerSecond(1.0));
        SpinningLine spinning = SpinningLine.of(installed);
        SpinningLine backward = spinning.reversed();
        int joints = installed.line().jointCount();

        assertThat(motion.torsional().toRadiansPerSecondSquared())
                .isCloseTo(spinning.peakAcceleration(joints - 1), within(1e-5));
        for (int piece = 0; piece < joints - 1; piece++) {
            assertThat(motion.drive().get(piece).toRadiansPerSecondSquared())
                    .isCloseTo(spinning.peakAcceleration(piece), within(1e-5));
            assertThat(motion.coast().get(piece).toRadiansPerSecondSquared())
                    .isCloseTo(backward.peakAcceleration(joints - 2 - piece), within(1e-5));
        }
    }

    /** The vector sum is the first harmonic: the simulated line shakes with w2 b_eq2, up to the fourth power of the angles. */
    @ParameterizedTest
    @CsvFileSource(resources = "simulated-lines.csv", delimiter = ';', useHeadersInDisplayName = true)
    void residualAngleShakesAsTheSimulatedLineDoes(String shaft, String line) {
        InstalledShaft installed = Lines.rear(shaft, line);
        double residual = installed.residual().radians();
        double fourthPower = 0.0;
        for (int i = 0; i < installed.line().jointCount(); i++) {
            fourthPower += Math.pow(installed.line().angle(i).toRadians(), 4);
        }

        double simulated =
                SpinningLine.of(installed).peakAcceleration(installed.line().jointCount() - 1);

        assertThat(residual * residual).isCloseTo(simulated, within(fourthPower + 1e-6));
    }
}
