package drivetrain.repl.command.compare;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.repl.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CompareCommandsTest {

    private static Trial ask(String... lines) {
        String[] all = new String[lines.length + 1];
        all[0] = "open demo";
        System.arraycopy(lines, 0, all, 1, lines.length);
        return Trial.of(all);
    }

    private static String answer(String... lines) {
        Trial trial = ask(lines);
        assertThat(trial.err()).isEmpty();
        assertThat(trial.status()).isZero();
        return trial.out();
    }

    @Test
    void comparesWhatIsKept() {
        assertThat(answer("keep stock", "axle 41/10", "compare"))
                .contains("Against \"stock\", 8 figures differ in \"in-hand\".")
                .contains("higher, worse")
                .contains("peak torque");
        assertThat(answer("keep stock", "axle 41/10", "compare stock differences"))
                .doesNotContain("peak torque");
        assertThat(answer("keep a", "axle 41/10", "keep b", "tire at-245-75r16", "compare"))
                .contains("change of b", "b is")
                .contains("change of in-hand", "in-hand is");
        assertThat(answer("keep a", "axle 41/10", "keep b", "compare b a")).contains("Against \"b\"");
    }

    @Test
    void countsTheChecksThatEveryPackageMeets() {
        String compared = answer("keep stock", "axle 41/10", "compare");
        assertThat(compared)
                .containsPattern("(?m)^  speedometer +exceeded +met$")
                .containsPattern("(?m)^  torque in the rear ring and pinion +met +-$")
                .containsPattern("(?m)^\\d+ more checks are met by every package\\.$")
                .doesNotContainPattern("(?m) met +met$");
        assertThat(answer("keep stock", "axle 41/10", "compare differences"))
                .as("what neither package was checked for is alike")
                .doesNotContainPattern("(?m)not evaluated +not evaluated$");
    }

    @Test
    void showsHowPackagesAreDrivenWhereThatDiffers() {
        assertThat(answer("keep stock", "limiter 100 mph", "surface gravel", "air altitude 1500 m", "compare"))
                .containsPattern("(?m)^  speed limiter +- +100 mph$")
                .containsPattern("(?m)^  surface +- +gravel$")
                .containsPattern("(?m)^  air +- +altitude 1500 m$")
                .doesNotContainPattern("(?m)^  asked cruise +70 mph");
    }

    @Test
    void comparesAcrossShelvesAndAfterUndo() {
        assertThat(answer("keep wagon", "open demo ranch-crawler", "compare")).contains("Against \"wagon\"");
        assertThat(answer("keep wagon", "undo", "keep"))
                .contains("Undone: keep wagon.")
                .contains("No package is kept.");
        assertThat(answer("keep wagon", "undo", "redo", "keep")).contains("One package is kept.");
    }

    @Test
    void showsNumbersWithUnitsToPrograms() {
        assertThat(answer("output json", "solve axle for cruise 2000 rpm at 65 mph"))
                .contains("\"question\":\"solve\"")
                .contains("\"target\":{\"value\":2000");
        assertThat(answer("output csv", "sweep axle 3.73 or 4.10 by lowest rpm at 65 mph"))
                .contains("rpmAt65mph");
        assertThat(answer("output plain", "sweep axle 3.73 or 4.10 by lowest rpm at 65 mph"))
                .contains("2 of 2 packages");
    }

    @Test
    void sweepsInWords() {
        assertThat(answer("sweep axle all")).contains("packages can be ranked");
        assertThat(answer("sweep axle 3.73 or 4.10 and tire all where crawl ratio >= 42 best 2"))
                .contains("misses crawl ratio at least 42.0");
        assertThat(answer(
                        "sweep axle 3.73, 4.10 where rpm at 65 mph between 1700 rpm and 1800 rpm by rpm near 1750 rpm"))
                .contains("1 of 2 packages keeps every wish.");
        assertThat(answer(
                        "sweep transmission manual and axle all where crawl ratio under 60 by crawl ratio weight 0.5"))
                .contains("highest crawl ratio weight 0.5");
        assertThat(answer("sweep axle all where crawl ratio at least 1000")).contains("even alone");
        assertThat(answer("sweep axle all where crawl ratio at least 40 --yes")).contains("keep every wish");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sweep | no parts are named",
                "sweep axle | no parts are named for the axle",
                "sweep axle all and | a place and its parts are missing",
                "sweep axle all and axle all | two lists",
                "sweep axle banana | is no part, literal or word",
                "sweep axle all where | is held against no number",
                "sweep axle all where crawl ratio at least | a number is missing",
                "sweep axle all where crawl ratio at least x | is not a plain number",
                "sweep axle all where rpm at 65 mph between 2200 and 1800 rpm | is above the second number",
                "sweep axle all where rpm at 65 mph between 1800 rpm | a second number is missing",
                "sweep axle all best 0 | is no count of rows",
                "sweep axle all by | no figure is named",
                "sweep axle all by rpm near 0 rpm | cannot be aimed at",
                "sweep axle all by rpm weight x | is no number",
                "sweep axle all by rpm weight 0 | is no weight",
                "sweep axle all by geared speed | one way or the other",
                "front rpm over axle all | two or three figures",
                "front rpm against crawl ratio | no lists of parts",
                "solve axle | are needed",
                "solve axle for crawl | are needed",
                "solve banana for crawl 60 | cannot be changed by itself",
                "solve axle for banana 60 | is not a figure",
                "solve axle for crawl 60 mph | is not a plain number",
                "solve axle for crawl 600 | out of range",
                "solve overdrive for crawl 60 | no overdrive is chosen",
                "tolerance | a part and its tolerance are needed",
                "tolerance tire | a part and its tolerance are needed",
                "tolerance tire 1 | has no % behind it",
                "tolerance tire 50 % | is no tolerance",
                "tolerance tire 1 % and tire 2 % | has two tolerances",
                "sensitivity now | one word too many",
                "compare | nothing is kept",
                "compare banana | is no kept package",
                "keep a b | one word too many",
                "keep -x | cannot be the name",
                "what if | no part is named",
                "what if axle all | has 13 parts behind it",
                "what if axle -4 | must be greater than zero",
            })
    void refusesWithThePlace(String line, String problem) {
        Trial trial = ask(line);
        assertThat(trial.status()).isEqualTo(1);
        assertThat(trial.out()).isEmpty();
        assertThat(trial.err()).startsWith("-c:2:").contains(problem).doesNotContain("drivetrain.");
        assertThat(trial.err().lines().count()).isLessThanOrEqualTo(4);
    }

    @Test
    void placesTheFaultInsideTheSentence() {
        assertThat(ask("sweep axle all where craw ratio at least 50").err()).startsWith("-c:2:22:");
        assertThat(ask("sweep axle all where crawl speed at most 50").err()).contains("has no unit");
        assertThat(ask("sweep axle 4.10 or nonsense").err()).startsWith("-c:2:20:");
    }

    @Test
    void setsRangesOfTolerances() {
        assertThat(answer("tolerance tire 1 % and first gear 0.5 % and transfer low 1 %"))
                .contains("crawl ratio");
        assertThat(answer("sensitivity")).contains("transfer low");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sweep axle all by highest crawl ratio best 2",
                "sweep axle all best 2 where crawl ratio at least 40",
                "sweep axle all by crawl ratio where crawl ratio at least 40"
            })
    void refusesASentenceInAnotherOrder(String line) {
        assertThat(Trial.of("open demo", line).err()).contains("stands too late in the sentence");
    }

    @Test
    void saysHowLongItWouldAskForEveryPackage() {
        String line = "sweep axle 3.07..5.38 step 0.001 and transfer 1.00 1.96..4.70 step 0.001 and transmission all "
                + "where load margin at least 0 % best 3 by load margin";
        Trial trial = Trial.of("open demo", line);
        assertThat(trial.status()).isEqualTo(1);
        assertThat(trial.err()).contains("packages would take", "or --yes at the end of the line");
    }

    @Test
    void readsTolerancesOfCurvesAndAngles() {
        assertThat(Trial.of("open demo", "tolerance angles 0.5 deg and torque curve 3 %")
                        .out())
                .contains("angles read on the rear shaft line within 0.50 deg", "torque at each measured point");
        assertThat(Trial.of("open demo", "tolerance tire -3 %").err())
                .contains("tolerance \"-3 %\"", "counts both ways", "without a sign");
    }
}
