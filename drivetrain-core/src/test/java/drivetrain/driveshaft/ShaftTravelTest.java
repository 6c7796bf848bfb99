package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Finding;
import drivetrain.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShaftTravelTest {

    private static final String LINE = "output 3 deg down, shaft 1100 mm 9 deg down, pinion 3 deg down";
    private static final String REST = ", pinion 260 mm ahead 30 mm above, bump 90 mm, droop 120 mm, track 1500 mm";
    private static final String SPRINGS = "leaf springs 560 mm ahead 25 mm below 1000 mm apart" + REST;
    private static final String ARMS = "radius arms 880 mm ahead 40 mm below 640 mm apart" + REST;
    private static final String LINKS =
            "four links, lower from 20 mm behind 90 mm below 900 mm apart to 780 mm ahead 110 mm below 700 mm apart,"
                    + " upper from 40 mm ahead 150 mm above 400 mm apart to 560 mm ahead 120 mm above 400 mm apart"
                    + REST;

    private static ShaftTravel travel(String suspension) {
        return ShaftTravel.of(Lines.rear(LINE), Suspension.parse(suspension));
    }

    @ParameterizedTest
    @ValueSource(strings = {SPRINGS, ARMS, LINKS})
    void rideHeightIsTheLineAsMeasured(String suspension) {
        ShaftTravel travel = travel(suspension);

        assertThat(travel.ride().length().toMillimeters()).isCloseTo(1100.0, within(1e-6));
        assertThat(travel.ride().angles().get(0).toDegrees()).isCloseTo(6.0, within(1e-6));
        assertThat(travel.ride().residual().toDegrees()).isCloseTo(0.0, within(1e-3));
        assertThat(travel.shortest().length().compareTo(travel.ride().length())).isNotPositive();
        assertThat(travel.longest().length().compareTo(travel.ride().length())).isNotNegative();
        assertThat(travel.plunge().toMillimeters()).isBetween(1.0, 60.0);
    }

    /** The grid finds what a far finer one finds. */
    @ParameterizedTest
    @ValueSource(strings = {SPRINGS, ARMS, LINKS})
    void extremesHoldAgainstAFinerSweep(String suspension) {
        ShaftTravel coarse = travel(suspension);
        ShaftTravel fine = ShaftTravel.of(coarse.installed(), coarse.suspension(), 81);

        assertThat(fine.positions()).isEqualTo(6561);
        assertThat(coarse.longest().length().toMillimeters())
                .isCloseTo(fine.longest().length().toMillimeters(), within(0.1));
        assertThat(coarse.shortest().length().toMillimeters())
                .isCloseTo(fine.shortest().length().toMillimeters(), within(0.1));
        for (int i = 0; i < 2; i++) {
            assertThat(coarse.widest().get(i).angles().get(i).toDegrees())
                    .isCloseTo(fine.widest().get(i).angles().get(i).toDegrees(), within(0.05));
        }
    }

    /** The extremes of a shaft on springs, by the independent geometry of the side view: pinion and eye in one plane, the pinion keeping its slope. */
    @Test
    void agreesWithTheSideViewInHeave() {
        ShaftTravel travel = travel(SPRINGS);
        double slope = Math.toRadians(9);
        for (double heave : List.of(-0.12, -0.05, 0.09)) {
            double length = (0.56 + Math.sqrt(0.56 * 0.56 + 8.0 / 3.0 * 0.025 * 0.025)) / 2.0;
            double ahead = 2.0 / 3.0 * (Math.pow(0.025 + heave, 2) - 0.025 * 0.025) / length;
            double run = 1.1 * Math.cos(slope) - ahead;
            double fall = 1.1 * Math.sin(slope) - heave;
            TravelPoint point = travel.at(Length.ofMeters(heave), Length.ofMeters(heave));

            assertThat(point.length().toMeters()).isCloseTo(Math.hypot(run, fall), within(1e-9));
            assertThat(point.angles().get(0).toRadians())
                    .isCloseTo(Math.abs(Math.atan2(fall, run) - Math.toRadians(3)), within(1e-9));
        }
    }

    /** The longest place may lie inside the travel, where looking at its ends alone would miss it. */
    @Test
    void findsAnExtremeInsideTheTravel() {
        ShaftTravel travel = ShaftTravel.of(
                Lines.rear("output level, shaft 700 mm 1 deg down, pinion level"),
                Suspension.parse("leaf springs 560 mm ahead 0 mm below 1000 mm apart" + REST));

        double ends = Math.min(
                travel.at(Length.ofMillimeters(90), Length.ofMillimeters(90))
                        .length()
                        .toMillimeters(),
                travel.at(Length.ofMillimeters(-120), Length.ofMillimeters(-120))
                        .length()
                        .toMillimeters());
        assertThat(travel.shortest().length().toMillimeters()).isLessThan(ends - 0.1);
    }

    @Test
    void raisesBothWheelsTogether() {
        List<TravelPoint> points = travel(ARMS).together(22);

        assertThat(points).hasSize(22);
        assertThat(points.get(0).left().toMillimeters()).isCloseTo(-120.0, within(1e-9));
        assertThat(points.get(21).right().toMillimeters()).isCloseTo(90.0, within(1e-9));
    }

    @Test
    void leavesOfTheSplineWhatTheTravelDoesNotTake() {
        ShaftTravel travel = travel(SPRINGS);

        double drawn = travel.longest().length().minus(travel.ride().length()).toMillimeters();
        double pushed = travel.ride().length().minus(travel.shortest().length()).toMillimeters();
        assertThat(travel.engagementLeft().orElseThrow().toMillimeters()).isCloseTo(95.0 - drawn, within(1e-6));
        assertThat(travel.freeLeft().orElseThrow().toMillimeters()).isCloseTo(50.0 - pushed, within(1e-6));
        assertThat(travel.working().steps()).hasSizeGreaterThan(6);
        assertThat(travel.assumptions()).isNotEmpty();
        assertThat(travel.misfit().toMeters()).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "joints to 30 deg, slip 24 teeth 38 mm across 95 mm engaged 50 mm free | MET,MET,MET,MET",
                "joints to 13 deg, slip 24 teeth 38 mm across 95 mm engaged 50 mm free | MARGINAL,MARGINAL,MET,MET",
                "joints to 9 deg, slip 24 teeth 95 mm engaged 60 mm least 28 mm free | EXCEEDED,EXCEEDED,MET,MARGINAL",
                "joints to 30 deg, slip 24 teeth 95 mm engaged 94 mm least 2 mm free | MET,MET,EXCEEDED,EXCEEDED",
                "joints to 30 deg, slip 24 teeth 90 mm across 95 mm engaged 40 mm free | MET,MET,MARGINAL,MET",
                "joints to 30 deg, slip 24 teeth 5 mm engaged | MET,MET,EXCEEDED,NOT_EVALUATED",
                "slip 24 teeth 95 mm engaged | NOT_EVALUATED,NOT_EVALUATED,NOT_EVALUATED,NOT_EVALUATED",
                "slip 24 teeth | NOT_EVALUATED,NOT_EVALUATED,NOT_EVALUATED,NOT_EVALUATED"
            })
    void judgesWhatIsLeft(String clauses, String verdicts) {
        InstalledShaft installed = Lines.rear("tube 3 in x 0.083 in of steel, " + clauses, LINE);

        List<Finding> findings =
                TravelChecks.of(ShaftTravel.of(installed, Suspension.parse(SPRINGS)), ShaftHouse.packed());

        assertThat(findings).extracting(finding -> finding.verdict().name()).containsExactly(verdicts.split(","));
        assertThat(findings).hasSize(4);
    }

    @Test
    void refusesACountOfHeightsThatMakesNoSweep() {
        Suspension springs = Suspension.parse(SPRINGS);
        InstalledShaft installed = Lines.rear(LINE);

        assertThatThrownBy(() -> ShaftTravel.of(installed, springs, 1)).hasMessageContaining("out of range");
    }

    @Test
    void twoPieceShaftChangesOnlyItsLastPiece() {
        InstalledShaft installed = Lines.rear(
                "tube 3 in x 0.083 in of steel, yokes in phase, tube 3 in x 0.083 in of steel, yokes in phase",
                "output 2 deg down, shaft 600 mm 3 deg down, shaft 900 mm 9 deg down, pinion 3 deg down");

        ShaftTravel travel = ShaftTravel.of(installed, Suspension.parse(SPRINGS));

        assertThat(travel.ride().length().toMillimeters()).isCloseTo(900.0, within(1e-6));
        assertThat(travel.widest()).hasSize(3);
        assertThat(travel.widest().get(0).angles().get(0))
                .isEqualTo(travel.ride().angles().get(0));
    }
}
