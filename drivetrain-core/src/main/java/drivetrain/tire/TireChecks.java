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

/** Holds tires against what the vehicle asks of them. The limits are those of the table {@code tire/limits.csv}. */
public final class TireChecks {

    private static final int SINGLE_TIRES = 2;
    private static final int DUAL_TIRES = 4;
    private static final Source LOAD_RULE = Source.standard(
            "ISO 4000-1 / UN Regulations 30 and 54: load index, the greatest load on one tire at the speed of its speed symbol");
    private static final Source SPEED_RULE = Source.standard(
            "ISO 4000-1 / UN Regulations 30 and 54: speed symbol, the greatest speed at the load of the load index");

    private TireChecks() {}

    /**
     * Holds the load of an axle against the load capacity of its tires.
     *
     * <p>A tire that is marked neither LT nor C nor ST is taken for a passenger car tire, of which a truck or utility vehicle wants a greater reserve.
     *
     * @param where which axle, such as {@code front}
     * @param tire the tire, of which the axle has two, or four if dual
     * @param axleLoad the greatest load on the axle, more than zero
     * @param dual true if the axle has dual wheels
     * @return met with the reserve to spare, marginal with less, exceeded; not evaluated where the size has no load index for the fitment
     * @throws drivetrain.refusal.RefusedException if the axle load is zero or negative
     */
    public static Finding load(String where, Tire tire, Mass axleLoad, boolean dual) {
        String checked = where + " tire load";
        axleLoad.requirePositive(where + " axle load");
        return index(tire, dual)
                .fold(
                        index -> load(checked, tire, axleLoad, index, dual ? DUAL_TIRES : SINGLE_TIRES),
                        reason -> Finding.notEvaluated(checked, reason, LOAD_RULE));
    }

    private static Outcome<LoadIndex> index(Tire tire, boolean dual) {
        return service(tire, "load index")
                .then(service -> dual
                        ? Outcome.of(
                                service.dual(),
                                "the tire " + tire.name()
                                        + " has no load index for dual wheels; add it, such as 122/119Q")
                        : Outcome.of(service.single()));
    }

    private static Finding load(String checked, Tire tire, Mass axleLoad, LoadIndex index, int tires) {
        Mass capacity = index.capacity().times(tires);
        TireLimits.Limit reserve = reserve(tire);
        Verdict verdict = verdict(axleLoad.ratioTo(capacity), reserve.value());
        return Finding.of(
                checked,
                Figure.of(axleLoad, Display.MASS),
                Figure.of(capacity, Display.MASS),
                Figure.of(capacity.minus(axleLoad), Display.MASS),
                verdict,
                "load index " + index + " is "
                        + DecimalText.shortest(index.capacity().toKilograms()) + " kg a tire, and the axle has " + tires
                        + " of them" + wanted(verdict, reserve.value(), "load capacity"),
                verdict == Verdict.MARGINAL ? reserve.source() : index.source());
    }

    private static TireLimits.Limit reserve(Tire tire) {
        Optional<TireUse> use = tire.designation().markings().use();
        boolean passenger =
                tire.designation() instanceof MetricDesignation && use.orElse(TireUse.PASSENGER) == TireUse.PASSENGER;
        return passenger ? TireLimits.passengerLoadReserve() : TireLimits.loadReserve();
    }

    /**
     * Holds a speed against the speed symbol of a tire.
     *
     * @param where which axle, such as {@code front}
     * @param tire the tire
     * @param top the greatest speed that will be driven, zero or more
     * @return met with the reserve to spare, marginal with less, exceeded; not evaluated where the size has no speed symbol, or one in parentheses and the speed is higher
     */
    public static Finding speed(String where, Tire tire, Speed top) {
        String checked = where + " tire speed";
        return service(tire, "speed symbol")
                .then(service -> openEnded(tire, service, top))
                .fold(
                        symbol -> speed(checked, symbol, top),
                        reason -> Finding.notEvaluated(checked, reason, SPEED_RULE));
    }

    private static Outcome<SpeedSymbol> openEnded(Tire tire, ServiceDescription service, Speed top) {
        Speed limit = service.speed().speed();
        return service.parenthesized() && top.isGreaterThan(limit)
                ? Outcome.notEvaluated("the tire " + tire.name() + " is meant for more than "
                        + limit.format(Speed.KILOMETER_PER_HOUR, 0) + ", and only its maker tells for how much more")
                : Outcome.of(service.speed());
    }

    private static Finding speed(String checked, SpeedSymbol symbol, Speed top) {
        Speed limit = symbol.speed();
        TireLimits.Limit reserve = TireLimits.speedReserve();
        Verdict verdict = verdict(top.ratioTo(limit), reserve.value());
        return Finding.of(
                checked,
                Figure.of(top, Display.ROAD_SPEED),
                Figure.of(limit, Display.ROAD_SPEED),
                Figure.of(limit.minus(top), Display.ROAD_SPEED),
                verdict,
                "speed symbol " + symbol + " is " + limit.format(Speed.KILOMETER_PER_HOUR, 0)
                        + wanted(verdict, reserve.value(), "speed"),
                verdict == Verdict.MARGINAL ? reserve.source() : SpeedSymbol.source());
    }

    /**
     * Holds the rolling circumferences of front and rear tires against each other: axles that are tied together must turn alike.
     *
     * @param front the front tire
     * @param rear the rear tire
     * @return met up to a small difference, marginal up to a larger one, exceeded above; not evaluated where the tires differ and a circumference is not known
     */
    public static Finding sameDiameter(Tire front, Tire rear) {
        return AxleComparison.of(front, rear);
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

    private static Outcome<ServiceDescription> service(Tire tire, String wanted) {
        return Outcome.of(
                tire.designation().service(),
                "the tire " + tire.name() + " has no " + wanted + "; add its service description, such as 122/119Q");
    }

    private static Verdict verdict(double used, double reserve) {
        if (used > 1.0) {
            return Verdict.EXCEEDED;
        }
        return used > 1.0 - reserve ? Verdict.MARGINAL : Verdict.MET;
    }

    private static String wanted(Verdict verdict, double reserve, String what) {
        return verdict == Verdict.MARGINAL
                ? "; less than " + DecimalText.fixed(100.0 * reserve, 0) + " % of the " + what + " is left"
                : "";
    }
}
