package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.driveshaft.ShaftHouse;
import drivetrain.driveshaft.Suspect;
import drivetrain.driveshaft.VibrationOrder;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Frequency;
import drivetrain.quantity.Speed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Which part makes a vibration that was measured.
 *
 * @param measured the measured frequency
 * @param tolerance how far off, as a fraction, a part may be and still fits
 * @param orders every vibration at that road speed
 * @param suspects those that fit, the nearest first
 * @param assumptions what the vibrations and the tolerance rest on
 */
public record SuspectAnswer(
        Frequency measured, double tolerance, OrdersAnswer orders, List<Suspect> suspects, List<Assumption> assumptions)
        implements Answer {

    /** Copies the lists. */
    public SuspectAnswer {
        suspects = List.copyOf(suspects);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @param measured the measured frequency, greater than zero
     * @param speed the road speed at which it was measured, greater than zero
     * @param choice the gear
     * @param cylinders the count of cylinders, 1 to 16; empty leaves the firing of the engine out
     * @param tolerance how far off, as a fraction up to 0.5, a part may be and still fits; empty takes the usual one
     * @return the answer, or what is missing
     * @throws drivetrain.refusal.RefusedException if an input is out of range
     */
    public static Outcome<SuspectAnswer> of(
            Combination combination,
            Frequency measured,
            Speed speed,
            GearChoice choice,
            OptionalInt cylinders,
            OptionalDouble tolerance) {
        return OrdersAnswer.at(combination, speed, choice, cylinders)
                .map(orders ->
                        answer(measured, orders, tolerance, combination.limits().driveshafts()));
    }

    private static SuspectAnswer answer(
            Frequency measured, OrdersAnswer orders, OptionalDouble tolerance, ShaftHouse house) {
        double within = tolerance.orElseGet(() -> Suspect.usualTolerance(house));
        List<Assumption> assumptions = new ArrayList<>(orders.assumptions());
        if (tolerance.isEmpty()) {
            assumptions.add(Suspect.usualToleranceTaken(house));
        }
        return new SuspectAnswer(measured, within, orders, Suspect.of(measured, within, orders.orders()), assumptions);
    }

    /**
     * Returns the vibration that comes nearest, whether it fits or not.
     *
     * @return the nearest one
     */
    public Suspect nearest() {
        return orders.orders().stream()
                .map(order -> new Suspect(order, order.frequency().ratioTo(measured) - 1.0))
                .min(Comparator.comparingDouble(suspect -> Math.abs(suspect.mismatch())))
                .orElseThrow();
    }

    /**
     * Tells whether parts that follow the road and parts that follow the engine both fit, so that another gear tells them apart.
     *
     * @return true if both kinds are among the suspects
     */
    public boolean needsAnotherGear() {
        long engine =
                suspects.stream().filter(suspect -> isEngine(suspect.order())).count();
        return engine > 0 && engine < suspects.size();
    }

    private static boolean isEngine(VibrationOrder order) {
        return order.part().equals("engine");
    }

    @Override
    public List<Finding> findings() {
        return List.of();
    }

    @Override
    public List<Caution> cautions() {
        return orders.cautions();
    }

    @Override
    public Working working() {
        return Working.of("what shakes at " + measured.format(Frequency.HERTZ, 1))
                .input("measured frequency", "f_m", Figure.of(measured, Display.FREQUENCY), "asked")
                .input("tolerance", "e", Figure.percent(tolerance, 1), "asked, or the usual one")
                .from(orders.working())
                .step(
                        "off by, " + nearest().order().part(),
                        "f / f_m - 1, fits within e",
                        Figure.percent(nearest().mismatch(), 1))
                .build();
    }
}
