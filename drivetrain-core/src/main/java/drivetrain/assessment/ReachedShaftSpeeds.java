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

/** The speeds that the driveshafts reach: at the engine's maximum speed in each gear, at the speed of the tire's symbol, at cruise. */
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
                            "tire at its speed symbol " + service.speed(), gear.driveshaftSpeedAt(engine));
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

    /** The speed of the driveshafts at the top speed that power and gearing allow. */
    static Outcome<ShaftSpeed> atTop(Combination combination) {
        return TopAnswer.of(combination)
                .then(top -> top.fastest()
                        .driveshaftSpeed()
                        .map(speed -> ShaftSpeed.reached(
                                "top speed by power and gearing in "
                                        + top.fastest().gear().label(),
                                speed)));
    }

    /**
     * The speed against which a shaft is judged: the top speed that the vehicle can really reach where that is known, else the end of its gearing; but not more than its tires
     * may turn.
     */
    static Outcome<ShaftSpeed> judged(Combination combination) {
        Optional<ShaftSpeed> fastest =
                atTop(combination).value().or(() -> greatest(combination).value());
        Optional<ShaftSpeed> tire = atTireSymbol(combination).value();
        boolean tireFirst = fastest.isPresent()
                && tire.isPresent()
                && tire.get().speed().isLessThan(fastest.get().speed());
        return Outcome.of(
                tireFirst ? tire : fastest.or(() -> tire),
                "neither the engine with its gears nor a tire with its speed symbol tells how fast it can turn");
    }
}
