package drivetrain.quantity;

import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/**
 * A kind of quantity: its name, its units, and how it is read.
 *
 * <p>Text is a number, an optional space, and a unit: {@code 2.875 in}, {@code 410hp}, {@code 65 mph}. The number has a decimal point; a
 * comma is refused. Inches and feet are also read in fractions: {@code 88 7/16 in}. The unit is looked up first as written, then without
 * regard to case unless two units would then be alike (such a unit must be written exactly). A unit that the trade uses for two different
 * things is refused with both of them named, and a unit of another kind with the kind that it measures.
 *
 * @param <Q> the kind of quantity
 */
public final class Kind<Q extends Quantity<Q>> {

    private static final int LONGEST_TEXT = 80;

    private final String name;
    private final DoubleFunction<Q> maker;
    private final List<Unit<Q>> units;
    private final UnitWords<Q> words;

    private Kind(String name, DoubleFunction<Q> maker, Map<String, String> ambiguous, List<Unit<Q>> units) {
        this.name = name;
        this.maker = maker;
        this.units = units;
        this.words = new UnitWords<>(units, ambiguous);
    }

    /** Makes a kind; the first unit is the SI unit; {@code ambiguous} maps a refused unit to the ones that may be meant. */
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
     * Lists the units for a refusal or a help text.
     *
     * @return the symbols, separated by commas
     */
    public String allowed() {
        return units.stream().map(Unit::symbol).collect(Collectors.joining(", "));
    }

    /**
     * Makes a quantity.
     *
     * @param number the number
     * @param unit its unit
     * @return the quantity
     * @throws RefusedException if the number is not finite or impossible for the kind
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
        return words.find(text);
    }

    /**
     * Reads a number with its unit.
     *
     * @param text the text, such as {@code 2.875 in}
     * @return the quantity
     * @throws RefusedException if the text is not a number with a known unit, with the index of the fault
     */
    public Q parse(CharSequence text) {
        String given = text.toString();
        if (given.length() > LONGEST_TEXT) {
            throw refusal(given.substring(0, LONGEST_TEXT) + "...", "is too long", LONGEST_TEXT);
        }
        int start = UnitWords.skipBlanks(given, 0);
        Numeral numeral =
                Numeral.at(start, given).orElseThrow(() -> refusal(given, "does not start with a number", start));
        int unitStart = UnitWords.skipBlanks(given, numeral.end());
        requireUnitAt(unitStart, numeral, given);
        String word = given.substring(unitStart).strip();
        Unit<Q> unit = unit(word).orElseThrow(() -> unknownUnit(given, word, unitStart));
        fault(numeral, unit).ifPresent(problem -> {
            throw refusal(given, problem, start);
        });
        try {
            return of(numeral.value(), unit);
        } catch (RefusedException impossible) {
            Refusal why = impossible.refusal();
            throw Refusal.of(name, given, why.problem())
                    .allowing(why.allowed())
                    .at(start)
                    .asException();
        }
    }

    private void requireUnitAt(int index, Numeral numeral, String given) {
        if (given.substring(index).isBlank()) {
            throw refusal(given, "has no unit", numeral.end());
        }
        if (given.charAt(index) == ',') {
            String problem = "has a comma; write the decimals after a point and no separator between thousands";
            throw refusal(given, problem, index);
        }
    }

    private static Optional<String> fault(Numeral numeral, Unit<?> unit) {
        double si = unit.toSi(numeral.value());
        if (numeral.form() != Numeral.Form.DECIMAL && !unit.isReadInFractions()) {
            return Optional.of("is a fraction, which is read in inches and feet only");
        }
        if (numeral.form() == Numeral.Form.OTHER_FRACTION) {
            return Optional.of("has a fraction that no tape shows: halves to sixty-fourths, less than one");
        }
        if (!Double.isFinite(si)) {
            return Optional.of("is too large a number");
        }
        if (si == 0.0 && unit.isZeroAtZero() && !numeral.isZeroAsTyped()) {
            return Optional.of("is too small a number");
        }
        return Optional.empty();
    }

    private RefusedException unknownUnit(String given, String word, int position) {
        if (word.charAt(0) >= '0' && word.charAt(0) <= '9') {
            return refusal(given, "has a second number; write no separator between thousands", position);
        }
        Optional<String> meant = words.meantBy(word);
        String problem = "\"" + word + "\" " + (meant.isPresent() ? "can mean more than one unit" : notAUnit(word));
        return Refusal.of(name, given, problem)
                .allowing(meant.orElseGet(this::allowed))
                .at(position)
                .suggesting(words.near(word))
                .asException();
    }

    private String notAUnit(String word) {
        return Kinds.measuredIn(word)
                .map(other -> "is a unit of " + other.name() + ", not of " + name)
                .orElse("is not a unit of " + name);
    }

    private RefusedException refusal(String given, String problem, int position) {
        return Refusal.of(name, given, problem)
                .allowing("a number with its unit, " + allowed())
                .at(position)
                .asException();
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
