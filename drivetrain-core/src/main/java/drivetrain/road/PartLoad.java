package drivetrain.road;

import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Torque;
import drivetrain.quantity.UnitSystem;
import java.util.Optional;

/**
 * The greatest torque that one part of the drivetrain sees: what the engine can send to it, or what the ground can send back before the tires slip, whichever is
 * less.
 *
 * @param part the part, such as {@code rear half-shaft}
 * @param gear the gear
 * @param engineLimited the torque at which the engine can load it, or what is missing
 * @param slipLimited the torque in it at which the tires slip, or what is missing
 * @param rating what its maker allows, where stated
 */
public record PartLoad(
        String part, String gear, Outcome<Torque> engineLimited, Outcome<Torque> slipLimited, Optional<Torque> rating) {

    /** The rule by which a part is loaded. */
    public static final Source RULE = Source.handbook("a driveline maker's installation manual (2008)");

    private static final double ROUNDING = 1e-9;

    /** What sets the torque in a part. */
    public enum Limit {
        /** The engine cannot send more. */
        ENGINE("engine"),
        /** The tires slip before the engine can send more. */
        SLIP("tire slip");

        private final String label;

        Limit(String label) {
            this.label = label;
        }

        /**
         * Returns the words for it.
         *
         * @return the label, in lower case
         */
        public String label() {
            return label;
        }
    }

    /**
     * The way of the torque through one part.
     *
     * @param part the part
     * @param gear the gear
     * @param fromInput torque in it for each N·m at the transmission's input: ratio x efficiency up to it, times the share that it may have to carry
     * @param toWheels torque at the wheels that it drives for each N·m in it: ratio x efficiency behind it
     * @param wheelShare the share of the slipping wheels' torque that it carries: 1, or 1/2 for one of two half-shafts
     */
    public record Path(String part, String gear, double fromInput, double toWheels, double wheelShare) {}

    /**
     * Works out the load on a part.
     *
     * @param path the way of the torque through it
     * @param input the greatest torque at the transmission's input, or what is missing
     * @param wheelSlip the torque at which all wheels that it drives slip, or what is missing
     * @param rating what its maker allows, where stated
     * @return the load
     */
    public static PartLoad of(Path path, Outcome<Torque> input, Outcome<Torque> wheelSlip, Optional<Torque> rating) {
        return new PartLoad(
                path.part(),
                path.gear(),
                input.map(torque -> torque.times(path.fromInput())),
                wheelSlip.map(torque -> torque.times(path.wheelShare() / path.toWheels())),
                rating);
    }

    /**
     * Returns the worse of two loads on one part in two gears.
     *
     * @param other the load in another gear
     * @return the one with the greater torque; this one where they are equal or the other's is not known
     */
    public PartLoad worse(PartLoad other) {
        Optional<Torque> mine = governing().value();
        Optional<Torque> its = other.governing().value();
        boolean less = its.isPresent() && (mine.isEmpty() || exceeds(its.get(), mine.get()));
        return less ? other : this;
    }

    /** The gears give the same slip torque but for rounding. */
    private static boolean exceeds(Torque one, Torque other) {
        return one.si() > other.si() * (1.0 + ROUNDING);
    }

    /**
     * Returns the torque that the part sees at most.
     *
     * @return the lesser of the two; the one that is known where only one is; else what is missing
     */
    public Outcome<Torque> governing() {
        if (engineLimited.value().isEmpty()) {
            return slipLimited.value().isPresent() ? slipLimited : engineLimited;
        }
        return limit().equals(Optional.of(Limit.SLIP)) ? slipLimited : engineLimited;
    }

    /**
     * Returns what sets that torque.
     *
     * @return the lesser limit; empty where neither is known
     */
    public Optional<Limit> limit() {
        Optional<Torque> engine = engineLimited.value();
        Optional<Torque> slip = slipLimited.value();
        if (slip.isPresent() && (engine.isEmpty() || slip.get().isLessThan(engine.get()))) {
            return Optional.of(Limit.SLIP);
        }
        return engine.map(known -> Limit.ENGINE);
    }

    /**
     * Returns how much of the rating is used.
     *
     * @return torque over rating, or what is missing
     */
    public Outcome<Double> used() {
        return governing()
                .then(torque ->
                        Outcome.of(rating.map(torque::ratioTo), "no torque rating of the " + part + " is given"));
    }

    /**
     * Holds the torque against the rating.
     *
     * @return met up to 90 % of it, marginal up to all of it, exceeded above; not evaluated without a rating
     */
    public Finding finding() {
        String checked = "torque in the " + part;
        return governing()
                .then(torque -> used().map(share -> Finding.of(
                        checked,
                        Figure.of(torque, Display.TORQUE),
                        Figure.of(rating.orElseThrow(), Display.TORQUE),
                        Figure.percent(1.0 - share, 0),
                        verdict(share),
                        statement(verdict(share)),
                        RULE)))
                .fold(found -> found, reason -> Finding.notEvaluated(checked, reason, RULE));
    }

    private static Verdict verdict(double share) {
        return share > 1.0
                ? Verdict.EXCEEDED
                : share > RoadLimit.of("rating-marginal").most() ? Verdict.MARGINAL : Verdict.MET;
    }

    private String statement(Verdict verdict) {
        String by = limit().equals(Optional.of(Limit.SLIP))
                ? "the tires slip first; a smaller tire, less axle load or looser ground lowers it"
                : "the engine sets it; less torque lowers it, and so does a taller gear between engine and part";
        return switch (verdict) {
            case EXCEEDED -> "the part can be loaded beyond its rating and may break: " + by;
            case MARGINAL -> "the part comes close to its rating: " + by;
            default -> "the part keeps its rating: " + by;
        };
    }

    /**
     * Says the torque and what sets it.
     *
     * @param units the units of the sentence
     * @return a phrase such as {@code 2100 lb·ft in 1st low, set by tire slip}
     */
    public String phrase(UnitSystem units) {
        return governing()
                .fold(
                        torque -> Figure.of(torque, Display.TORQUE).text(units) + " in " + gear + ", set by "
                                + limit().map(Limit::label).orElse("nothing known"),
                        reason -> "not evaluated because " + reason);
    }
}
