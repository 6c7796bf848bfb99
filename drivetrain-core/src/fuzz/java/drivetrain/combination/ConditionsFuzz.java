package drivetrain.combination;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import drivetrain.fuzz.ChangedText;
import drivetrain.refusal.RefusedException;
import drivetrain.road.Grade;
import drivetrain.road.Surface;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * Throws seeded mutated text at the literals of the road: vehicle, air, surface, grade. Each case must be read twice alike, or be refused with a position
 * inside the text. Nothing else may be thrown.
 *
 * <p>System properties: {@code fuzz.cases}, 1,000,000 by default, and {@code fuzz.seed}, 1 by default.
 */
class ConditionsFuzz {

    private static final long CASES = Long.getLong("fuzz.cases", 1_000_000L);
    private static final long SEED = Long.getLong("fuzz.seed", 1L);
    private static final String ALPHABET = "0123456789.,:/%+- \t\n\"eE\u0000\u00b0\u0661\ud83d";
    private static final List<String> WORDS = List.of(
            "mass",
            "front",
            "rear",
            "dual",
            "drag",
            "wheelbase",
            "cg",
            "split",
            "kg m2",
            "m2",
            "54 %",
            "altitude",
            "temperature",
            "degF",
            "deg",
            "in",
            "level",
            "NaN",
            "1e999",
            "-",
            "wet",
            "ice");

    private record Target(String name, Function<String, Object> parse, List<String> seeds) {

        void check(String text) {
            try {
                Object read = parse.apply(text);
                assertThat(parse.apply(text)).as("%s \"%s\"", name, text).isEqualTo(read);
            } catch (RefusedException refused) {
                int position = refused.refusal().position().orElse(0);
                if (position < 0 || position > text.length()) {
                    fail("%s \"%s\": position %d is outside the text", name, text, position);
                }
            } catch (RuntimeException other) {
                throw new AssertionError(name + " \"" + text + "\"", other);
            }
        }
    }

    private static final List<Target> TARGETS = List.of(
            new Target(
                    "vehicle",
                    Vehicle::parse,
                    List.of(
                            "mass 2150 kg front 1250 kg rear 1700 kg dual",
                            "mass 2240 kg drag 1.4 m2 wheelbase 2850 mm cg 760 mm split 54 %",
                            "drag 15 ft2 engine-inertia 0.3 kg m2 wheel-inertia 2 kg m2")),
            new Target(
                    "air",
                    text -> Combination.resolve(Specification.empty().drivenIn(text), Catalog.empty())
                            .air(),
                    List.of("altitude 1500 m temperature 30 degC", "temperature 90 degF", "standard")),
            new Target("surface", Surface::parse, List.of("wet asphalt", "dry concrete", "loose-gravel")),
            new Target("grade", Grade::parse, List.of("6 %", "-3.4 deg", "1 in 17", "1:4", "level")));

    @Test
    void readsOrRefusesInsideTheText() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (long i = 0; i < CASES; i++) {
            Target target = TARGETS.get(random.nextInt(TARGETS.size()));
            target.check(ChangedText.byWords(
                    target.seeds().get(random.nextInt(target.seeds().size())), random, ALPHABET, WORDS));
        }
    }
}
