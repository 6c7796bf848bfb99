package drivetrain.repl.command.ask;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.repl.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShaftCommandsTest {

    private static final String LINE =
            "shaft rear line output 4 deg down, shaft 560 mm 17 deg down 15 mm left, pinion 16.5 deg down";

    private static String answer(String... lines) {
        String[] all = new String[lines.length + 1];
        all[0] = "open demo ranch-crawler";
        System.arraycopy(lines, 0, all, 1, lines.length);
        Trial trial = Trial.of(all);
        assertThat(trial.err()).isEmpty();
        return trial.out();
    }

    @Test
    void findsAPinionThatWasLeftParallel() {
        assertThat(answer("shafts"))
                .contains("The joints of the rear shaft bend by 13.09 deg and 12.10 deg")
                .contains("exceeded  rear shaft, torsional acceleration at cruise")
                .contains("best pinion slope                         17.01 deg down")
                .contains("the double joint is taken as turning evenly")
                .contains("Caution, driveshaft");
    }

    @Test
    void answersAfterThePinionIsTurned() {
        assertThat(answer(LINE, "shafts"))
                .contains("together they shake the axle like one joint at 1.62 deg")
                .doesNotContain("exceeded  rear shaft");
    }

    @Test
    void sweepsTheTravel() {
        assertThat(answer("travel"))
                .contains("Over its travel the rear shaft is between")
                .contains("joint 2 widest")
                .contains("spline engagement left");
    }

    @Test
    void explainsBoth() {
        assertThat(answer("explain shafts")).contains("b_eq = |sum of").contains("torsional acceleration");
        assertThat(answer("explain travel")).contains("L_max - L_min").contains("rigid body");
    }

    @Test
    void tellsHowWrongAReadingMayBe() {
        assertThat(answer("shafts readings"))
                .contains("rear, slope of the pinion")
                .contains("beyond 5 deg");
    }

    @ParameterizedTest
    @ValueSource(strings = {"plot travel", "plot travel rear", "plot travel front"})
    void drawsTheTravel(String line) {
        assertThat(answer(line))
                .contains("Joint angles of the")
                .contains("Slip of the")
                .contains("joint 2");
    }

    @Test
    void drawsTheFrontShaftWhereItAloneIsThere() {
        assertThat(answer("shaft rear none", "plot travel")).contains("Joint angles of the front shaft");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "shafts loudly | is not understood here",
                "travel far | one word too many",
                "plot travel middle | front or rear",
                "plot travel rear now | one word too many",
                "shaft middle | front or rear",
                "shaft rear line output 4 down, shaft 560 mm 17 deg down, pinion 5 deg down | has no unit",
                "shaft rear line output 30 deg up, shaft 560 mm 17 deg down, pinion 5 deg down | bends more than a joint",
                "shaft rear tube 3 in x 2 in of steel | more than the radius",
                "shaft rear tub 3 in x 0.1 in of steel | not understood",
                "shaft rear suspension coils | not"
            })
    void refusesInPlainWords(String line, String problem) {
        Trial trial = Trial.of("open demo ranch-crawler", line);

        assertThat(trial.status()).isEqualTo(1);
        assertThat(trial.err()).contains(problem);
    }

    @Test
    void saysWhatIsMissing() {
        assertThat(Trial.of("shafts").err()).contains("no driveshaft is chosen");
        assertThat(Trial.of("travel").err()).contains("no driveshaft is chosen");
        assertThat(Trial.of("plot travel").err()).contains("no driveshaft is chosen");
        assertThat(Trial.of("open demo", "shaft front suspension none", "plot travel front")
                        .err())
                .contains("the suspension of the front axle is not described");
        assertThat(Trial.of("open demo", "shaft front line none", "plot travel front")
                        .err())
                .contains("the line of the front shaft is not measured");
        assertThat(answer("shaft front line none", "shafts"))
                .contains("Not everything is evaluated because the line of the front shaft is not measured");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "shaft | hardtop-front-lifted",
                "shaft rear | hardtop-rear-lifted",
                "shaft front line | hardtop-front-lifted",
                "shaft rear suspension | hardtop-rear-leaves",
                "shaft rear suspension hardtop-front-leaves | hardtop-front-leaves",
                "driveshaft rear line wagon-rear | wagon-rear"
            })
    void choosesAndShows(String line, String shown) {
        assertThat(answer(line, "shaft rear", "shaft front")).contains(shown);
    }

    @Test
    void takesAShaftOut() {
        assertThat(answer("shaft rear none", "shaft rear"))
                .contains("not chosen")
                .doesNotContain("short-76-dj");
    }

    @Test
    void whatIsTypedIsKeptWordForWord() {
        assertThat(answer(LINE, "show")).contains("pinion 16.5 deg down");
    }
}
