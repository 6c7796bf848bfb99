package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Angle;
import drivetrain.quantity.Length;
import drivetrain.refusal.RefusedException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LineSurveyTest {

    /** An inclinometer on the tube reads asin(dz / L). */
    @Test
    void inclinometerReadsTheArcsineOfTheFall() {
        ShaftLine sloped = LineSurvey.parse("output level, shaft 1000 mm 10 deg down 200 mm left, pinion level")
                .line(ShaftPlace.REAR);
        ShaftLine measured = LineSurvey.parse("output level, shaft 1000 mm " + 1000.0 * Math.sin(Math.toRadians(10))
                        + " mm down 200 mm left, pinion level")
                .line(ShaftPlace.REAR);

        assertThat(sloped.slope(1).toDegrees()).isCloseTo(10.0, within(1e-9));
        assertThat(sloped.length(0).toMillimeters()).isCloseTo(1000.0, within(1e-9));
        assertThat(measured.angle(0).toDegrees()).isCloseTo(sloped.angle(0).toDegrees(), within(1e-9));
        assertThat(sloped.angle(0).toDegrees())
                .isCloseTo(
                        Math.toDegrees(Math.acos(Math.sqrt(1 - 0.04 - Math.pow(Math.sin(Math.toRadians(10)), 2)))),
                        within(1e-6));
    }

    @Test
    void pointsAndSlopesDescribeOneLine() {
        double fall = 1000.0 * Math.sin(Math.toRadians(8));
        double along = Math.sqrt(1e6 - fall * fall - 900);
        LineSurvey points = LineSurvey.parse("output x 0 mm y 0 mm z 600 mm 3 deg down, pinion x " + -along
                + " mm y 30 mm z " + (600.0 - fall) + " mm 2 deg down");
        LineSurvey slopes =
                LineSurvey.parse("output 3 deg down, shaft 1000 mm 8 deg down 30 mm left, pinion 2 deg down");

        for (int joint = 0; joint < 2; joint++) {
            assertThat(points.line(ShaftPlace.REAR).angle(joint).toDegrees())
                    .isCloseTo(slopes.line(ShaftPlace.REAR).angle(joint).toDegrees(), within(1e-6));
        }
        assertThat(points.jointCount()).isEqualTo(2);
        assertThat(points.readings()).hasSize(4);
        assertThat(points.assumptions()).hasSize(1);
    }

    /** The joint center lies off the flange's face along its axis. */
    @Test
    void jointCenterLiesBeforeTheFace() {
        ShaftLine line = LineSurvey.parse("output x 0 mm y 0 mm z 0 mm level joint 40 mm out,"
                        + " pinion x -1000 mm y 0 mm z 0 mm level joint 60 mm out")
                .line(ShaftPlace.REAR);

        assertThat(line.length(0).toMillimeters()).isCloseTo(900.0, within(1e-9));
    }

    @Test
    void everyReadingOfPointsMovesWhatItNames() {
        LineSurvey survey = LineSurvey.parse("output x 0 mm y 0 mm z 0 mm 2 deg down 1 deg left,"
                + " bearing x -600 mm y 10 mm z -40 mm, pinion x -1500 mm y 0 mm z -200 mm 3 deg down 0 deg left");

        for (SurveyReading reading : survey.readings()) {
            assertThat(angles(reading.misread().apply(0.01))).as(reading.name()).isNotEqualTo(angles(survey));
            assertThat(angles(reading.misread().apply(0.0))).as(reading.name()).isEqualTo(angles(survey));
        }
        assertThat(survey.assumptions()).isEmpty();
        assertThat(survey.jointCount()).isEqualTo(3);
    }

    private static List<Angle> angles(LineSurvey survey) {
        ShaftLine line = survey.line(ShaftPlace.REAR);
        return List.of(line.angle(0), line.angle(1), line.angle(2));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "output 3.5 deg down, shaft 1185 mm 9.2 deg down 40 mm left, pinion 3 deg down",
                "output 2 deg up 1 deg left, shaft 700 mm 25 mm up, shaft 900 mm level 12 mm right, pinion level 0.5 deg right",
                "output x -120 mm y 30 mm z 640 mm 3.5 deg down, pinion x -1290 mm y 30 mm z 455 mm 3 deg down joint 45 mm out",
                "output x 0 mm y 0 mm z 0 mm level, bearing x -600 mm y 0 mm z -20 mm, pinion x -1500 mm y 0 mm z -150 mm level"
            })
    void writesWhatItReadsBack(String text) {
        LineSurvey survey = LineSurvey.parse(text);

        assertThat(survey.text()).isEqualTo(text);
        assertThat(LineSurvey.parse(survey.text())).isEqualTo(survey);
    }

    /** Figures next to nothing are written with an exponent and read back as themselves. */
    @Test
    void writesFiguresNextToNothing() {
        LineSurvey survey = LineSurvey.parse("output 3e-90 deg down, shaft 1185 mm 1e-70 mm down, pinion 0.1 rad down");

        assertThat(LineSurvey.parse(survey.text())).isEqualTo(survey);
    }

    @Test
    void readsInchesAndLong() {
        assertThat(LineSurvey.parse("Output 3 deg down, shaft 46 5/8 in long 9 1/4 in down, pinion level")
                        .text())
                .startsWith("output 3 deg down, shaft ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "output 3.5 down, shaft 1 m 9 deg down, pinion level | has no unit",
                "output 3.5, shaft 1 m 9 deg down, pinion level | has no unit",
                "output 3.5 deg, shaft 1 m 9 deg down, pinion level | \"down\" is wanted",
                "output 3 deg down, shaft 1 m 9 down, pinion level | has no unit",
                "output 3 deg down, pinion level | no shaft between",
                "output 3 deg down, shaft 1 m level | without the pinion",
                "shaft 1 m level, pinion level | not understood",
                "output level, shaft 1 m level, pinion level, shaft 1 m level | behind the pinion",
                "output level, shaft 1 m level, shaft 1 m level, shaft 1 m level, pinion level | count of shafts",
                "output level, shaft 1 m 950 mm down, pinion level | cannot fall",
                "output level, shaft 1 mm level, pinion level | out of range",
                "output 70 deg down, shaft 1 m level, pinion level | too much",
                "output level, shaft 1 m level, pinion x 0 mm y 0 mm z 0 mm level | one end only",
                "output x 0 mm y 0 mm z 0 mm level, shaft 1 m level, pinion x 1 m y 0 m z 0 m level | points and shafts",
                "output x 0 mm y 0 mm level, pinion level | not understood",
                "output x 9e70 m y 0 mm z 0 mm level, pinion x 1 m y 0 m z 0 m level | out of range",
                "output level, shaft 1 m fast, pinion level | \"fast\" stands where"
            })
    void refusesWhatItCannotUse(String text, String problem) {
        assertThatThrownBy(() -> LineSurvey.parse(text)).isInstanceOfSatisfying(RefusedException.class, refused -> {
            assertThat(refused.refusal().problem()).contains(problem);
            assertThat(refused.refusal().position().orElseThrow()).isBetween(0, text.length());
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "output x 0 mm y 0 mm z 0 mm level, pinion x 0 mm y 0 mm z 0 mm level | coincide",
                "output x 0 mm y 0 mm z 0 mm level, pinion x -6 m y 0 mm z 0 mm level | cannot be the distance",
                "output x 0 mm y 0 mm z 0 mm level, pinion x 1 m y 0 mm z 0 mm level | wrong side",
                "output 20 deg up, shaft 1 m 26 deg down, pinion level | bends more than a joint"
            })
    void refusesWhatCannotBeBuilt(String text, String problem) {
        LineSurvey survey = LineSurvey.parse(text);

        assertThatThrownBy(() -> survey.line(ShaftPlace.REAR)).hasMessageContaining(problem);
    }

    @Test
    void refusesPartsThatDoNotBelongTogether() {
        AxisDirection level = AxisDirection.sloping(Angle.ofDegrees(0));
        Length meter = Length.ofMeters(1);

        assertThatThrownBy(() -> new SurveyRun(meter, Optional.empty(), Optional.empty(), Optional.empty()))
                .hasMessageContaining("slope or its fall");
        assertThatThrownBy(() -> new SlopeSurvey(level, List.of(), level)).hasMessageContaining("count of shafts");
        Flange flange = new Flange(Position.of(meter, meter, meter), level, Length.ofMeters(0));
        Position point = flange.point();
        assertThatThrownBy(() -> new PointSurvey(flange, List.of(point, point), flange))
                .hasMessageContaining("bearings");
        assertThat(SurveyRun.falling(meter, Length.ofMillimeters(100)).fall()).isPresent();
        assertThat(SurveyRun.sloping(meter, Angle.ofDegrees(5)).slope()).isPresent();
    }
}
