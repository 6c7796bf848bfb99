package drivetrain.combination;

import drivetrain.atmosphere.Air;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.engine.Engine;
import drivetrain.finding.Outcome;
import drivetrain.gearing.AxleRatio;
import drivetrain.gearing.GearTrain;
import drivetrain.gearing.HubReduction;
import drivetrain.gearing.Overdrive;
import drivetrain.gearing.TransferCase;
import drivetrain.gearing.Transmission;
import drivetrain.quantity.Speed;
import drivetrain.refusal.RefusedException;
import drivetrain.road.Surface;
import drivetrain.tire.Tire;
import java.util.Optional;

/**
 * A drivetrain package with its parts looked up.
 *
 * <p>Every part may be missing; then {@link #need} says what to choose. The gear train stands as soon as transmission, transfer case and rear axle do: an
 * overdrive and a hub reduction that were not chosen are not fitted.
 */
public final class Combination {

    private final Specification specification;
    private final Catalog catalog;
    private final ChosenParts parts;
    private final Once<ShaftChoice> frontShaft = new Once<>(() -> shaftTo(ShaftPlace.FRONT));
    private final Once<ShaftChoice> rearShaft = new Once<>(() -> shaftTo(ShaftPlace.REAR));
    private final Once<FuelParts> fuelParts = new Once<>(this::fuelSupply);
    private final Conditions conditions;
    private final Once<Outcome<GearTrain>> gearTrain;

    private Combination(
            Specification specification,
            Catalog catalog,
            ChosenParts parts,
            Optional<Once<Outcome<GearTrain>>> sameGearTrain) {
        this.specification = specification;
        this.catalog = catalog;
        this.parts = parts;
        this.conditions = new Conditions(specification);
        this.gearTrain = sameGearTrain.orElseGet(() -> new Once<>(this::connect));
    }

    /**
     * Looks every choice up.
     *
     * @param specification the choices
     * @param catalog the parts that a name can mean
     * @return the combination
     * @throws RefusedException if a choice is neither a name in the catalog nor a literal, the subject then being the slot's word; or if cruise speed, surface, air or
     *     cannot be read
     */
    public static Combination resolve(Specification specification, Catalog catalog) {
        return of(specification, catalog).lookUpUnlike(Specification.empty());
    }

    /**
     * Looks a choice up when it is first asked for, for choices that are known to be good.
     *
     * @param specification the choices
     * @param catalog the parts that a name can mean
     * @return the combination, each method of which refuses a choice that it needs as {@link #resolve} would
     */
    public static Combination of(Specification specification, Catalog catalog) {
        return new Combination(specification, catalog, new ChosenParts(specification, catalog), Optional.empty());
    }

    /**
     * Makes other choices from the same catalog; what is chosen alike is looked up once for both.
     *
     * @param other the other choices, known to be good
     * @return a combination as {@link #of} makes it
     */
    public Combination changedTo(Specification other) {
        boolean geared = parts.isAlike(Slot.GEARING, other);
        return new Combination(
                other, catalog, parts.changedTo(other), geared ? Optional.of(gearTrain) : Optional.empty());
    }

    /**
     * Looks up every choice that is not the same among choices known to be good.
     *
     * @param known choices that were looked up in the same catalog
     * @return this combination
     * @throws RefusedException as {@link #resolve}
     */
    public Combination lookUpUnlike(Specification known) {
        parts.lookUpUnlike(known);
        conditions.readAll();
        return this;
    }

    private ShaftChoice shaftTo(ShaftPlace place) {
        boolean front = place == ShaftPlace.FRONT;
        return new ShaftChoice(
                place,
                parts.of(front ? Slot.FRONT_SHAFT : Slot.REAR_SHAFT),
                parts.of(front ? Slot.FRONT_LINE : Slot.REAR_LINE),
                parts.of(front ? Slot.FRONT_SUSPENSION : Slot.REAR_SUSPENSION));
    }

    private FuelParts fuelSupply() {
        return new FuelParts(
                parts.of(Slot.FUEL),
                parts.of(Slot.FUEL_PUMP),
                parts.of(Slot.FEED_LINE),
                parts.of(Slot.RETURN_LINE),
                parts.of(Slot.INJECTORS),
                parts.of(Slot.FUEL_SYSTEM),
                parts.of(Slot.TANK),
                FuelAir.of(specification.air()));
    }

    private Outcome<GearTrain> connect() {
        return need(transmission(), Slot.TRANSMISSION)
                .then(box -> need(transfer(), Slot.TRANSFER)
                        .then(reduction -> need(rearAxle(), Slot.REAR_AXLE)
                                .map(axle -> new GearTrain(
                                        box,
                                        overdrive().map(Part::item).orElseGet(Overdrive::none),
                                        reduction,
                                        axle,
                                        hubs().map(Part::item).orElseGet(HubReduction::none)))));
    }

