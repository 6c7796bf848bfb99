package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.combination.Specification;
import drivetrain.refusal.RefusedException;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Feeds mutated catalogs, orders and torque curves to the readers. Either a text is read, and an order then writes a text that reads back as the same
 * order, or it is refused with its place; nothing else may happen, and no text may take longer than a second
 * once the first thousand have warmed the readers up.
 */
class DocumentFuzz {

    private static final int CASES = Integer.getInteger("fuzz.cases", 1_000_000);
    private static final long SEED = Long.getLong("fuzz.seed", 1L);
    private static final int MOST_MUTATIONS = 5;
    private static final long MOST_NANOSECONDS = 1_000_000_000L;
    private static final int UNTIMED = 1000;
    private static final String SIGNS = "0123456789.,:;-_{}[]()\"'#&*!|>%@`~\\/ \t\n\r\0\u0085\u2028\uFEFF\u202E\uD83D";
    private static final List<String> WORDS = List.of(
            "null", "true", "~", "NaN", ".nan", ".inf", "1e999", "-1", "9".repeat(400), "[".repeat(80), "&a ", "*a", "<<: ",
            "---\n", "...\n", "!!str ", "mm", "lb-ft", "rpm", "\u001B[31m", "name: x\n", "size: 285/75Q16", "version: 2", "  - ",
            "{", "}", "\"\\ud800\"");
    private static final String ORDER_YAML =
            """
            document: drivetrain-order
            version: 1
            title: Coast tourer
            engine: v8-6.2
            transmission: 4.03 2.36 1.53 1.15 0.85 0.67
            transfer: 1.00 2.72
            rearAxle: 41/11
            tire: 285/75R16 rollout 2510 mm
            cruise: 70 mph
            notes: quiet at speed
            """;
    private static final String ORDER_JSON =
            """
            {"document": "drivetrain-order", "version": 1, "title": "Ranch", "rearAxle": "41/9", "tire": "7.50-16", "cruise": "55 mph"}
            """;
    private static final String CATALOG_YAML =
            """
            document: drivetrain-catalog
            version: 1
            title: A shelf
            engines:
              - name: v8
                description: an engine
                aspiration: natural
                ignition: spark
                rating: net
                measuredAt: crank
                idle: 600 rpm
                maximumSpeed: 6600 rpm
                torqueCurve:
                  - {speed: 1000 rpm, torque: 318 lb-ft}
                  - {speed: 4400 rpm, torque: 461 lb-ft}
                  - {speed: 6600 rpm, torque: 330 lb-ft}
            transmissions:
              - {name: box, description: a box, gears: [4.03, 2.36, "41/27"], reverse: 3.06, coupling: converter, converter: {stallTorqueRatio: 2.0, lockUp: true}}
            axles:
              - {name: rp, description: a set, ratio: 41/11}
            tires:
              - {name: at, description: a tire, size: "LT265/75R16 123/120R", revolutions: 655 rev/mile}
            vehicles:
              - {name: wagon, description: a wagon, mass: 2240 kg, rearWheels: single, speedometer: {drive: wheels, calibratedCircumference: 2400 mm}}
            """;
    private static final String CATALOG_JSON =
            """
            {"document": "drivetrain-catalog", "version": 1, "title": "A shelf",
             "transferCases": [{"name": "pt", "description": "a case", "high": 1.00, "low": "2.72", "drive": "part-time"}],
             "hubReductions": [{"name": "portal", "description": "a hub", "ratio": "24/16"}]}
            """;
    private static final String CURVE = "speed rpm,torque lb-ft\n1000,318\n4400,461\n6600,330\n";

    private final Random random = new Random(SEED);
    private int number;
    private int read;
    private int refused;

    @Test
    void readsOrRefusesWithAPlaceWhateverAFileHolds() {
        for (number = 0; number < CASES; number++) {
            switch (number % 5) {
                case 0 -> check(mutated(ORDER_YAML), text -> order(text, DocumentFormat.YAML));
                case 1 -> check(mutated(ORDER_JSON), text -> order(text, DocumentFormat.JSON));
                case 2 -> check(mutated(CATALOG_YAML), text -> CatalogDocument.parse("f", text, DocumentFormat.YAML));
                case 3 -> check(mutated(CATALOG_JSON), text -> CatalogDocument.parse("f", text, DocumentFormat.JSON));
                default -> check(mutated(CURVE), text -> TorqueCurveCsv.parse("f", text));
            }
        }
        System.out.println(
                "document fuzz: seed " + SEED + ", " + CASES + " texts, " + read + " read, " + refused + " refused");
        assertThat(read).as("texts read").isPositive();
        assertThat(refused).as("texts refused").isPositive();
    }

    private interface Reader {
        void read(String text);
    }

    private static void order(String text, DocumentFormat format) {
        Specification order = OrderDocument.parse("f", text, format);
        String written = OrderDocument.text(order, format);
        Specification again = OrderDocument.parse("written", written, format);
        if (!again.equals(order) || !OrderDocument.text(again, format).equals(written)) {
            throw new IllegalStateException("reads back otherwise from " + written);
        }
    }

    private void check(String text, Reader reader) {
        long start = System.nanoTime();
        try {
            reader.read(text);
            read++;
        } catch (RefusedException e) {
            refused++;
            if (e.refusal().place().isEmpty()) {
                throw new AssertionError(where(text) + " is refused without a place: " + e.refusal(), e);
            }
        } catch (RuntimeException e) {
            throw new AssertionError(where(text), e);
        }
        long taken = System.nanoTime() - start;
        if (number >= UNTIMED && taken > MOST_NANOSECONDS) {
            throw new AssertionError(where(text) + " took " + taken / 1_000_000 + " ms");
        }
    }

    private String where(String text) {
        return "seed " + SEED + ", case " + number + ", text <<" + text + ">>";
    }

    private String mutated(String sample) {
        StringBuilder text = new StringBuilder(sample);
        for (int i = random.nextInt(MOST_MUTATIONS + 1); i > 0; i--) {
            mutate(text);
        }
        return text.toString();
    }

    private void mutate(StringBuilder text) {
        int at = random.nextInt(text.length() + 1);
        switch (random.nextInt(5)) {
            case 0 -> text.insert(at, SIGNS.charAt(random.nextInt(SIGNS.length())));
            case 1 -> text.insert(at, WORDS.get(random.nextInt(WORDS.size())));
            case 2 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(8)));
            case 3 -> text.insert(at, text.substring(at, Math.min(text.length(), at + random.nextInt(40))));
            default -> {
                if (at < text.length()) {
                    text.setCharAt(at, SIGNS.charAt(random.nextInt(SIGNS.length())));
                }
            }
        }
    }
}
