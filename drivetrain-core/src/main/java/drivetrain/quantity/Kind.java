package drivetrain.quantity;

import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A kind of quantity: its name, its units, and how it is read.
 *
 * <p>Text is a number, an optional space, and a unit: {@code 2.875 in}, {@code 410hp}, {@code 65 mph}. The number has a decimal point; a comma is
 * refused. The unit is looked up first as written, then without regard to case unless two units would then be alike (such a
 * unit must be written exactly). A unit that the trade uses for two different things is refused with both of them named.
 *
 * @param <Q> the kind of quantity
 */
public final class Kind<Q extends Quantity<Q>> {

    private static final int LONGEST_TEXT = 80;
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?");

    private final String name;
    private final DoubleFunction<Q> maker;
    private final List<Unit<Q>> units;
    private final Map<String, Unit<Q>> exact = new HashMap<>();
    private final Map<String, Optional<Unit<Q>>> folded = new HashMap<>();
    private final Map<String, String> ambiguous;

    private Kind(String name, DoubleFunction<Q> maker, Map<String, String> ambiguous, List<Unit<Q>> units) {
        this.name = name;
        this.maker = maker;
        this.units = units;
        this.ambiguous = ambiguous;
        for (Unit<Q> unit : units) {
            List<String> words = new ArrayList<>(unit.spellings());
            words.add(unit.symbol());
            words.add(unit.asciiSymbol());
            for (String word : words) {
                exact.put(word, unit);
                folded.merge(
                        word.toLowerCase(Locale.ROOT),
                        Optional.of(unit),
                        (old, now) -> old.equals(now) ? now : Optional.empty());
            }
        }
    }

    /** Makes a kind; the first unit is the SI unit; {@code ambiguous} maps a refused unit to the ones that are meant. */
    static <Q extends Quantity<Q>> Kind<Q> of(
            String name, DoubleFunction<Q> maker, Map<String, String> ambiguous, List<Unit<Q>> units) {
        return new Kind<>(name, maker, ambiguous, List.copyOf(units));
    }

    /**
     * Returns the name, such as {@code torque}.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Returns the SI unit.
     *
     * @return the unit in which the kind is held
     */
    public Unit<Q> siUnit() {
        return units.get(0);
    }

    /**
     * Returns every unit.
     *
     * @return the units, the SI unit first
     */
    public List<Unit<Q>> units() {
        return units;
    }

    /**
     * Makes a quantity.
     *
     * @param number the number
     * @param unit its unit
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the number is not finite or impossible for the kind
     */
    public Q of(double number, Unit<Q> unit) {
        return maker.apply(unit.toSi(number));
    }

    Q ofSi(double si) {
        return maker.apply(si);
    }

    /**
     * Finds a unit by its symbol or another spelling.
     *
     * @param text the unit as typed
     * @return the unit, or empty if it is unknown or must be written exactly
     */
    public Optional<Unit<Q>> unit(String text) {
        String word = tidy(text);
        Unit<Q> found = exact.get(word);
        if (found != null) {
            return Optional.of(found);
        }
        return folded.getOrDefault(word.toLowerCase(Locale.ROOT), Optional.empty());
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as {@code 2.875 in}
     * @return the quantity
     * @throws drivetrain.refusal.RefusedException if the text is not a number with a known unit, with the index of the fault
     */
    public Q parse(CharSequence text) {
        String given = text.toString();
        if (given.length() > LONGEST_TEXT) {
            throw Refusal.of(name, given.substring(0, LONGEST_TEXT) + "...", "is too long")
                    .allowing("a number with its unit, " + allowed())
                    .asException();
        }
        Matcher number = NUMBER.matcher(given);
        int start = 0;
        while (start < given.length() && Character.isWhitespace(given.charAt(start))) {
            start++;
        }
        number.region(start, given.length());
        if (!number.lookingAt()) {
            throw refusal(given, "does not start with a number", start);
        }
        int end = number.end();
        if (end < given.length() && given.charAt(end) == ',') {
            throw refusal(
                    given, "has a comma; write the decimals after a point and no separator between thousands", end);
        }
        String word = given.substring(end).strip();
        if (word.isEmpty()) {
            throw refusal(given, "has no unit", given.length());
        }
        int unitStart = given.indexOf(word, end);
        Unit<Q> unit =
                unit(word).orElseThrow(() -> unknownUnit(given, word, unitStart).asException());
        double value = Double.parseDouble(number.group());
        if (!Double.isFinite(unit.toSi(value))) {
            throw refusal(given, "is too large a number", start);
        }
        return of(value, unit);
    }

    private Refusal unknownUnit(String given, String word, int position) {
        String meant = ambiguous.get(tidy(word).toLowerCase(Locale.ROOT));
        if (meant != null) {
            return Refusal.of(name, given, "\"" + word + "\" can mean two things")
                    .allowing(meant)
                    .at(position);
        }
        String problem = "\"" + word + "\" is not a unit of " + name + (foldedTwice(word) ? " in this case" : "");
        return Refusal.of(name, given, problem)
                .allowing(allowed())
                .at(position)
                .suggesting(NearNames.of(word, exact.keySet()));
    }

    private boolean foldedTwice(String word) {
        return folded.containsKey(tidy(word).toLowerCase(Locale.ROOT));
    }

    private drivetrain.refusal.RefusedException refusal(String given, String problem, int position) {
        return Refusal.of(name, given, problem)
                .allowing("a number with its unit, " + allowed())
                .at(position)
                .asException();
    }

    /**
     * Lists the units for a refusal or a help text.
     *
     * @return the symbols, separated by commas
     */
    public String allowed() {
        StringBuilder list = new StringBuilder();
        for (Unit<Q> unit : units) {
            list.append(list.length() == 0 ? "" : ", ").append(unit.symbol());
        }
        return list.toString();
    }

    private static String tidy(String text) {
        String word = text.strip().replaceAll("\\s+", " ").replaceAll("[*\u22C5\u2022\u2219]", "\u00B7");
        return word.length() > 1 && word.endsWith(".") ? word.substring(0, word.length() - 1) : word;
    }

    /**
     * Returns the name.
     *
     * @return the name
     */
    @Override
    public String toString() {
        return name;
    }
}
