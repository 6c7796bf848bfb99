package drivetrain.driveshaft;

import drivetrain.finding.Source;
import drivetrain.quantity.AngularSpeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The vibrations of a drivetrain at one road speed.
 *
 * <p>An order is how often a part shakes each turn: once from unbalance, twice from a bent joint, which speeds a shaft up and slows it down twice a turn. A four-stroke
 * engine of z cylinders fires z / 2 times a turn.
 */
public final class VibrationOrders {

    /** Where the orders come from. */
    public static final Source RULE = Source.handbook(
            "a vehicle maker's workshop page on frequency calculation; a trade article on orders: half the cylinder number for the engine");

    private VibrationOrders() {}

    /**
     * Lists the orders of the wheels.
     *
     * @param wheel the speed of the wheels
     * @return first to third order
     */
    public static List<VibrationOrder> ofWheels(AngularSpeed wheel) {
        return List.of(
                new VibrationOrder("tires and wheels", "unbalance, bent rim, runout", wheel, 1.0),
                new VibrationOrder("tires and wheels", "out of round, two high spots", wheel, 2.0),
                new VibrationOrder("tires and wheels", "three high spots", wheel, 3.0));
    }

    /**
     * Lists the orders of a driveshaft.
     *
     * @param part which shaft, such as {@code rear driveshaft}
     * @param shaft its speed
     * @return first, second and fourth order
     */
    public static List<VibrationOrder> ofShaft(String part, AngularSpeed shaft) {
        return List.of(
                new VibrationOrder(part, "unbalance, bent tube, worn slip", shaft, 1.0),
                new VibrationOrder(part, "joints: angle, phase, tightness", shaft, 2.0),
                new VibrationOrder(part, "joints, second harmonic", shaft, 4.0));
    }

    /**
     * Lists the orders of half-shafts that turn faster than the wheels, ahead of a hub reduction.
     *
     * @param halfShaft their speed
     * @return first and second order
     */
    public static List<VibrationOrder> ofHalfShafts(AngularSpeed halfShaft) {
        return List.of(
                new VibrationOrder("half-shafts", "unbalance, bent shaft", halfShaft, 1.0),
                new VibrationOrder("half-shafts", "joints: angle, wear", halfShaft, 2.0));
    }

    /**
     * Lists the orders of a four-stroke engine.
     *
     * @param engine its speed
     * @param cylinders the count of cylinders, 1 to 16; empty if it is not known
     * @return half, first and second order, and that of firing where the cylinders are known
     * @throws drivetrain.refusal.RefusedException if the count is out of range
     */
    public static List<VibrationOrder> ofEngine(AngularSpeed engine, OptionalInt cylinders) {
        List<VibrationOrder> orders = new ArrayList<>();
        orders.add(new VibrationOrder("engine", "one cylinder that misses", engine, 0.5));
        orders.add(new VibrationOrder("engine", "unbalance of what turns with it", engine, 1.0));
        Optional<Double> firing = firing(cylinders);
        if (firing.isPresent() && firing.get() > 2.0) {
            orders.add(new VibrationOrder("engine", "pistons and connecting rods", engine, 2.0));
        }
        firing.ifPresent(order -> orders.add(new VibrationOrder("engine", "firing", engine, order)));
        return orders;
    }

    private static Optional<Double> firing(OptionalInt cylinders) {
        if (cylinders.isEmpty()) {
            return Optional.empty();
        }
        int count = cylinders.getAsInt();
        if (count < 1 || count > 16) {
            throw drivetrain.refusal.Refusal.of("cylinders", Integer.toString(count), "is out of range")
                    .allowing("1 to 16")
                    .asException();
        }
        return Optional.of(count / 2.0);
    }
}
