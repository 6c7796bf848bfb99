package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.Vehicle;
import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Torque;
import drivetrain.road.Grade;
import drivetrain.road.Grip;
import drivetrain.road.Surface;
import drivetrain.tire.RollingCircumference;
import drivetrain.tire.Tire;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The torque at which the wheels of each axle slip, with the greatest load that the axle will carry and the peak friction of the ground.
 *
 * @param front that of the front axle, or what is missing
 * @param rear that of the rear axle, or what is missing
 * @param assumptions what they rest on
 */
record AxleSlip(Outcome<Torque> front, Outcome<Torque> rear, List<Assumption> assumptions) {

    private static final Assumption FULL_LOAD = Assumption.of(
            "axle loads",
            "each axle carries the greatest load that the vehicle states for it",
            Source.commonPractice("parts are chosen for the loaded vehicle"));

    static AxleSlip of(Combination combination, Surface surface) {
        Outcome<RollingCircumference> rear = Rolling.of(combination);
        Outcome<RollingCircumference> front = Outcome.of(
                        combination.frontTire().map(part -> part.item()), "no tire is chosen")
                .then(Tire::rolling);
        List<Assumption> assumptions = new ArrayList<>();
        assumptions.add(FULL_LOAD);
        rear.value().ifPresent(known -> assumptions.addAll(known.assumptions()));
        return new AxleSlip(
                slip(combination, "front", Vehicle::frontAxleLoad, front, surface),
                slip(combination, "rear", Vehicle::rearAxleLoad, rear, surface),
                assumptions);
    }

    private static Outcome<Torque> slip(
            Combination combination,
            String where,
            Function<Vehicle, Optional<Mass>> load,
            Outcome<RollingCircumference> rolling,
            Surface surface) {
        return combination
                .needVehicle()
                .map(load)
                .then(known -> Outcome.of(
                        known,
                        "the " + where + " axle's load is not given; type it behind the vehicle, such as " + where
                                + " 1700 kg"))
                .then(mass -> rolling.map(RollingCircumference::radius).map(radius -> torque(mass, surface, radius)));
    }

    private static Torque torque(Mass load, Surface surface, Length radius) {
        return Torque.ofNewtonMeters(
                Grip.tied(load, surface.peak(), Grade.level()).si() * radius.si());
    }

    /** The torque at which both axles slip, tied together. */
    Outcome<Torque> both() {
        return front.then(ahead -> rear.map(ahead::plus));
    }

    /** The torque at which the first axle slips behind an open center differential, which then gives the other no more. */
    Outcome<Torque> lighter() {
        return front.then(ahead -> rear.map(behind -> ahead.isLessThan(behind) ? ahead : behind));
    }
}
