package drivetrain.repl.command.ask;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.repl.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AskCommandsTest {

    private static String answer(String line) {
        Trial trial = Trial.of("open demo ranch-crawler", line);
        assertThat(trial.err()).isEmpty();
        return trial.out();
    }

    private static String refusal(String line) {
        Trial trial = Trial.of("open demo ranch-crawler", line);
        assertThat(trial.status()).isEqualTo(1);
        assertThat(trial.out()).isEmpty();
        return trial.err();
    }

    @ParameterizedTest
    @CsvSource({
        "cruise 55 mph, in 5th high",
        "cruise 55 mph in top, in 5th high",
        "cruise at 55 mph in 4th, in 4th high",
        "cruise 55 mph in fourth gear, in 4th high",
        "cruise 5 mph in 2 low, in 2nd low",
        "cruise 5 mph low, in 5th low",
        "cruise 5 mph in low, in 5th low",
        "cruise 5 mph in 1st low range, in 1st low",
        "cruise 88.5 km/h IN 3RD HIGH, in 3rd high",
        "cruise, in 5th high"
    })
    void readsTheGear(String line, String gear) {
        assertThat(answer(line).lines().findFirst().orElseThrow()).contains(gear);
    }

    @ParameterizedTest
    @CsvSource({
        "cruise 65, 10, has no unit",
        "cruise 65 furlongs, 11, is not a unit of speed",
        "cruise -5 mph, 1, must be greater than zero",
        "cruise 65 mph in, 17, no gear is named",
        "cruise 65 mph in reverse, 18, is not a forward gear",
        "cruise 65 mph in 0, 18, is not a forward gear",
        "cruise 65 mph in 19, 18, is not a forward gear",
        "cruise 65 mph in 4 sideways, 20, names no gear",
        "cruise 65 mph in 9, 1, has 5 forward gears",
        "speeds 3000, 12, has no unit",
        "shifts fast, 8, does not start with a number",
        "crawl slowly, 7, one word too many",
        "explain, 8, no question is named",
        "explain cruse 65 mph, 9, is not a question",
        "plot, 5, nothing is named",
        "plot torque, 6, cannot be drawn",
        "plot speeds sideways, 13, is not a range",
        "orders 40, 10, has no unit",
        "orders 40 mph with, 19, no count of cylinders",
        "orders 40 mph with eight cylinders, 20, is not a count of cylinders",
        "orders 40 mph with 17 cylinders, 20, is not a count of cylinders",
        "orders 40 mph within 5 %, 15, is not understood here",
        "orders 40 mph with 8 cylinders with 8 cylinders, 32, is not understood here",
        "plot modes sideways, 12, is not one of the two shafts",
        "plot modes rear front, 17, one word too many",
        "critical 4, 10, one word too many",
        "torsion 4, 9, one word too many",
        "suspect, 8, no frequency is named",
        "suspect at 40 mph, 9, no frequency is named",
        "suspect 22 at 40 mph, 11, has no unit",
        "suspect 22 mph at 40 mph, 12, is a unit of speed",
        "suspect 22 Hz at 40 Hz, 21, is a unit of frequency",
        "suspect 22 Hz at 40 mph within, 31, no tolerance is named",
        "suspect 22 Hz at 40 mph within 5, 32, has no percent sign",
        "suspect 22 Hz at 40 mph within 80 %, 32, is not a tolerance",
        "suspect 22 Hz at 40 mph within -5%, 32, is not a tolerance",
        "tubes, 6, no length is named",
        "tubes 48, 9, has no unit",
        "tubes 48 lb, 10, is a unit of mass",
        "tubes 1300 m, 7, is more than any road vehicle has",
        "tubes 20 mm, 7, 50 to 5000 mm",
        "tubes 1300 mm at 5500, 22, has no unit",
        "tubes 1300 mm at 999999 rpm, 18, is more than any road vehicle has"
    })
    void refusesWithThePlaceOfTheFault(String line, int column, String problem) {
        String refusal = refusal(line);
        assertThat(refusal).contains(problem);
        if (!line.startsWith("cruise -5")) {
            assertThat(refusal).startsWith("-c:2:" + column + ": ");
        }
    }

    @Test
    void namesTheSuspect() {
        assertThat(answer("suspect 31 Hz at 40 mph in 4th with 8 cylinders within 3 %"))
                .startsWith("What fits 31.0 Hz at 40.0 mph best is order 1 of the driveshafts")
                .contains("another gear");
        assertThat(answer("suspect 400 Hz"))
                .startsWith("Nothing that turns fits")
                .contains("with 8 cylinders");
        assertThat(answer("vibrations 40 mph in 4th with 6 cylinders")).contains("firing");
    }

    @Test
    void judgesTheShaftsOfThePackage() {
        assertThat(answer("critical")).contains("The rear shaft whirls at").contains("bends");
        assertThat(answer("whirl")).isEqualTo(answer("critical"));
        assertThat(answer("torsion")).contains("rear shaft may have to carry");
        assertThat(answer("plot modes")).contains("Modes of the rear shaft");
        assertThat(answer("plot modes front")).contains("Modes of the front shaft");
        assertThat(Trial.of("critical").err()).contains("no driveshaft is chosen");
        assertThat(Trial.of("torsion").err()).contains("no driveshaft is chosen");
        assertThat(Trial.of("plot modes").err()).contains("no driveshaft is chosen");
        assertThat(Trial.of("shaft rear tube 3 in x 0.083 in of steel, length 48 in", "plot modes front")
                        .err())
                .contains("no front shaft is chosen");
    }

    @Test
    void sizesTubes() {
        assertThat(answer("tubes 1000 mm")).startsWith("The smallest stock tube for 8000 rpm (engine at its maximum");
        assertThat(answer("tubes 48 in at 5500 rpm")).contains("will do").contains("too fast");
        assertThat(answer("tubes 3 m at 9000 rpm")).startsWith("No stock tube will do");
    }

    @Test
    void suggestsWhatWasMeant() {
        assertThat(refusal("explain cruse 65 mph")).contains("near: cruise");
        assertThat(refusal("cruise 65 mp")).contains("near: mph");
    }

    @Test
    void saysWhatIsMissing() {
        assertThat(Trial.of("crawl").err())
                .isEqualTo("-c:1:1: crawl: not evaluated because no transmission is chosen\n");
        assertThat(Trial.of("plot speeds").err()).contains("plot: not evaluated because no engine is chosen");
        assertThat(Trial.of("cruise").err()).contains("no road speed is named, and the order names none");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cruise 55 mph",
                "speeds",
                "crawl",
                "torque",
                "shifts",
                "engine",
                "tire",
                "orders",
                "suspect 22 Hz at 40 mph",
                "tubes 48 in",
                "critical",
                "torsion"
            })
    void explainsEveryQuestion(String question) {
        assertThat(answer("explain " + question)).startsWith("Working: ").contains("Sources");
    }

    @Test
    void listsEveryGearOfBothRangesAndReverse() {
        assertThat(answer("speeds 3000 rpm")).contains("1st high", "5th high", "1st low", "5th low");
    }

    @Test
    void listsParts() {
        assertThat(answer("parts engine diesel")).startsWith("One part on the shelf \"demo\" has \"diesel\".");
        assertThat(answer("parts transfer")).contains("pt-4.00").doesNotContain("rp-4.56");
        assertThat(answer("parts transfer case")).isEqualTo(answer("parts transfer"));
        assertThat(answer("parts transferCases")).isEqualTo(answer("parts transfer"));
        assertThat(answer("parts xyzzy")).startsWith("No part on the shelf");
        assertThat(answer("parts")).contains("pt-4.00", "rp-4.56", "wagon-long");
    }

    @Test
    void drawsOneRange() {
        assertThat(answer("plot speeds")).contains("5th high").doesNotContain("5th low");
        assertThat(answer("plot speeds low")).contains("5th low").doesNotContain("5th high");
    }

    @Test
    void showsWhatIsNotChosen() {
        assertThat(Trial.of("show").out())
                .startsWith("Nothing is chosen yet.")
                .contains("not chosen", "none fitted", "as at the rear");
        assertThat(answer("show")).contains("asked cruise", "55 mph", "notes");
    }

    @Test
    void checksWhatCanBeChecked() {
        assertThat(answer("check")).contains("Checks\n", "Caution, ");
        assertThat(Trial.of("tire 285/75R16 122/119Q", "check").out()).contains("not evaluated");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "pull 6 % at 55 mph; holds 55.0 mph on a grade of 6.0 %",
                "pull 6 % grade at 55 mph; on a grade of 6.0 %",
                "pull; on the level",
                "pull at 50 mph; holds 50.0 mph on the level",
                "climb 1 in 10 at 30 mph; on a grade of 10.0 %",
                "top; The vehicle reaches",
                "top speed; The vehicle reaches",
                "sprint to 50 mph; From rest to 50.0 mph in",
                "sprint; From rest to 60.0 mph in",
                "grip; On dry asphalt (four-wheel drive, axles tied) the tires hold",
                "grip on wet grass; On wet grass",
                "loads; The weakest link is the",
                "load path; The weakest link is the",
                "explain loads; torque in every part",
                "explain sprint to 50 mph; run from rest",
                "explain grip ice; grip on ice",
                "plot force; Driving force in each gear",
                "plot power low; Power at the wheels in each gear"
            })
    void answersAboutTheRoad(String line, String start) {
        assertThat(answer(line).lines().findFirst().orElseThrow()).contains(start);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "pull 6 at 65 mph; 7; has no unit",
                "pull 6 % at; 12; no road speed stands behind",
                "pull 6 % at 65; 15; has no unit",
                "pull steep at 65 mph; 6; is not a grade",
                "top now; 5; one word too many",
                "sprint to; 10; no speed stands behind",
                "sprint to 60; 13; has no unit",
                "grip moon; 6; is not a surface",
                "loads all; 7; one word too many",
                "converter; 1; a clutch and no converter",
                "converter stall 9; 17; outside 1 to 5",
                "plot force sideways; 12; is not a range"
            })
    void refusesWhatTheRoadCannotAnswer(String line, int column, String problem) {
        assertThat(refusal(line)).startsWith("-c:2:" + column + ":").contains(problem);
    }

    @Test
    void triesAnotherConverterWithoutChangingTheOrder() {
        Trial trial = Trial.of("open demo", "converter stall 2.4 stall-speed 2600 rpm", "converter");
        assertThat(trial.err()).isEmpty();
        assertThat(trial.out()).contains("At stall the engine turns 2600 rpm", "At stall the engine turns 2150 rpm");
    }
}
