package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import drivetrain.fuzz.ChangedText;
import drivetrain.refusal.RefusedException;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * Throws seeded random and mutated text at every literal of the driveshaft room. Each case must be read, and then its canonical text must read back
 * as an equal part, or be refused with a position inside the text. Nothing else may be thrown.
 *
 * <p>System properties: {@code fuzz.cases}, 1,000,000 by default, and {@code fuzz.seed}, 1 by default.
 */
class DriveshaftFuzz {

    private static final long CASES = Long.getLong("fuzz.cases", 1_000_000L);
    private static final long SEED = Long.getLong("fuzz.seed", 1L);

    /** The longest text that is read; a canonical text can be longer than what was typed. */
    private static final int LONGEST = 400;

    /** One parser with its writer and what starts its mutations. */
    private record Target<T>(String name, Function<String, T> parse, Function<T, String> write, List<String> seeds) {

        void check(String text) {
            T part;
            try {
                part = parse.apply(text);
            } catch (RefusedException refused) {
                int position = refused.refusal().position().orElse(0);
                if (position < 0 || position > text.length()) {
                    fail("%s \"%s\": position %d is outside the text", name, text, position);
                }
                return;
            } catch (RuntimeException other) {
                throw new AssertionError(name + " \"" + text + "\"", other);
            }
            String canonical = write.apply(part);
            if (canonical.length() > LONGEST) {
                return;
            }
            assertThat(parse.apply(canonical)).as("%s \"%s\"", name, text).isEqualTo(part);
            assertThat(write.apply(parse.apply(canonical))).isEqualTo(canonical);
        }
    }

    private static final List<Target<?>> TARGETS = List.of(
            new Target<>(
                    "driveshaft",
                    Driveshaft::parse,
                    Driveshaft::text,
                    List.of(
                            "tube 76.2 mm x 2.1 mm of steel, yokes 1.1 kg 65 mm long in phase, joints rated 1700 N\u00B7m to 30 deg, slip 24 teeth 38 mm across 95 mm engaged 50 mm free",
                            "tube 3 1/2 in x 0.095 in of steel, yokes 22.5 deg counterclockwise, double joint at output rated 1500 N\u00B7m to 25 deg, flanges rated 1200 lb-ft",
                            "tube 3 in x 0.083 in of steel, length 600 mm, tube 3 in x 0.083 in of steel, bearing 150 N/mm, slip 16 teeth 200 mm long 60 mm least")),
            new Target<>(
                    "shaft line",
                    LineSurvey::parse,
                    LineSurvey::text,
                    List.of(
                            "output 3.5 deg down, shaft 1185 mm 9.2 deg down 40 mm left, pinion 3 deg down",
                            "output 2 deg up 1 deg left, shaft 700 mm long 25 mm up, shaft 36 1/4 in level 12 mm right, pinion level 0.5 deg right",
                            "output x -120 mm y 30 mm z 640 mm 3.5 deg down, bearing x -600 mm y 0 mm z 600 mm, pinion x -1290 mm y 30 mm z 455 mm 3 deg down joint 45 mm out")),
            new Target<>(
                    "suspension",
                    Suspension::parse,
                    Suspension::text,
                    List.of(
                            "radius arms 880 mm behind 40 mm below 640 mm apart, panhard from 90 mm ahead 20 mm above 500 mm left to 90 mm ahead 30 mm above 450 mm right, pinion 260 mm behind 30 mm above 180 mm left, bump 90 mm, droop 120 mm, track 1490 mm",
                            "four links, lower from 20 mm behind 90 mm below 900 mm apart to 780 mm ahead 110 mm below 700 mm apart, upper from 40 mm ahead 150 mm above 400 mm apart to 560 mm ahead 120 mm above 400 mm apart, pinion 260 mm ahead 30 mm above, bump 90 mm, droop 120 mm, track 1490 mm",
                            "leaf springs 560 mm ahead 25 mm below 1000 mm apart turning 1.5 deg up per 100 mm, pinion 260 mm ahead 30 mm above, bump 90 mm, droop 120 mm, track 58 11/16 in")));

    private static final String ALPHABET = "0123456789.,:/%+- \t\n\"eExX\u0000\u00d7\u0661\ud83d";
    private static final List<String> WORDS = List.of(
            "tube",
            "of steel",
            "yokes",
            "in phase",
            "joints",
            "double joint at output",
            "slip 16 teeth",
            "shaft",
            "pinion",
            "bearing",
            "down",
            "up",
            "left",
            "level",
            "ahead",
            "below",
            "apart",
            "per",
            "turning",
            "deg",
            "mm",
            "1/16 in",
            "NaN",
            "1e999",
            "0 mm",
            "0.3 rad",
            ",");

    @Test
    void readsBackOrRefusesInsideTheText() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (long i = 0; i < CASES; i++) {
            Target<?> target = TARGETS.get(random.nextInt(TARGETS.size()));
            target.check(ChangedText.byWords(
                    target.seeds().get(random.nextInt(target.seeds().size())), random, ALPHABET, WORDS));
        }
    }
}
