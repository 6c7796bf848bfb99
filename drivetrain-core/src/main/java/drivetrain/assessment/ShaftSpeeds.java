package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.Part;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.finding.Outcome;
import drivetrain.gearing.AxleRatio;
import drivetrain.gearing.HubReduction;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Speed;
import drivetrain.tire.RollingCircumference;
import drivetrain.tire.ServiceDescription;
import drivetrain.tire.SpeedSymbol;
import drivetrain.tire.Tire;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How fast a driveshaft turns: by the wheels of its axle, whichever gear is in. */
final class ShaftSpeeds {

    private ShaftSpeeds() {}

    /** A road speed at which a shaft is judged, why, and whether it is driven for long. */
    record Judged(String when, Speed road, boolean held) {}

    /** How far the tires of an axle roll in a turn. */
    static Outcome<RollingCircumference> rolling(Combination combination, ShaftPlace place) {
        Outcome<Tire> tire = place == ShaftPlace.FRONT
                ? Outcome.of(combination.frontTire().map(Part::item), "no tire is chosen")
                : combination.needTire();
        return tire.then(Tire::rolling);
    }

    /** The turns of a shaft for one turn of a wheel. */
    static Outcome<Double> shaftRatio(Combination combination, ShaftPlace place) {
        boolean front = place == ShaftPlace.FRONT;
        Outcome<AxleRatio> axle = front
                ? Outcome.of(combination.frontAxle().map(Part::item), "no front axle is chosen")
                : Outcome.of(combination.rearAxle().map(Part::item), "no rear axle is chosen");
        double hub = combination
                .hubs()
                .map(Part::item)
                .orElseGet(HubReduction::none)
                .ratio()
                .value();
        return axle.map(chosen -> chosen.ratio().value() * hub);
    }

    /** The speed of a shaft at a road speed. */
    static Outcome<AngularSpeed> at(Combination combination, ShaftPlace place, Speed road) {
        return rolling(combination, place)
                .then(rolling -> shaftRatio(combination, place)
                        .map(ratio -> AngularSpeed.ofRadiansPerSecond(
                                road.toMetersPerSecond() / rolling.radius().toMeters() * ratio)));
    }

    /**
     * The road speeds at which shafts are judged: the order's cruise, and the fastest that gearing and tires allow. What power allows is not among them: a vehicle may
     * reach less.
     */
    static List<Judged> judged(Combination combination) {
        List<Judged> speeds = new ArrayList<>();
        combination.cruise().ifPresent(cruise -> speeds.add(new Judged("at cruise", cruise, true)));
        top(combination).ifPresent(top -> speeds.add(new Judged("at top speed", top, false)));
        return speeds;
    }

    private static Optional<Speed> top(Combination combination) {
        Optional<Speed> gearing = RoadSpeedsAnswer.atMaximum(combination)
                .value()
                .map(answer -> answer.rows().get(answer.rows().size() - 1).roadSpeed());
        Optional<Speed> tire = combination
                .tire()
                .flatMap(part -> part.item().designation().service())
                .map(ServiceDescription::speed)
                .map(SpeedSymbol::speed);
        if (gearing.isEmpty() || tire.isEmpty()) {
            return gearing.or(() -> tire);
        }
        return Optional.of(gearing.get().isLessThan(tire.get()) ? gearing.get() : tire.get());
    }
}
