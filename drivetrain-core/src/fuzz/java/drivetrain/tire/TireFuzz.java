package drivetrain.tire;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * Feeds mutated tire sizes and tire descriptions to the parsers. Either a text is read, and then its canonical text reads back as an equal value, or it is
 * refused with a place inside the text and with suggestions that can be read; nothing else may happen.
 */
class TireFuzz {

    private static final int CASES = Integer.getInteger("fuzz.cases", 1_000_000);
    private static final long SEED = Long.getLong("fuzz.seed", 1L);
    private static final int MOST_MUTATIONS = 4;

    private static final List<String> SIZES = List.of(
            "265/75R16",
            "LT265/75R16 123/120R",
            "P265/70R17 113S",
            "ST205/75D15",
            "285/35ZR19 (99Y) XL",
            "205R16C 104S",
            "35x12.50R17LT 121Q load range E",
            "38.5x14.50-16.5 LRD",
            "33x12.50B15",
            "7.50-16 8PR",
            "6.50R16C 108/107N",
            "12.00-16.5 144A3",
            "205/60R15 95V extra load");
    private static final List<String> MEASURED = List.of(
            "285/75R16 122/119Q rollout 2510 mm",
            "285/75R16 revs 632/mile",
            "285/75R16 revs 393 rev/km diameter 32.8 in",
            "7.50-16 diameter 31.7 in rollout 2.41 m",
            "LT265/75R16 123/120R LRE roll-out 96.5 in revolutions 656 rev/mile");
    private static final String SIGNS =
            "0123456789./-xXRrZBDPLTCSQHYVWAE() \t,+\"'\u00D7\u2033\u00A0\u0130\u017F\0\uD83D";
    private static final List<String> WORDS = List.of(
            "LT",
            "ZR",
            "XL",
            "SL",
            "LRE",
            "10PR",
            " load range C",
            "rollout",
            " rollout 2500 mm",
            " revs 640/mile",
            " diameter 800 mm",
            " mm",
            " in",
            "1e9",
            "-1",
            "NaN",
            "99999999999",
            "116T",
            "/120",
            "(",
            ")",
            "R16",
            "x12.50");

    private final Random random = new Random(SEED);
    private int number;
    private int read;
    private int refused;

    @Test
    void readsBackOrRefusesWithAPlaceWhateverIsTyped() {
        for (number = 0; number < CASES; number++) {
            if (number % 2 == 0) {
                check(mutated(SIZES), TireDesignation::parse, TireDesignation::text);
            } else {
                check(mutated(random.nextBoolean() ? MEASURED : SIZES), Tire::parse, Tire::text);
            }
        }
        System.out.println(
                "tire fuzz: seed " + SEED + ", " + CASES + " texts, " + read + " read, " + refused + " refused");
        assertThat(read).as("texts read").isPositive();
        assertThat(refused).as("texts refused").isPositive();
    }

    private <T> void check(String text, Function<String, T> parse, Function<T, String> print) {
        T value;
        try {
            value = parse.apply(text);
        } catch (RefusedException e) {
            refused++;
            requirePlace(text, e.refusal());
            return;
        } catch (RuntimeException e) {
            throw new AssertionError(where() + ", text \"" + text + "\"", e);
        }
        read++;
        String canonical = print.apply(value);
        if (!parse.apply(canonical).equals(value)
                || !print.apply(parse.apply(canonical)).equals(canonical)) {
            throw new AssertionError(
                    where() + ", text \"" + text + "\" reads back otherwise from \"" + canonical + "\"");
        }
    }

    private void requirePlace(String text, Refusal refusal) {
        int place = refusal.position().orElse(-1);
        if (place < 0 || place > refusal.given().length() || refusal.problem().isBlank()) {
            throw new AssertionError(where() + ", text \"" + text + "\" is refused without a place: " + refusal);
        }
        if (!refusal.suggestions().isEmpty() && refusal.subject().equals(DesignationParser.SUBJECT)) {
            TireDesignation.parse(sizeOf(refusal.suggestions().get(0)));
        }
    }

    private String where() {
        return "seed " + SEED + ", case " + number;
    }

    private static String sizeOf(String near) {
        return near.split("(?i)\\s(?=roll-?out|revs|revolutions|diameter)", 2)[0];
    }

    private String mutated(List<String> seeds) {
        StringBuilder text = new StringBuilder(pick(seeds));
        for (int i = random.nextInt(MOST_MUTATIONS + 1); i > 0; i--) {
            mutate(text, seeds);
        }
        return text.toString();
    }

    private void mutate(StringBuilder text, List<String> seeds) {
        int at = random.nextInt(text.length() + 1);
        switch (random.nextInt(6)) {
            case 0 -> text.insert(at, sign());
            case 1 -> text.insert(at, pick(WORDS));
            case 2 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(3)));
            case 3 -> text.replace(at, Math.min(text.length(), at + 1), String.valueOf(sign()));
            case 4 -> text.setLength(at);
            default -> text.append(random.nextBoolean() ? " " : "").append(pick(seeds));
        }
    }

    private char sign() {
        return SIGNS.charAt(random.nextInt(SIGNS.length()));
    }

    private String pick(List<String> texts) {
        return texts.get(random.nextInt(texts.size()));
    }
}
