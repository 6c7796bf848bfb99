package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.driveshaft.ShaftSpeedCautions;
import drivetrain.driveshaft.VibrationOrder;
import drivetrain.driveshaft.VibrationOrders;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.gearing.DriveGear;
import drivetrain.gearing.GearTrain;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Speed;
import drivetrain.tire.RollingCircumference;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * How often each turning part shakes at a road speed.
 *
 * @param speed the road speed
 * @param gear the gear
 * @param engineSpeed the engine speed with clutch or converter locked
 * @param cylinders the count of cylinders, if it is known
 * @param orders the vibrations, part by part from the wheels to the engine
 * @param rolling the rolling circumference that they rest on
 * @param assumptions what the rolling circumference, the axle ratio and the state of the converter rest on
 */
public record OrdersAnswer(
        Speed speed,
        DriveGear gear,
        AngularSpeed engineSpeed,
        OptionalInt cylinders,
        List<VibrationOrder> orders,
        RollingCircumference rolling,
        List<Assumption> assumptions)
        implements Answer {

    /** Copies the lists. */
    public OrdersAnswer {
        orders = List.copyOf(orders);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @param speed the road speed, greater than zero
     * @param choice the gear
     * @param cylinders the count of cylinders, 1 to 16; empty leaves the firing of the engine out
     * @return the answer, or what is missing
     * @throws drivetrain.refusal.RefusedException if the road speed is not greater than zero or the count is out of range
     */
    public static Outcome<OrdersAnswer> at(
            Combination combination, Speed speed, GearChoice choice, OptionalInt cylinders) {
        speed.requirePositive("road speed");
        return Rolling.of(combination)
                .then(rolling -> combination
                        .gearTrain()
                        .then(train -> choice.in(train).map(gear -> answer(speed, train, gear, cylinders, rolling))));
    }

    private static OrdersAnswer answer(
            Speed speed, GearTrain train, DriveGear gear, OptionalInt cylinders, RollingCircumference rolling) {
        AngularSpeed engine = gear.engineSpeedAt(speed, rolling.radius());
        AngularSpeed wheel = engine.dividedBy(gear.totalRatio());
        List<VibrationOrder> orders = new ArrayList<>(VibrationOrders.ofWheels(wheel));
        if (train.hubs().isFitted()) {
            orders.addAll(VibrationOrders.ofHalfShafts(
                    wheel.times(train.hubs().ratio().value())));
        }
        orders.addAll(VibrationOrders.ofShaft("driveshafts", gear.driveshaftSpeedAt(engine)));
        orders.addAll(VibrationOrders.ofEngine(engine, cylinders));
        return new OrdersAnswer(speed, gear, engine, cylinders, orders, rolling, SpeedGround.of(rolling, train));
    }

    @Override
    public List<Finding> findings() {
        return List.of();
    }

    @Override
    public List<Caution> cautions() {
        return ShaftSpeedCautions.roadTest();
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of(
                        "vibrations at " + speed.format(Speed.MILE_PER_HOUR, 1) + " in " + gear.label())
                .from(rolling.working())
                .from(gear.engineSpeedWorking(speed, rolling.radius()))
                .from(gear.driveshaftSpeedWorking(engineSpeed));
        for (VibrationOrder order : orders) {
            working.step(
                    order.part() + ": " + order.cause(),
                    "f = " + DecimalText.shortest(order.order()) + " x turns a second of the " + order.part(),
                    Figure.of(order.frequency(), Display.FREQUENCY));
        }
        return working.source(VibrationOrders.RULE).build();
    }
}
