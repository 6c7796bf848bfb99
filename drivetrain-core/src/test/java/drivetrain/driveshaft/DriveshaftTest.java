package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Angle;
import drivetrain.quantity.Length;
import drivetrain.quantity.Torque;
import drivetrain.refusal.RefusedException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DriveshaftTest {

    private static final String WHOLE =
            "tube 76.2 mm x 2.1 mm of steel, length 1185 mm, yokes 1.1 kg 65 mm long in phase,"
                    + " joints rated 1700 N\u00B7m to 30 deg, double joint at output rated 1500 N\u00B7m to 25 deg,"
                    + " slip 24 teeth 38 mm across 200 mm long 95 mm engaged 60 mm least 50 mm free, flanges rated 2000 N\u00B7m";

    @Test
    void readsEveryClause() {
        Driveshaft shaft = Driveshaft.parse(WHOLE);

        assertThat(shaft.pieces()).hasSize(1);
        ShaftPiece piece = shaft.pieces().get(0);
        assertThat(piece.tube().diameter().toMillimeters()).isCloseTo(76.2, within(1e-9));
        assertThat(piece.material().text()).isEqualTo("steel");
        assertThat(piece.length()).hasValue(Length.ofMillimeters(1185));
        assertThat(piece.yoke().orElseThrow().mass().toKilograms()).isEqualTo(1.1);
        assertThat(piece.phase()).hasValue(Angle.ofDegrees(0));
        assertThat(shaft.joints()).extracting(Joint::kind).containsExactly(JointKind.DOUBLE, JointKind.SINGLE);
        assertThat(shaft.joints())
                .extracting(Joint::rating)
                .containsExactly(Optional.of(Torque.ofNewtonMeters(1500)), Optional.of(Torque.ofNewtonMeters(1700)));
        assertThat(shaft.joints().get(0).mostAngle()).hasValue(Angle.ofDegrees(25));
        SlipSpline slip = shaft.slip().orElseThrow();
        assertThat(slip.teeth()).isEqualTo(24);
        assertThat(slip.pitch().toDegrees()).isCloseTo(15.0, within(1e-12));
        assertThat(slip.engaged()).hasValue(Length.ofMillimeters(95));
        assertThat(slip.least()).hasValue(Length.ofMillimeters(60));
        assertThat(slip.free()).hasValue(Length.ofMillimeters(50));
        assertThat(shaft.flangeRating()).hasValue(Torque.ofNewtonMeters(2000));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                WHOLE,
                "tube 3 in x 0.083 in of steel",
                "tube 3 in x 0.083 in of steel, yokes 15 deg counterclockwise, double joint at pinion",
                "tube 3 1/2 in x 0.095 in of steel, tube 3 in x 0.083 in of steel, yokes in phase, bearing 150 N/mm, joints to 25 deg",
                "tube 76.2 mm x 2.1 mm of steel, slip 16 teeth 3.5 in engaged 2 in free",
                "tube 76.2 mm x 2.1 mm of modulus 205 GPa poisson 0.29 density 7850 kg/m3, joints"
            })
    void writesWhatItReadsBack(String text) {
        Driveshaft shaft = Driveshaft.parse(text);

        assertThat(Driveshaft.parse(shaft.text())).isEqualTo(shaft);
        assertThat(Driveshaft.parse(shaft.text()).text()).isEqualTo(shaft.text());
    }

    @Test
    void writesShopFiguresAsTheyWereTyped() {
        assertThat(Driveshaft.parse(WHOLE).text()).isEqualTo(WHOLE);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | 0 | is empty",
                "joints | 0 | names no tube",
                "yokes in phase, tube 3 in x 0.1 in of steel | 0 | before the tube",
                "tube 3 in x 0.1 in | 18 | \"of\" is wanted",
                "tube 3 in x 2 in of steel | 12 | more than the radius",
                "tube 3 in x 0.1 in of cheese | 22 | not a material",
                "tube 3 in x 0.1 in of steel, joints rated 1700 | 46 | has no unit",
                "tube 3 in x 0.1 in of steel, joints rated 1700 N\u00B7m to 30 | 56 | has no unit",
                "tube 3 in x 0.1 in of steel, joints rated -5 N\u00B7m | 29 | greater than zero",
                "tube 3 in x 0.1 in of steel, joints to 95 deg | 29 | more than a joint can bend",
                "tube 3 in x 0.1 in of steel, joint | 29 | not understood",
                "tube 3 in x 0.1 in of steel, slip 3 teeth | 34 | out of range",
                "tube 3 in x 0.1 in of steel, slip 16 tooth | 37 | not understood",
                "tube 3 in x 0.1 in of steel, bearing 100 N/mm | 0 | this shaft has one",
                "tube 3 in x 0.1 in of steel, joints, joints | 37 | twice",
                "tube 3 in x 0.1 in of steel,, joints | 28 | separates nothing",
                "tube 3 in x 0.1 in of steel, | 28 | ends with a comma",
                "tube 3 in x 0,1 in of steel | 13 | comma inside a number",
                "tube 3 in x 0.1 in of steel, length 12 mm | 29 | out of range",
                "tube 3 in x 0.1 in of steel, length 100 mm, yokes 1 kg 60 mm long | 44 | no tube between",
                "tube 3 in x 0.1 in of steel, yokes 200 deg clockwise | 29 | out of range",
                "tube 3 in x 0.1 in of steel, yokes 20 deg | 41 | \"clockwise\" is wanted"
            })
    void refusesAtTheFault(String text, int position, String problem) {
        assertThatThrownBy(() -> Driveshaft.parse(text)).isInstanceOfSatisfying(RefusedException.class, refused -> {
            assertThat(refused.refusal().problem()).contains(problem);
            assertThat(refused.refusal().position()).hasValue(position);
        });
    }

    @Test
    void refusesPartsThatDoNotBelongTogether() {
        ShaftPiece piece =
                Driveshaft.parse("tube 3 in x 0.1 in of steel").pieces().get(0);
        Joint single = Joint.of(JointKind.SINGLE);

        assertThatThrownBy(() -> shaft(List.of(), List.of(single))).hasMessageContaining("count of pieces");
        assertThatThrownBy(() -> shaft(List.of(piece), List.of(single))).hasMessageContaining("1 pieces");
        assertThatThrownBy(() -> shaft(List.of(piece, piece), List.of(single, Joint.of(JointKind.DOUBLE), single)))
                .hasMessageContaining("center bearing");
    }

    private static Driveshaft shaft(List<ShaftPiece> pieces, List<Joint> joints) {
        return new Driveshaft("x", pieces, joints, Optional.empty(), Optional.empty(), Optional.empty());
    }

    @Test
    void turnsTheLastYoke() {
        Driveshaft shaft = Driveshaft.parse("tube 3 in x 0.1 in of steel, yokes in phase");

        assertThat(shaft.withLastPhase(Angle.ofDegrees(30)).text()).endsWith("yokes 30 deg clockwise");
    }
}
