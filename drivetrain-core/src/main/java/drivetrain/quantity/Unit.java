package drivetrain.quantity;

import java.util.List;

/**
 * A unit of one kind of quantity: its symbol, the spellings it is read by, and its exact relation to the SI unit,
 * {@code SI value = (number + shift) x factor}.
 *
 * @param <Q> the kind of quantity that it measures
 */
public final class Unit<Q extends Quantity<Q>> {

    private final String symbol;
    private final String ascii;
    private final double factor;
    private final double shift;
    private final boolean fractions;
    private final List<String> spellings;

    private Unit(String symbol, String ascii, double factor, double shift, boolean fractions, List<String> spellings) {
        this.symbol = symbol;
        this.ascii = ascii;
        this.factor = factor;
        this.shift = shift;
        this.fractions = fractions;
        this.spellings = spellings;
    }

    /** Makes a unit that is a plain multiple of the SI unit and whose symbol is ASCII. */
    static <Q extends Quantity<Q>> Unit<Q> of(String symbol, double factor, String... spellings) {
        return new Unit<>(symbol, symbol, factor, 0.0, false, List.of(spellings));
    }

    /** Makes a unit in which tape measures show fractions. */
    static <Q extends Quantity<Q>> Unit<Q> onTape(String symbol, double factor, String... spellings) {
        return new Unit<>(symbol, symbol, factor, 0.0, true, List.of(spellings));
    }

    /** Makes a unit whose symbol needs a sign outside ASCII. */
    static <Q extends Quantity<Q>> Unit<Q> signed(String symbol, String ascii, double factor, String... spellings) {
        return new Unit<>(symbol, ascii, factor, 0.0, false, List.of(spellings));
    }

    /** Makes a unit with a zero of its own, which lies {@code shift} of the unit above the zero of the SI unit. */
    static <Q extends Quantity<Q>> Unit<Q> shifted(String symbol, double factor, double shift, String... spellings) {
        return new Unit<>(symbol, symbol, factor, shift, false, List.of(spellings));
    }

    /**
     * Returns the symbol, such as {@code N·m}.
     *
     * @return the symbol
     */
    public String symbol() {
        return symbol;
    }

    /**
     * Returns the symbol in ASCII, such as {@code Nm}, which is read back as the same unit.
     *
     * @return the symbol for screens that cannot show the other one
     */
    public String asciiSymbol() {
        return ascii;
    }

    List<String> spellings() {
        return spellings;
    }

    boolean isReadInFractions() {
        return fractions;
    }

    boolean isZeroAtZero() {
        return shift == 0.0;
    }

    double toSi(double number) {
        return (number + shift) * factor;
    }

    double fromSi(double si) {
        return si / factor - shift;
    }

    /**
     * Returns the symbol.
     *
     * @return the symbol
     */
    @Override
    public String toString() {
        return symbol;
    }
}
