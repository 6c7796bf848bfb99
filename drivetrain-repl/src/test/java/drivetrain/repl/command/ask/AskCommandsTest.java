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
        "plot speeds sideways, 13, is not a range"
    })
    void refusesWithThePlaceOfTheFault(String line, int column, String problem) {
        String refusal = refusal(line);
        assertThat(refusal).contains(problem);
        if (!line.startsWith("cruise -5")) {
            assertThat(refusal).startsWith("-c:2:" + column + ": ");
        }
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
    @ValueSource(strings = {"cruise 55 mph", "speeds", "crawl", "torque", "shifts", "engine", "tire"})
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
                "grip; On dry asphalt with four-wheel drive",
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
