package drivetrain.quantity;

import drivetrain.refusal.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * An immutable amount of one kind, held as one finite number in the SI unit.
 *
 * <p>Two quantities are equal when they are of one kind and their SI numbers are equal. {@link #toString()} prints the
 * number in full and {@link Kind#parse} reads exactly that number back.
 *
 * @param <Q> the kind itself
 */
public abstract sealed class Quantity<Q extends Quantity<Q>> implements Comparable<Q> permits Magnitude, Temperature {

    private final double si;

    Quantity(String kindName, double si) {
        if (!Double.isFinite(si)) {
            throw Refusal.of(kindName, Double.toString(si), "is not a finite number")
                    .allowing("a finite number")
                    .asException();
        }
        this.si = si + 0.0;
    }

    /**
     * Returns the kind of quantity: its name and its units.
     *
     * @return the kind
     */
    public abstract Kind<Q> kind();

    /**
     * Returns the number in the SI unit of the kind.
     *
     * @return a finite number
     */
    public final double si() {
        return si;
    }

    /**
     * Returns the number in a unit.
     *
     * @param unit the unit
     * @return the number; infinite where the quantity is so great that the number in a smaller unit leaves the range of {@code double}
     */
    public final double in(Unit<Q> unit) {
        return unit.fromSi(si);
    }

    /**
     * Prints the quantity in a unit with a fixed count of decimals, independent of the locale.
     *
     * @param unit the unit
     * @param decimals the count of decimals, 0 to 15
     * @return the number, a space and the symbol
     * @throws IllegalArgumentException if the number in that unit is not finite or the count is out of range
     */
    public final String format(Unit<Q> unit, int decimals) {
        return DecimalText.fixed(in(unit), decimals) + " " + unit.symbol();
    }

    /**
     * Compares the SI numbers.
     *
     * @param other another quantity of the kind
     * @return a negative number, zero or a positive number
     */
    @Override
    public final int compareTo(Q other) {
        return Double.compare(si, other.si());
    }

    /**
     * Tells whether this quantity is the greater one.
     *
     * @param other another quantity of the kind
     * @return true if greater, false if equal or smaller
     */
    public final boolean isGreaterThan(Q other) {
        return compareTo(other) > 0;
    }

    /**
     * Tells whether this quantity is the smaller one.
     *
     * @param other another quantity of the kind
     * @return true if smaller, false if equal or greater
     */
    public final boolean isLessThan(Q other) {
        return compareTo(other) < 0;
    }

    /**
     * Tells whether the other object is a quantity of the same kind with the same SI number.
     *
     * @param other any object
     * @return true if equal
     */
    @Override
    public final boolean equals(@Nullable Object other) {
        return other instanceof Quantity<?> that && that.getClass() == getClass() && that.si == si;
    }

    /**
     * Returns a hash of the kind and the SI number.
     *
     * @return the hash
     */
    @Override
    public final int hashCode() {
        return 31 * kind().name().hashCode() + Double.hashCode(si);
    }

    /**
     * Prints the number in full in the SI unit.
     *
     * @return the number, a space and the symbol; read back exactly by {@link Kind#parse}
     */
    @Override
    public final String toString() {
        return si + " " + kind().siUnit().symbol();
    }
}
