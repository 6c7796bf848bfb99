package drivetrain.tire;

import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Speed;
import java.util.List;
import java.util.Optional;

/** Holds tires against what the vehicle asks of them. */
public final class TireChecks {

    private static final int SINGLE_TIRES = 2;
    private static final int DUAL_TIRES = 4;
    private static final Source LOAD_RULE = Source.standard(
            "UN Regulations 30 and 54, load capacity index: the load on a tire must not exceed its capacity");
    private static final Source SPEED_RULE = Source.standard(
            "UN Regulations 30 and 54, speed category symbol: the speed must not exceed that of the symbol");

    private TireChecks() {}

    /**
     * Holds the load of an axle against the load capacity of its tires.
     *
     * @param where which axle, such as {@code front}
     * @param tire the tire, of which the axle has two, or four if dual
     * @param axleLoad the greatest load on the axle, more than zero
     * @param dual true if the axle has dual wheels
     * @return met with 5 % to spare, marginal with less, exceeded; not evaluated where the size has no load index for the fitment
     * @throws drivetrain.refusal.RefusedException if the axle load is zero or negative
     */
    public static Finding load(String where, Tire tire, Mass axleLoad, boolean dual) {
        String checked = where + " tire load";
        axleLoad.requirePositive(where + " axle load");
        Optional<ServiceDescription> service = tire.designation().service();
        if (service.isEmpty()) {
            return Finding.notEvaluated(
                    checked,
                    "the tire " + tire.name() + " has no load index; add its service description, such as 122/119Q",
                    LOAD_RULE);
        }
        Optional<LoadIndex> index =
                dual ? service.get().dual() : Optional.of(service.get().single());
        if (index.isEmpty()) {
            return Finding.notEvaluated(
                    checked,
                    "the tire " + tire.name() + " has no load index for dual wheels; add it, such as 122/119Q",
                    LOAD_RULE);
        }
        int tires = dual ? DUAL_TIRES : SINGLE_TIRES;
        Mass capacity = index.get().capacity().times(tires);
        return Finding.of(
                checked,
                Figure.of(axleLoad, Display.MASS),
                Figure.of(capacity, Display.MASS),
                Figure.of(capacity.minus(axleLoad), Display.MASS),
                verdict(axleLoad.ratioTo(capacity), TireLimits.loadReserve().value()),
                "load index " + index.get() + " is "
                        + DecimalText.shortest(index.get().capacity().toKilograms()) + " kg a tire, and the axle has "
                        + tires + " of them",
                index.get().source());
    }

    /**
     * Holds a speed against the speed symbol of a tire.
     *
     * @param where which axle, such as {@code front}
     * @param tire the tire
     * @param top the greatest speed that will be driven
     * @return met with 5 % to spare, marginal with less, exceeded; not evaluated where the size has no speed symbol
     */
    public static Finding speed(String where, Tire tire, Speed top) {
        String checked = where + " tire speed";
        Optional<ServiceDescription> service = tire.designation().service();
        if (service.isEmpty()) {
            return Finding.notEvaluated(
                    checked,
                    "the tire " + tire.name() + " has no speed symbol; add its service description, such as 122/119Q",
                    SPEED_RULE);
        }
        SpeedSymbol symbol = service.get().speed();
        Speed limit = symbol.speed();
        if (service.get().parenthesized() && top.isGreaterThan(limit)) {
            return Finding.notEvaluated(
                    checked,
                    "the tire " + tire.name() + " is meant for more than " + limit.format(Speed.KILOMETER_PER_HOUR, 0)
                            + ", and how much more only its maker tells",
                    SPEED_RULE);
        }
        return Finding.of(
                checked,
                Figure.of(top, Display.ROAD_SPEED),
                Figure.of(limit, Display.ROAD_SPEED),
                Figure.of(limit.minus(top), Display.ROAD_SPEED),
                verdict(top.ratioTo(limit), TireLimits.speedReserve().value()),
                "speed symbol " + symbol + " is " + limit.format(Speed.KILOMETER_PER_HOUR, 0),
                SpeedSymbol.source());
    }

    /**
     * Holds the rolling circumferences of front and rear tires against each other: axles that are tied together must turn alike.
     *
     * @param front the front tire
     * @param rear the rear tire
     * @return met up to 0.5 % of difference, marginal up to 1.5 %, exceeded above; not evaluated where a circumference is not known
     */
    public static Finding sameDiameter(Tire front, Tire rear) {
        String checked = "front and rear tire diameter";
        TireLimits.Limit marginal = TireLimits.axleDifferenceMarginal();
        TireLimits.Limit most = TireLimits.axleDifferenceMost();
        return both(front.rolling(), rear.rolling())
                .fold(
                        ratio -> {
                            double difference = Math.abs(ratio - 1.0);
                            return Finding.of(
                                    checked,
                                    Figure.percent(difference, 2),
                                    Figure.percent(most.value(), 2),
                                    Figure.percent(most.value() - difference, 2),
                                    between(difference, marginal.value(), most.value()),
                                    difference == 0.0
                                            ? "front and rear tires roll the same distance in one turn"
                                            : "one turn of the front tire is "
                                                    + DecimalText.fixed(100.0 * difference, 2) + " % "
                                                    + (ratio > 1.0 ? "longer" : "shorter")
                                                    + " than one of the rear tire",
                                    most.source());
                        },
                        reason -> Finding.notEvaluated(checked, reason, most.source()));
    }

    /**
     * Holds what was measured on a tire against its size, and the measurements against each other.
     *
     * @param where which axle, such as {@code front}
     * @param tire the tire
     * @return one finding for each pair that can be held against each other: met, or marginal where one of the two must be doubted
     */
    public static List<Finding> consistency(String where, Tire tire) {
        return MeasurementChecks.of(where, tire);
    }

    private static Outcome<Double> both(Outcome<RollingCircumference> front, Outcome<RollingCircumference> rear) {
        return front.then(first -> rear.map(second -> first.circumference().ratioTo(second.circumference())));
    }

    private static Verdict between(double value, double marginal, double most) {
        if (value > most) {
            return Verdict.EXCEEDED;
        }
        return value > marginal ? Verdict.MARGINAL : Verdict.MET;
    }

    private static Verdict verdict(double used, double reserve) {
        if (used > 1.0) {
            return Verdict.EXCEEDED;
        }
        return used > 1.0 - reserve ? Verdict.MARGINAL : Verdict.MET;
    }
}
