package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.driveshaft.ShaftSpeed;
import drivetrain.engine.Engine;
import drivetrain.finding.Outcome;
import drivetrain.gearing.DriveGear;
import drivetrain.gearing.GearTrain;
import drivetrain.gearing.Range;
import drivetrain.quantity.AngularSpeed;
import drivetrain.tire.ServiceDescription;
import drivetrain.tire.Tire;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The speeds that a driveshaft reaches: at the engine's maximum speed in each gear, at the speed of the tire's symbol, at cruise. */
final class ReachedShaftSpeeds {

    private ReachedShaftSpeeds() {}

    /** The speed of the driveshafts in each forward gear at the engine's maximum speed, the highest last. */
    static Outcome<List<ShaftSpeed>> atMaximum(Combination combination) {
        return combination
                .gearTrain()
                .then(train ->
                        combination.needEngine().map(Engine::maximumSpeed).map(maximum -> atMaximum(train, maximum)));
    }

    private static List<ShaftSpeed> atMaximum(GearTrain train, AngularSpeed maximum) {
        List<ShaftSpeed> speeds = new ArrayList<>();
        for (DriveGear gear : train.gears()) {
            if (!gear.reverse() && gear.range() == Range.HIGH) {
                speeds.add(ShaftSpeed.reached(
                        "engine at its maximum in " + gear.label(), gear.driveshaftSpeedAt(maximum)));
            }
        }
        speeds.sort(Comparator.comparing(ShaftSpeed::speed));
        return speeds;
    }

    /** The greatest of them. */
    static Outcome<ShaftSpeed> greatest(Combination combination) {
        return atMaximum(combination).map(speeds -> speeds.get(speeds.size() - 1));
    }

    /** The speed of the driveshafts at the speed of the tire's symbol. */
    static Outcome<ShaftSpeed> atTireSymbol(Combination combination) {
        return combination
                .needTire()
                .then(tire ->
                        Outcome.of(tire.designation().service(), "the tire " + tire.name() + " has no speed symbol"))
                .then(service -> atTireSymbol(combination, service));
    }

    private static Outcome<ShaftSpeed> atTireSymbol(Combination combination, ServiceDescription service) {
        return combination
                .needTire()
                .then(Tire::rolling)
                .then(rolling -> combination.gearTrain().map(train -> {
                    DriveGear gear = train.gears().get(0);
                    AngularSpeed engine = gear.engineSpeedAt(service.speed().speed(), rolling.radius());
                    return ShaftSpeed.reached(
                            "at the tire's speed symbol " + service.speed(), gear.driveshaftSpeedAt(engine));
                }));
    }

    /** The speed of the driveshafts at the order's cruise speed; it does not depend on the gear. */
    static Optional<ShaftSpeed> atCruise(Combination combination) {
        return combination
                .cruise()
                .flatMap(speed ->
                        CruiseAnswer.at(combination, speed, GearChoice.TOP).value())
                .map(cruise -> ShaftSpeed.held("cruise", cruise.driveshaftSpeed()));
    }
}
