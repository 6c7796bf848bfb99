package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.Part;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.driveshaft.ShaftSpeed;
import drivetrain.finding.Outcome;
import drivetrain.gearing.AxleRatio;
import drivetrain.gearing.HubReduction;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Speed;
import drivetrain.road.TopSpeed;
import drivetrain.tire.RollingCircumference;
import drivetrain.tire.ServiceDescription;
import drivetrain.tire.Tire;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How fast a driveshaft turns: by the wheels of its axle, whichever gear is in. */
final class ShaftSpeeds {

    private ShaftSpeeds() {}

    /** A road speed at which a shaft is judged: when, where that comes from, how fast, and whether it is driven for long. */
    record Judged(String when, String where, Speed road, boolean held) {

        /** The speed of a shaft there. */
        Outcome<ShaftSpeed> of(Combination combination, ShaftPlace place) {
            return at(combination, place, road).map(speed -> new ShaftSpeed(where, speed, held));
        }
    }

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

    /** The road speeds at which the motion of shafts is judged: the order's cruise, and the fastest that power, gearing and tires allow. */
    static List<Judged> judged(ShaftGround ground) {
        List<Judged> speeds = new ArrayList<>();
        cruise(ground.combination()).ifPresent(speeds::add);
        fastest(ground).ifPresent(speeds::add);
        return speeds;
    }

    static Optional<Judged> cruise(Combination combination) {
        return combination.cruise().map(speed -> new Judged("at cruise", "cruise", speed, true));
    }

    /** The top speed that the vehicle really reaches where that is known, else the end of its gearing or its limiter; but not more than its tires may turn. */
    static Optional<Judged> fastest(ShaftGround ground) {
        Optional<Judged> reached = atTop(ground).or(() -> atGearing(ground.combination()));
        Optional<Judged> tire = atTireSymbol(ground.combination());
        boolean tireFirst = reached.isPresent()
                && tire.isPresent()
                && tire.get().road().isLessThan(reached.get().road());
        return tireFirst ? tire : reached.or(() -> tire);
    }

    /** The top speed by power and gearing, where that is more than the tires may turn: the driver alone keeps the vehicle from it. */
    static Optional<Judged> beyondTires(ShaftGround ground) {
        Optional<Judged> tire = atTireSymbol(ground.combination());
        return atTop(ground).filter(top -> tire.isPresent() && tire.get().road().isLessThan(top.road()));
    }

    static Optional<Judged> atTop(ShaftGround ground) {
        return ground.top()
                .map(top -> new Judged(
                        "at top speed",
                        limitedBy(top.fastest().top().orThrow())
                                + top.fastest().gear().label(),
                        top.fastest().top().orThrow().speed(),
                        false))
                .value();
    }

    private static String limitedBy(TopSpeed top) {
        return top.limit() == TopSpeed.Limit.LIMITER ? "speed limiter in " : "top speed by power and gearing in ";
    }

    private static Optional<Judged> atGearing(Combination combination) {
        return RoadSpeedsAnswer.atMaximum(combination)
                .map(answer -> answer.rows().get(answer.rows().size() - 1))
                .map(row -> new Judged(
                        "at the end of the gearing",
                        "engine at its maximum in " + row.gear().label(),
                        row.roadSpeed(),
                        false))
                .value()
                .map(geared -> combination
                        .limiter()
                        .filter(held -> held.isLessThan(geared.road()))
                        .map(held -> new Judged("at the speed limiter", "speed limiter", held, false))
                        .orElse(geared));
    }

    static Optional<Judged> atTireSymbol(Combination combination) {
        return combination
                .tire()
                .flatMap(part -> part.item().designation().service())
                .map(ServiceDescription::speed)
                .map(symbol ->
                        new Judged("at the tire's limit", "tire at its speed symbol " + symbol, symbol.speed(), false));
    }
}
