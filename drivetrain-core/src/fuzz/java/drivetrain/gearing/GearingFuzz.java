package drivetrain.gearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import drivetrain.fuzz.ChangedText;
import drivetrain.refusal.RefusedException;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * Throws seeded random and mutated text at every literal of the gearing room. Each case must be read, and then its canonical text must read back
 * as an equal part, or be refused with a position inside the text. Nothing else may be thrown.
 *
 * <p>System properties: {@code fuzz.cases}, 1,000,000 by default, and {@code fuzz.seed}, 1 by default.
 */
class GearingFuzz {

    private static final long CASES = Long.getLong("fuzz.cases", 1_000_000L);
    private static final long SEED = Long.getLong("fuzz.seed", 1L);

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
            assertThat(parse.apply(canonical)).as("%s \"%s\"", name, text).isEqualTo(part);
            assertThat(write.apply(parse.apply(canonical))).isEqualTo(canonical);
        }
    }

    private static final List<Target<?>> TARGETS = List.of(
            new Target<>("ratio", Ratio::parse, Ratio::text, List.of("4.10", "41/11", "3.73:1", "41:10")),
            new Target<>(
                    "transmission",
                    Transmission::parse,
                    Transmission::text,
                    List.of(
                            "4.03 2.36 1.53 1.15 0.85 0.67",
                            "6.32, 3.09, 1.69, 1.00, reverse 7.44, clutch, efficiency 95 %",
                            "3.06 1.63 1.00 0.70 reverse 2.29 converter stall 2.2 lockup slip 3 %",
                            "2.48 1.48 1.00 converter no lockup speed-ratio 0.955 efficiency 0.93",
                            "3.06 1.00 converter curve 0:2.1:150 0.5:1.5:160 0.95:0.99:300 lockup rating 600 lb-ft",
                            "3.06 1.00 converter stall 2 stall-speed 2200 rpm rating 800 Nm",
                            "4.03 1.00 clutch clutch-rating 450 lb-ft")),
            new Target<>(
                    "transfer case",
                    TransferCase::parse,
                    TransferCase::text,
                    List.of(
                            "1.00 2.72",
                            "1.22 3.32 locked efficiency 97 %",
                            "1 2.5 open rating 2000 lb-ft output-rating 5000 Nm",
                            "1 2.5 rear-only",
                            "none")),
            new Target<>(
                    "overdrive", Overdrive::parse, Overdrive::text, List.of("0.78", "1.25 efficiency 97 %", "none")),
            new Target<>(
                    "hub reduction",
                    HubReduction::parse,
                    HubReduction::text,
                    List.of("24/16", "1.5 efficiency 98 %", "none")),
            new Target<>(
                    "axle",
                    AxleRatio::parse,
                    AxleRatio::text,
                    List.of(
                            "41/10",
                            "4.10 efficiency 96 %",
                            "37/9 ring-rating 5500 lb-ft shaft-rating 3000 lb-ft joint-rating 2500 Nm")));

    private static final String ALPHABET = "0123456789.,:/%+- \t\n\"eExX\u0000\u00d7\u0661\ud83d";
    private static final List<String> WORDS = List.of(
            "none",
            "open",
            "locked",
            "part-time",
            "rear-only",
            "clutch",
            "converter",
            "stall",
            "lockup",
            "no",
            "slip",
            "speed-ratio",
            "efficiency",
            "reverse",
            "NaN",
            "1e999",
            "0.97",
            "41/10",
            "3 %",
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
