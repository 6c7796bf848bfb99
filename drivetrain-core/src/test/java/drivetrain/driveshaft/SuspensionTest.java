package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.refusal.RefusedException;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.RombergIntegrator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SuspensionTest {

    private static final String REST = ", pinion 260 mm ahead 30 mm above, bump 100 mm, droop 150 mm, track 1500 mm";
    private static final String ARMS = "radius arms 880 mm ahead 40 mm below 640 mm apart" + REST;
    private static final String LINKS =
            "four links, lower from 20 mm behind 90 mm below 900 mm apart to 780 mm ahead 110 mm below 700 mm apart,"
                    + " upper from 40 mm ahead 150 mm above 400 mm apart to 560 mm ahead 120 mm above 400 mm apart,"
                    + " panhard from 60 mm behind 60 mm above 450 mm left to 60 mm behind 90 mm above 480 mm right"
                    + REST;
    private static final String SPRINGS = "leaf springs 560 mm ahead 25 mm below 1000 mm apart" + REST;

    @ParameterizedTest
    @ValueSource(
            strings = {
                ARMS,
                LINKS,
                SPRINGS,
                "leaf springs 600 mm behind 10 mm above 900 mm apart turning 1.5 deg up per 100 mm, pinion 280 mm behind 40 mm above 150 mm right,"
                        + " bump 80 mm, droop 90 mm, track 1450 mm",
                "radius arms 900 mm behind 50 mm below 600 mm apart, panhard from 90 mm ahead 20 mm above 500 mm left to 90 mm ahead 30 mm above"
                        + " 450 mm right, pinion 300 mm behind 20 mm above 200 mm left, bump 80 mm, droop 90 mm, track 1450 mm"
            })
    void writesWhatItReadsBack(String text) {
        Suspension suspension = Suspension.parse(text);

        assertThat(suspension.text()).isEqualTo(text);
        assertThat(Suspension.parse(suspension.text())).isEqualTo(suspension);
    }

    @ParameterizedTest
    @ValueSource(strings = {ARMS, LINKS, SPRINGS})
    void standsStillAtRideHeight(String text) {
        AxlePose pose = Suspension.parse(text).pose(0.0, 0.0);

        assertThat(pose.moved(new Vector3D(0.26, 0.1, 0.03)).distance(new Vector3D(0.26, 0.1, 0.03)))
                .isCloseTo(0.0, within(1e-9));
        assertThat(pose.misfit()).isCloseTo(0.0, within(1e-9));
    }

    /** In heave the axle turns about the pivots, as a rigid body on one hinge. */
    @ParameterizedTest
    @ValueSource(doubles = {-0.15, -0.04, 0.1})
    void radiusArmsTurnTheAxleAboutTheirPivots(double heave) {
        AxlePose pose = Suspension.parse(ARMS).pose(heave, 0.0);
        double reach = Math.hypot(0.88, 0.04);
        double start = Math.atan2(0.04, -0.88);
        double turned = Math.PI - Math.asin((0.04 + heave) / reach);

        assertThat(pose.x()).isCloseTo(0.88 + reach * Math.cos(turned), within(1e-7));
        assertThat(pose.pitch()).isCloseTo(start - turned, within(1e-7));
        assertThat(pose.y()).isCloseTo(0.0, within(1e-9));
        assertThat(pose.misfit()).isCloseTo(0.0, within(1e-7));
    }

    /** Parallel links of one length move the axle without turning it, along the arc of a link. */
    @Test
    void equalParallelLinksOnlyMoveTheAxle() {
        AxlePose pose = Suspension.parse(
                        "four links, lower from 0 mm ahead 90 mm below 900 mm apart to 700 mm ahead 90 mm below 900 mm apart,"
                                + " upper from 0 mm ahead 150 mm above 400 mm apart to 700 mm ahead 150 mm above 400 mm apart"
                                + REST)
                .pose(0.1, 0.0);

        assertThat(pose.pitch()).isCloseTo(0.0, within(1e-9));
        assertThat(pose.yaw()).isCloseTo(0.0, within(1e-9));
        assertThat(pose.x()).isCloseTo(0.7 - Math.sqrt(0.49 - 0.01), within(1e-9));
    }

    /** The side view is a four-bar linkage, solved here by a root finder on the upper links' length. */
    @ParameterizedTest
    @ValueSource(doubles = {-0.15, -0.05, 0.06, 0.1})
    void fourLinksAreAFourBarLinkageInSideView(double heave) {
        String parallel =
                "four links, lower from 20 mm behind 90 mm below 800 mm apart to 780 mm ahead 110 mm below 800 mm apart,"
                        + " upper from 40 mm ahead 150 mm above 400 mm apart to 560 mm ahead 120 mm above 400 mm apart"
                        + REST;
        double lower = Math.hypot(0.8, 0.02);
        double upper = Math.hypot(0.52, 0.03);
        UnivariateFunction x = pitch -> {
            double dz = heave + 0.02 * Math.sin(pitch) - 0.09 * Math.cos(pitch) + 0.11;
            return 0.78 - Math.sqrt(lower * lower - dz * dz) - (-0.02 * Math.cos(pitch) - 0.09 * Math.sin(pitch));
        };
        double pitch = new BrentSolver(1e-13)
                .solve(
                        200,
                        angle -> {
                            double px = x.value(angle) + 0.04 * Math.cos(angle) + 0.15 * Math.sin(angle);
                            double pz = heave - 0.04 * Math.sin(angle) + 0.15 * Math.cos(angle);
                            return Math.hypot(px - 0.56, pz - 0.12) - upper;
                        },
                        -0.4,
                        0.4);

        AxlePose pose = Suspension.parse(parallel).pose(heave, 0.0);

        assertThat(pose.pitch()).isCloseTo(pitch, within(1e-8));
        assertThat(pose.x()).isCloseTo(x.value(pitch), within(1e-8));
    }

    /** A panhard rod moves the axle sideways along its arc. */
    @Test
    void panhardRodMovesTheAxleSideways() {
        AxlePose pose = Suspension.parse(LINKS).pose(0.08, 0.0);
        double run = 0.93;
        double before = 0.03;
        double across = Math.sqrt(run * run + before * before - Math.pow(before - 0.08, 2));

        assertThat(pose.y()).isCloseTo(across - run, within(5e-4));
        assertThat(Suspension.parse(LINKS).assumptions())
                .extracting("subject")
                .doesNotContain("sideways guidance of the axle");
    }

    /** The shortening of a half spring against the integrated length of a circular arc. */
    @ParameterizedTest
    @ValueSource(doubles = {-0.12, -0.03, 0.05, 0.1})
    void leafSpringShortensLikeAnArcOfACircle(double heave) {
        double moved = Suspension.parse(SPRINGS).pose(heave, 0.0).x();

        double length = arcLength(0.56, 0.025);
        double reach = new BrentSolver(1e-12).solve(200, run -> arcLength(run, 0.025 + heave) - length, 0.5, 0.6);
        assertThat(moved).isCloseTo(0.56 - reach, within(5e-4));
    }

    /** Length of an arc that leaves the axle level and ends at the eye so far along and so far down. */
    private static double arcLength(double along, double down) {
        double radius = (along * along + down * down) / (2.0 * Math.abs(down));
        return new RombergIntegrator(1e-12, 1e-12, 3, 20)
                .integrate(100_000, x -> radius / Math.sqrt(radius * radius - x * x), 0.0, along);
    }

    @Test
    void springsTurnThePinionAsMeasured() {
        AxlePose pose = Suspension.parse(
                        "leaf springs 560 mm ahead 25 mm below 1000 mm apart turning 1.5 deg up per 100 mm" + REST)
                .pose(0.1, 0.0);

        assertThat(Math.toDegrees(pose.pitch())).isCloseTo(-1.5, within(1e-9));
        assertThat(pose.turned(Vector3D.PLUS_I).getZ()).isPositive();
    }

    @ParameterizedTest
    @ValueSource(strings = {ARMS, SPRINGS})
    void articulationIsTheSameToEitherSide(String text) {
        AxlePose one = Suspension.parse(text).pose(0.0, 0.12);
        AxlePose other = Suspension.parse(text).pose(0.0, -0.12);

        assertThat(one.x()).isCloseTo(other.x(), within(1e-9));
        assertThat(one.pitch()).isCloseTo(other.pitch(), within(1e-9));
        assertThat(one.yaw()).isCloseTo(-other.yaw(), within(1e-9));
    }

    @Test
    void armsGiveInTheirBushesInArticulation() {
        assertThat(Suspension.parse(ARMS).pose(0.0, 0.1).misfit()).isBetween(0.01, 0.05);
    }

    @Test
    void saysWhatItTakesForGranted() {
        assertThat(Suspension.parse(ARMS).assumptions())
                .extracting("subject")
                .containsExactly("bushes of the radius arms", "sideways guidance of the axle");
        assertThat(Suspension.parse(SPRINGS).assumptions())
                .extracting("subject")
                .containsExactly("path of the axle", "turn of the pinion on its springs");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "coil springs 560 mm ahead | not understood",
                "leaf springs 560 ahead 25 mm below 1 m apart | has no unit",
                "leaf springs 560 mm forward 25 mm below 1 m apart | not understood",
                "leaf springs 560 mm ahead 25 mm below 1 m apart | does not tell its pinion",
                "leaf springs 560 mm ahead 25 mm below 1 m apart, pinion 1 m ahead 0 mm above, bump 1 mm, droop 1 mm | its track",
                "leaf springs 560 mm ahead 25 mm below 1 m apart, bump 1 mm, bump 1 mm | twice",
                "leaf springs 560 mm ahead 25 mm below 1 m apart, bump 900 mm, pinion 1 m ahead 0 mm above, droop 1 mm, track 1 m | out of range",
                "leaf springs 56 mm ahead 25 mm below 1 m apart, bump 90 mm, pinion 1 m ahead 0 mm above, droop 1 mm, track 1 m | too short",
                "leaf springs 560 mm ahead 25 mm below 1 m apart turning 9 deg up per 1 mm, pinion 1 m ahead 0 mm above, bump 1 mm, droop 1 mm, track 1 m | out of range",
                "leaf springs 5600 mm ahead 25 mm below 1 m apart, bump 90 mm, pinion 1 m ahead 0 mm above, droop 1 mm, track 1 m | too far",
                "leaf springs 560 mm ahead 25 mm below 1 m apart, panhard from 1 m ahead | not understood",
                "radius arms 880 mm ahead 40 mm below 640 mm apart, track 1500 mm | does not tell",
                "four links, bump 90 mm, pinion 1 m ahead 0 mm above, droop 1 mm, track 1 m | its lower"
            })
    void refusesWhatItCannotUse(String text, String problem) {
        assertThatThrownBy(() -> Suspension.parse(text)).isInstanceOfSatisfying(RefusedException.class, refused -> {
            assertThat(refused.refusal().problem()).contains(problem);
            assertThat(refused.refusal().position().orElseThrow()).isBetween(0, text.length());
        });
    }

    @Test
    void refusesATravelThatLinksCannotFollow() {
        Suspension links = Suspension.parse(
                "four links, lower from 0 mm ahead 90 mm below 900 mm apart to 150 mm ahead 90 mm below 900 mm apart,"
                        + " upper from 0 mm ahead 150 mm above 400 mm apart to 150 mm ahead 150 mm above 400 mm apart, pinion 260 mm ahead 30 mm above,"
                        + " bump 300 mm, droop 300 mm, track 1500 mm");

        assertThatThrownBy(() -> links.pose(0.3, 0.0)).hasMessageContaining("cannot follow");
    }

    /** A walk over the travel begins each search near the last place; where the axle stands must not depend on it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "radius arms 850 mm behind 15 mm above 720 mm apart, panhard from 110 mm ahead 30 mm above 450 mm right to 110 mm ahead 50 mm above 470 mm left,"
                        + " pinion 240 mm behind 25 mm above, bump 80 mm, droop 100 mm, track 1490 mm",
                "four links, lower from 10 mm behind 80 mm below 960 mm apart to 760 mm ahead 40 mm below 960 mm apart,"
                        + " upper from 60 mm ahead 140 mm above 700 mm apart to 590 mm ahead 130 mm above 700 mm apart,"
                        + " pinion 285 mm ahead 35 mm above, bump 85 mm, droop 110 mm, track 1490 mm"
            })
    void walksToWhereItStandsByItself(String text) {
        Suspension suspension = Suspension.parse(text);
        AxleWalk walk = suspension.walk();
        for (int i = -5; i <= 5; i++) {
            for (int j = -5; j <= 5; j++) {
                double heave = 0.01 * (i + j);
                double roll = 0.014 * (i - j);
                AxlePose walked = walk.pose(heave, roll);
                AxlePose alone = suspension.pose(heave, roll);
                assertThat(walked.x()).isCloseTo(alone.x(), within(1e-7));
                assertThat(walked.y()).isCloseTo(alone.y(), within(1e-7));
                assertThat(walked.pitch()).isCloseTo(alone.pitch(), within(1e-7));
                assertThat(walked.yaw()).isCloseTo(alone.yaw(), within(1e-7));
                assertThat(walked.misfit()).isCloseTo(alone.misfit(), within(1e-7));
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pinion 285 m ahead 35 mm above, bump 85 mm, droop 110 mm, track 1490 mm | 285 m | 20 m",
                "pinion 285 mm ahead 35 m above, bump 85 mm, droop 110 mm, track 1490 mm | 35 m above | 20 m",
                "pinion 5 m ahead 35 mm above, bump 85 mm, droop 110 mm, track 1490 mm | pinion | up to 3 m",
                "pinion 285 mm ahead 35 mm above, bump -85 mm, droop 110 mm, track 1490 mm | -85 mm | 600 mm",
                "pinion 285 mm ahead 35 mm above, bump 85 mm, droop 1.1 m, track 1490 mm | 1.1 m | 600 mm",
                "pinion 285 mm ahead 35 mm above, bump 85 mm, droop 110 mm, track 149 mm | 149 mm | 3000 mm"
            })
    void refusesAFigureWhereItStands(String clauses, String fault, String allowed) {
        String text = "leaf springs 560 mm ahead 25 mm below 1000 mm apart, " + clauses;
        assertThatThrownBy(() -> Suspension.parse(text)).isInstanceOfSatisfying(RefusedException.class, refused -> {
            assertThat(refused.refusal().position()).hasValue(text.indexOf(fault));
            assertThat(refused.refusal().allowed()).contains(allowed);
        });
    }
}
