package drivetrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Any text at all, as every kind of quantity.
 *
 * <p>A text is either read, and then what the quantity prints reads back as an equal quantity, or it is refused with a position within
 * the text and one line that is safe to show. Nothing else is thrown, and no text takes long. The texts are made from pieces of right
 * ones, changed at random places; the count and the seed are the system properties {@code fuzz.cases} and {@code fuzz.seed}.
 */
class QuantityFuzz {

    private static final int CASES = Integer.getInteger("fuzz.cases", 1_000_000);
    private static final long SEED = Long.getLong("fuzz.seed", 811L);
    private static final int WARM_UP = 10_000;
    private static final long LONGEST_NANOSECONDS = 50_000_000L;
    private static final int TRIES_FOR_TIME = 3;

    private static final List<String> NUMBERS = List.of(
            "0",
            "-0",
            "1",
            "65",
            "31.5",
            ".5",
            "5.",
            "-273.15",
            "1e3",
            "1E-7",
            "1e308",
            "1e999",
            "1e-400",
            "4.9E-324",
            "88 7/16",
            "7/16",
            "88-7/16",
            "41/11",
            "1/0",
            "31,5",
            "1,200",
            "1.200,5",
            "NaN",
            "Infinity",
            "0x1p3",
            "\u0665",
            "\uFF11",
            "999999999999999999999");
    private static final String SIGNS =
            " \t\n\r\u0000\u0007\u001B\u007F\u0085\u00A0\u2009\u202E\u2028\uFEFF\uD800\uDC00.,-+/*'\"()eEdfxXmMkKgGlLNn019\u00B7\u00B0\u0130\u0131";

    private final Random random = new Random(SEED);
    private final List<Kind<?>> kinds = Kinds.all();
    private final List<String> words = new ArrayList<>();

    QuantityFuzz() {
        for (Kind<?> kind : kinds) {
            for (Unit<?> unit : kind.units()) {
                words.add(unit.symbol());
                words.add(unit.asciiSymbol());
                words.addAll(unit.spellings());
            }
        }
        words.addAll(List.of(
                "",
                "gal",
                "gph",
                "ton",
                "mPa",
                "Mm",
                "furlong",
                "a very long word that is no unit of anything whatever it is"));
    }

    @Test
    void everyTextIsReadOrRefused() {
        int read = 0;
        for (int i = 0; i < WARM_UP + CASES; i++) {
            Kind<?> kind = anyOf(kinds);
            String text = textFor(kind);
            boolean isRead = i < WARM_UP ? isRead(kind, text) : isReadInTime(kind, text);
            read += isRead ? 1 : 0;
        }
        System.out.printf(
                "quantity: %d texts, seed %d: %d read, %d refused%n",
                WARM_UP + CASES, SEED, read, WARM_UP + CASES - read);
        assertThat(read).as("texts that were read").isBetween(CASES / 20, CASES);
    }

    /** A pause of the machine is told from a slow text by asking again. */
    private static boolean isReadInTime(Kind<?> kind, String text) {
        for (int tries = 1; ; tries++) {
            long start = System.nanoTime();
            boolean isRead = isRead(kind, text);
            long spent = System.nanoTime() - start;
            if (spent <= LONGEST_NANOSECONDS) {
                return isRead;
            }
            assertThat(tries).as("tries, %d ns for %s as %s", spent, text, kind).isLessThan(TRIES_FOR_TIME);
        }
    }

    private static <Q extends Quantity<Q>> boolean isRead(Kind<Q> kind, String text) {
        try {
            Q quantity = kind.parse(text);
            if (!kind.parse(quantity.toString()).equals(quantity)) {
                throw new AssertionError("prints another quantity than it read: " + text + " as " + kind);
            }
            return true;
        } catch (RefusedException e) {
            requireUseful(e.refusal(), e.getMessage(), text);
            return false;
        }
    }

    private static void requireUseful(Refusal refusal, String message, String text) {
        int position = refusal.position().orElse(-1);
        boolean isSafe = message.codePoints().noneMatch(Character::isISOControl);
        boolean isWhole =
                refusal.given().equals(text) || text.startsWith(refusal.given().replaceFirst("\\.\\.\\.$", ""));
        if (position < 0 || position > text.length() || !isSafe || !isWhole) {
            throw new AssertionError("a refusal that does not help: " + message + " at " + position);
        }
    }

    private String textFor(Kind<?> kind) {
        StringBuilder text = new StringBuilder(anyOf(NUMBERS));
        if (random.nextInt(4) == 0) {
            text.setLength(0);
            text.append(Double.longBitsToDouble(random.nextLong()));
        }
        boolean isOwnUnit = random.nextInt(3) > 0;
        String unit = isOwnUnit ? anyOf(kind.units()).symbol() : anyOf(words);
        text.append(" ".repeat(random.nextInt(3))).append(unit);
        for (int changes = random.nextInt(5) - 1; changes > 0; changes--) {
            change(text);
        }
        if (random.nextInt(500) == 0) {
            text.append("9 ".repeat(random.nextInt(10_000)));
        }
        return text.toString();
    }

    private <T> T anyOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    private void change(StringBuilder text) {
        int at = random.nextInt(text.length() + 1);
        switch (random.nextInt(5)) {
            case 0 -> text.insert(at, SIGNS.charAt(random.nextInt(SIGNS.length())));
            case 1 -> text.insert(at, (char) random.nextInt(0x10000));
            case 2 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(3)));
            case 3 -> text.insert(at, text.substring(0, at));
            default -> text.insert(at, anyOf(words));
        }
    }
}
