package drivetrain.driveshaft;

import drivetrain.finding.Assumption;
import drivetrain.finding.HouseLimit;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Frequency;
import drivetrain.refusal.Refusal;
import java.util.Comparator;
import java.util.List;

/**
 * A vibration that fits a frequency which was measured.
 *
 * @param order the vibration
 * @param mismatch its frequency over the measured one, less 1
 */
public record Suspect(VibrationOrder order, double mismatch) {

    /**
     * Returns how far a vibration may be off and still fits, unless the user says otherwise.
     *
     * @param house the limits of the shop
     * @return a fraction
     */
    public static double usualTolerance(ShaftHouse house) {
        return house.number(ShaftHouse.Rule.ORDER_TOLERANCE);
    }

    /**
     * States that the usual tolerance was taken.
     *
     * @param house the limits of the shop
     * @return the assumption
     */
    public static Assumption usualToleranceTaken(ShaftHouse house) {
        HouseLimit limit = house.of(ShaftHouse.Rule.ORDER_TOLERANCE);
        return Assumption.of(
                "tolerance",
                "a vibration fits if its frequency is within " + DecimalText.significant(100.0 * limit.value(), 3)
                        + " % of the measured one; within, behind the speed, sets another",
                limit.source());
    }

    /**
     * Finds the vibrations that fit.
     *
     * @param measured the measured frequency, greater than zero
     * @param tolerance how far off, as a fraction, one may be and still fits: the errors of meter, speedometer and rolling circumference together; more than 0, up to
     *     0.5
     * @param orders the vibrations of the drivetrain at that speed
     * @return the ones that fit, the nearest first
     * @throws drivetrain.refusal.RefusedException if frequency or tolerance are out of range
     */
    public static List<Suspect> of(Frequency measured, double tolerance, List<VibrationOrder> orders) {
        Frequency given = measured.requirePositive("measured frequency");
        if (!(tolerance > 0.0 && tolerance <= 0.5)) {
            throw Refusal.of("tolerance", Double.toString(tolerance), "is out of range")
                    .allowing("more than 0, up to 0.5")
                    .asException();
        }
        return orders.stream()
                .map(order -> new Suspect(order, order.frequency().ratioTo(given) - 1.0))
                .filter(suspect -> Math.abs(suspect.mismatch()) <= tolerance)
                .sorted(Comparator.comparingDouble(suspect -> Math.abs(suspect.mismatch())))
                .toList();
    }
}