    private static <T> Outcome<T> need(Optional<Part<T>> part, Slot slot) {
        return Outcome.of(part.map(Part::item), "no " + slot.word() + " is chosen");
    }

    /**
     * Returns the choices that this was made from.
     *
     * @return the specification
     */
    public Specification specification() {
        return specification;
    }

    /**
     * Returns the limits that the shop sets for itself.
     *
     * @return the limits
     */
    public HouseLimits limits() {
        return catalog.limits();
    }

    /**
     * Returns the part that was chosen for a slot.
     *
     * @param slot the slot
     * @return the part, or empty; a front tire that is only the rear one's was not chosen
     */
    public Optional<Part<?>> part(Slot slot) {
        return parts.in(slot);
    }

    /**
     * Returns the vehicle.
     *
     * @return the part, or empty
     */
    public Optional<Part<Vehicle>> vehicle() {
        return parts.of(Slot.VEHICLE);
    }

    /**
     * Returns the engine.
     *
     * @return the part, or empty
     */
    public Optional<Part<Engine>> engine() {
        return parts.of(Slot.ENGINE);
    }

    /**
     * Returns the transmission.
     *
     * @return the part, or empty
     */
    public Optional<Part<Transmission>> transmission() {
        return parts.of(Slot.TRANSMISSION);
    }

    /**
     * Returns the auxiliary over- or underdrive.
     *
     * @return the part, or empty if none is fitted
     */
    public Optional<Part<Overdrive>> overdrive() {
        return parts.of(Slot.OVERDRIVE);
    }

    /**
     * Returns the transfer case.
     *
     * @return the part, or empty
     */
    public Optional<Part<TransferCase>> transfer() {
        return parts.of(Slot.TRANSFER);
    }

    /**
     * Returns the rear axle.
     *
     * @return the part, or empty
     */
    public Optional<Part<AxleRatio>> rearAxle() {
        return parts.of(Slot.REAR_AXLE);
    }

    /**
     * Returns the front axle.
     *
     * @return the part, or empty
     */
    public Optional<Part<AxleRatio>> frontAxle() {
        return parts.of(Slot.FRONT_AXLE);
    }

    /**
     * Returns the hub reduction.
     *
     * @return the part, or empty if none is fitted
     */
    public Optional<Part<HubReduction>> hubs() {
        return parts.of(Slot.HUBS);
    }

    /**
     * Returns the rear tire, which is the tire on all wheels unless the front ones differ.
     *
     * @return the part, or empty
     */
    public Optional<Part<Tire>> tire() {
        return parts.of(Slot.TIRE);
    }

    /**
     * Returns the front tire.
     *
     * @return the front tire if it differs, else the tire; empty if none is chosen
     */
    public Optional<Part<Tire>> frontTire() {
        return parts.<Tire>of(Slot.FRONT_TIRE).or(this::tire);
    }

    /**
     * Returns what is chosen for the driveshaft to an axle.
     *
     * @param place which axle
     * @return the shaft, its line and the axle's suspension, each of which may be missing
     */
    public ShaftChoice shaft(ShaftPlace place) {
        return (place == ShaftPlace.FRONT ? frontShaft : rearShaft).get();
    }

    /**
     * Returns the parts of the fuel supply.
     *
     * @return the parts, each of which may be missing
     */
    public FuelParts fuelParts() {
        return fuelParts.get();
    }

    /**
     * Returns the road speed that the customer asked about.
     *
     * @return the speed, or empty
     */
    public Optional<Speed> cruise() {
        return conditions.cruise();
    }

    /**
     * Returns what the package is driven on.
     *
     * @return the surface, or empty if none is named
     */
    public Optional<Surface> surface() {
        return conditions.surface();
    }

    /**
     * Returns the air that the package is driven in.
     *
     * @return the air, or empty if none is named
     */
    public Optional<Air> air() {
        return conditions.air();
    }

    /**
     * Returns the road speed at which a speed limiter holds the vehicle.
     *
     * @return the speed, 10 to 500 km/h, or empty if there is no limiter
     */
    public Optional<Speed> limiter() {
        return conditions.limiter();
    }

    /**
     * Returns the gear train from the transmission to the wheels.
     *
     * @return the gear train, or which of its parts is not chosen
     */
    public Outcome<GearTrain> gearTrain() {
        return gearTrain.get();
    }

    /**
     * Returns the engine for an answer that needs one.
     *
     * @return the engine, or the reason that none is chosen
     */
    public Outcome<Engine> needEngine() {
        return need(engine(), Slot.ENGINE);
    }

    /**
     * Returns the tire for an answer that needs one.
     *
     * @return the tire, or the reason that none is chosen
     */
    public Outcome<Tire> needTire() {
        return need(tire(), Slot.TIRE);
    }

    /**
     * Returns the vehicle for an answer that needs one.
     *
     * @return the vehicle, or the reason that none is chosen
     */
    public Outcome<Vehicle> needVehicle() {
        return need(vehicle(), Slot.VEHICLE);
    }
}
