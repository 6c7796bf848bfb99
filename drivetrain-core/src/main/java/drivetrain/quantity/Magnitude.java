package drivetrain.quantity;

import drivetrain.refusal.Refusal;

/**
 * A quantity with a true zero, which can be added and scaled.
 *
 * @param <Q> the kind itself
 */
public abstract sealed class Magnitude<Q extends Magnitude<Q>> extends Quantity<Q>
        permits Angle,
                AngularAcceleration,
                AngularSpeed,
                Area,
                CapacityFactor,
                Current,
                Density,
                Force,
                Frequency,
                KinematicViscosity,
                Length,
                Mass,
                MassFlow,
                MomentOfInertia,
                Power,
                Pressure,
                RevolutionsPerDistance,
                SpecificFuelConsumption,
                Speed,
                Stiffness,
                Time,
                Torque,
                Voltage,
                Volume,
                VolumeFlow {

    Magnitude(String kindName, double si) {
        super(kindName, si);
    }

    /**
     * Adds.
     *
     * @param other another quantity of the kind
     * @return the sum
     */
    public final Q plus(Q other) {
        return kind().ofSi(si() + other.si());
    }

    /**
     * Subtracts.
     *
     * @param other another quantity of the kind
     * @return the difference, which may be negative
     */
    public final Q minus(Q other) {
        return kind().ofSi(si() - other.si());
    }

    /**
     * Scales up.
     *
     * @param factor a plain number
     * @return the product
     */
    public final Q times(double factor) {
        return kind().ofSi(si() * factor);
    }

    /**
     * Scales down.
     *
     * @param divisor a plain number other than zero
     * @return the quotient
     * @throws drivetrain.refusal.RefusedException if the quotient is not finite
     */
    public final Q dividedBy(double divisor) {
        return kind().ofSi(si() / divisor);
    }

    /**
     * Returns how many times the other quantity goes into this one.
     *
     * @param other another quantity of the kind
     * @return a plain number; not finite if the other one is zero
     */
    public final double ratioTo(Q other) {
        return si() / other.si();
    }

    /**
     * Returns this quantity if it is greater than zero and refuses it otherwise.
     *
     * @param subject what the quantity is, for the refusal
     * @return this quantity
     * @throws drivetrain.refusal.RefusedException if it is zero or negative
     */
    public final Q requirePositive(String subject) {
        if (si() > 0.0) {
            return kind().ofSi(si());
        }
        throw Refusal.of(subject, toString(), "must be greater than zero")
                .allowing("more than 0 " + kind().siUnit().symbol())
                .asException();
    }

    /**
     * Returns this quantity if it lies between two others and refuses it otherwise.
     *
     * @param subject what the quantity is, for the refusal
     * @param least the least that is allowed
     * @param most the most that is allowed
     * @param unit the unit in which the refusal names the limits
     * @return this quantity
     * @throws drivetrain.refusal.RefusedException if it lies outside
     */
    public final Q requireBetween(String subject, Q least, Q most, Unit<Q> unit) {
        if (si() >= least.si() && si() <= most.si()) {
            return kind().ofSi(si());
        }
        throw Refusal.of(subject, named(si(), unit), "is out of range")
                .allowing(DecimalText.brief(least.in(unit)) + " to " + named(most.si(), unit))
                .asException();
    }

    private static <Q extends Quantity<Q>> String named(double si, Unit<Q> unit) {
        return DecimalText.brief(unit.fromSi(si)) + " " + unit.symbol();
    }
}
