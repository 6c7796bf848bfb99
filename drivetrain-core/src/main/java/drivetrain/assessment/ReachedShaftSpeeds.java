package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.driveshaft.ShaftSpeed;
import drivetrain.engine.Engine;
import drivetrain.finding.Outcome;
import drivetrain.gearing.DriveGear;
import drivetrain.gearing.GearTrain;
import drivetrain.gearing.Range;
import drivetrain.quantity.AngularSpeed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The speeds that the driveshafts reach at the engine's maximum speed in each gear, whatever the wheels. */
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
}
