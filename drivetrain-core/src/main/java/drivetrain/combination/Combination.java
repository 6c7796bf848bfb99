package drivetrain.combination;

import drivetrain.atmosphere.Air;
import drivetrain.driveshaft.LineSurvey;
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
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import drivetrain.road.Surface;
import drivetrain.tire.Tire;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A drivetrain package with its parts looked up.
 *
 * <p>Every part may be missing; then {@link #need} says what to choose. The gear train stands as soon as transmission, transfer case and rear axle do: an
 * overdrive and a hub reduction that were not chosen are not fitted.
 */
public final class Combination {

    private final Specification specification;
    private final HouseLimits limits;
    private final Optional<Part<Vehicle>> vehicle;
    private final Optional<Part<Engine>> engine;
    private final Optional<Part<Transmission>> transmission;
    private final Optional<Part<Overdrive>> overdrive;
    private final Optional<Part<TransferCase>> transfer;
    private final Optional<Part<AxleRatio>> rearAxle;
    private final Optional<Part<AxleRatio>> frontAxle;
    private final Optional<Part<HubReduction>> hubs;
    private final Optional<Part<Tire>> tire;
    private final Optional<Part<Tire>> frontTire;
    private final ShaftChoice frontShaft;
    private final ShaftChoice rearShaft;
    private final FuelParts fuelParts;
    private final Optional<Speed> cruise;
    private final Optional<Surface> surface;
    private final Optional<Air> air;
    private final Outcome<GearTrain> gearTrain;
    private final Map<Slot, Part<?>> chosen = new EnumMap<>(Slot.class);

    private Combination(Specification specification, Catalog catalog) {
        this.specification = specification;
        this.limits = catalog.limits();
        vehicle = part(Slot.VEHICLE, PartKind.VEHICLE, catalog);
        engine = part(Slot.ENGINE, PartKind.ENGINE, catalog);
        transmission = part(Slot.TRANSMISSION, PartKind.TRANSMISSION, catalog);
        overdrive = part(Slot.OVERDRIVE, PartKind.OVERDRIVE, catalog);
        transfer = part(Slot.TRANSFER, PartKind.TRANSFER_CASE, catalog);
        rearAxle = part(Slot.REAR_AXLE, PartKind.AXLE, catalog);
        frontAxle = part(Slot.FRONT_AXLE, PartKind.AXLE, catalog);
        hubs = part(Slot.HUBS, PartKind.HUB_REDUCTION, catalog);
        tire = part(Slot.TIRE, PartKind.TIRE, catalog);
        frontTire = part(Slot.FRONT_TIRE, PartKind.TIRE, catalog).or(() -> tire);
        frontShaft = new ShaftChoice(
                ShaftPlace.FRONT,
                part(Slot.FRONT_SHAFT, PartKind.DRIVESHAFT, catalog),
                line(Slot.FRONT_LINE, ShaftPlace.FRONT, catalog),
                part(Slot.FRONT_SUSPENSION, PartKind.SUSPENSION, catalog));
        rearShaft = new ShaftChoice(
                ShaftPlace.REAR,
                part(Slot.REAR_SHAFT, PartKind.DRIVESHAFT, catalog),
                line(Slot.REAR_LINE, ShaftPlace.REAR, catalog),
                part(Slot.REAR_SUSPENSION, PartKind.SUSPENSION, catalog));
        fuelParts = new FuelParts(
                part(Slot.FUEL, PartKind.FUEL, catalog),
                part(Slot.FUEL_PUMP, PartKind.FUEL_PUMP, catalog),
                part(Slot.FEED_LINE, PartKind.FUEL_LINE, catalog),
                part(Slot.RETURN_LINE, PartKind.FUEL_LINE, catalog),
                part(Slot.INJECTORS, PartKind.INJECTORS, catalog),
                part(Slot.FUEL_SYSTEM, PartKind.FUEL_SYSTEM, catalog),
                part(Slot.TANK, PartKind.TANK, catalog),
                FuelAir.of(specification.air()));
        cruise = specification.cruise().map(Speed::parse).map(speed -> speed.requirePositive("cruise speed"));
        surface = specification.surface().map(Surface::parse);
        air = specification.air().map(AirText::read);
        gearTrain = connect();
    }

    /**
     * Looks every choice up.
     *
     * @param specification the choices
     * @param catalog the parts that a name can mean
     * @return the combination
     * @throws RefusedException if a choice is neither a name in the catalog nor a literal, the subject then being the slot's word; or if a condition cannot be read
     */
    public static Combination resolve(Specification specification, Catalog catalog) {
        return new Combination(specification, catalog);
    }

    /** A line is also laid in space, so that one which cannot be built is refused where it is chosen. */
    private Optional<Part<LineSurvey>> line(Slot slot, ShaftPlace place, Catalog catalog) {
        Optional<Part<LineSurvey>> line = part(slot, PartKind.SHAFT_LINE, catalog);
        try {
            line.ifPresent(chosen -> chosen.item().line(place));
        } catch (RefusedException refused) {
            Refusal why = refused.refusal();
            String given = specification.choice(slot).orElse("");
            String subject = why.subject().equals("shaft line") ? "" : why.subject() + " ";
            throw Refusal.of(
                            slot.word(),
                            given,
                            subject + why.problem() + (why.given().isEmpty() ? "" : ": " + why.given()))
                    .allowing(why.allowed())
                    .asException();
        }
        return line;
    }

    private <T> Optional<Part<T>> part(Slot slot, PartKind<T> kind, Catalog catalog) {
        Optional<String> text = specification.choice(slot);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            Part<T> part = catalog.resolve(kind, text.get());
            chosen.put(slot, part);
            return Optional.of(part);
        } catch (RefusedException refused) {
            throw refused.refusal().about(slot.word()).asException();
        }
    }

    private Outcome<GearTrain> connect() {
        return need(transmission, Slot.TRANSMISSION)
                .then(box -> need(transfer, Slot.TRANSFER)
                        .then(reduction -> need(rearAxle, Slot.REAR_AXLE)
                                .map(axle -> new GearTrain(
                                        box,
                                        overdrive.map(Part::item).orElseGet(Overdrive::none),
                                        reduction,
                                        axle,
                                        hubs.map(Part::item).orElseGet(HubReduction::none)))));
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
        return limits;
    }

    /**
     * Returns the part that was chosen for a slot.
     *
     * @param slot the slot
     * @return the part, or empty; a front tire that is only the rear one's was not chosen
     */
    public Optional<Part<?>> part(Slot slot) {
        return Optional.ofNullable(chosen.get(slot));
    }

    /**
     * Returns the vehicle.
     *
     * @return the part, or empty
     */
    public Optional<Part<Vehicle>> vehicle() {
        return vehicle;
    }

    /**
     * Returns the engine.
     *
     * @return the part, or empty
     */
    public Optional<Part<Engine>> engine() {
        return engine;
    }

    /**
     * Returns the transmission.
     *
     * @return the part, or empty
     */
    public Optional<Part<Transmission>> transmission() {
        return transmission;
    }

    /**
     * Returns the auxiliary over- or underdrive.
     *
     * @return the part, or empty if none is fitted
     */
    public Optional<Part<Overdrive>> overdrive() {
        return overdrive;
    }

    /**
     * Returns the transfer case.
     *
     * @return the part, or empty
     */
    public Optional<Part<TransferCase>> transfer() {
        return transfer;
    }

    /**
     * Returns the rear axle.
     *
     * @return the part, or empty
     */
    public Optional<Part<AxleRatio>> rearAxle() {
        return rearAxle;
    }

    /**
     * Returns the front axle.
     *
     * @return the part, or empty
     */
    public Optional<Part<AxleRatio>> frontAxle() {
        return frontAxle;
    }

    /**
     * Returns the hub reduction.
     *
     * @return the part, or empty if none is fitted
     */
    public Optional<Part<HubReduction>> hubs() {
        return hubs;
    }

    /**
     * Returns the rear tire, which is the tire on all wheels unless the front ones differ.
     *
     * @return the part, or empty
     */
    public Optional<Part<Tire>> tire() {
        return tire;
    }

    /**
     * Returns the front tire.
     *
     * @return the front tire if it differs, else the tire; empty if none is chosen
     */
    public Optional<Part<Tire>> frontTire() {
        return frontTire;
    }

    /**
     * Returns what is chosen for the driveshaft to an axle.
     *
     * @param place which axle
     * @return the shaft, its line and the axle's suspension, each of which may be missing
     */
    public ShaftChoice shaft(ShaftPlace place) {
        return place == ShaftPlace.FRONT ? frontShaft : rearShaft;
    }

    /**
     * Returns the parts of the fuel supply.
     *
     * @return the parts, each of which may be missing
     */
    public FuelParts fuelParts() {
        return fuelParts;
    }

    /**
     * Returns the road speed that the customer asked about.
     *
     * @return the speed, or empty
     */
    public Optional<Speed> cruise() {
        return cruise;
    }

    /**
     * Returns what the package is driven on.
     *
     * @return the surface, or empty if none is named
     */
    public Optional<Surface> surface() {
        return surface;
    }

    /**
     * Returns the air that the package is driven in.
     *
     * @return the air, or empty if none is named
     */
    public Optional<Air> air() {
        return air;
    }

    /**
     * Returns the gear train from the transmission to the wheels.
     *
     * @return the gear train, or which of its parts is not chosen
     */
    public Outcome<GearTrain> gearTrain() {
        return gearTrain;
    }

    /**
     * Returns the engine for an answer that needs one.
     *
     * @return the engine, or the reason that none is chosen
     */
    public Outcome<Engine> needEngine() {
        return need(engine, Slot.ENGINE);
    }

    /**
     * Returns the tire for an answer that needs one.
     *
     * @return the tire, or the reason that none is chosen
     */
    public Outcome<Tire> needTire() {
        return need(tire, Slot.TIRE);
    }

    /**
     * Returns the vehicle for an answer that needs one.
     *
     * @return the vehicle, or the reason that none is chosen
     */
    public Outcome<Vehicle> needVehicle() {
        return need(vehicle, Slot.VEHICLE);
    }
}
