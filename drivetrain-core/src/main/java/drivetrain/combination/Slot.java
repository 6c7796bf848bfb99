package drivetrain.combination;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;

/** A place in a drivetrain package that one part fills. */
public enum Slot {
    /** The vehicle that is built. */
    VEHICLE("vehicle", "vehicle", PartKind.VEHICLE),
    /** The engine. */
    ENGINE("engine", "engine", PartKind.ENGINE),
    /** The transmission behind it. */
    TRANSMISSION("transmission", "transmission", PartKind.TRANSMISSION),
    /** An auxiliary over- or underdrive behind the transmission; empty means that none is fitted. */
    OVERDRIVE("overdrive", "overdrive", PartKind.OVERDRIVE),
    /** The transfer case. */
    TRANSFER("transfer case", "transfer", PartKind.TRANSFER_CASE),
    /** The rear axle's ring and pinion. */
    REAR_AXLE("rear axle", "rearAxle", PartKind.AXLE),
    /** The front axle's ring and pinion. */
    FRONT_AXLE("front axle", "frontAxle", PartKind.AXLE),
    /** A reduction in the hubs of all wheels; empty means that none is fitted. */
    HUBS("hub reduction", "hubs", PartKind.HUB_REDUCTION),
    /** The tire, on all wheels unless the front ones differ. */
    TIRE("tire", "tire", PartKind.TIRE),
    /** The front tire, where it differs. */
    FRONT_TIRE("front tire", "frontTire", PartKind.TIRE),
    /** The driveshaft to the rear axle. */
    REAR_SHAFT("rear shaft", "rearShaft", PartKind.DRIVESHAFT),
    /** The line of the rear shaft, as measured. */
    REAR_LINE("rear shaft line", "rearLine", PartKind.SHAFT_LINE),
    /** What guides the rear axle. */
    REAR_SUSPENSION("rear suspension", "rearSuspension", PartKind.SUSPENSION),
    /** The driveshaft to the front axle. */
    FRONT_SHAFT("front shaft", "frontShaft", PartKind.DRIVESHAFT),
    /** The line of the front shaft, as measured. */
    FRONT_LINE("front shaft line", "frontLine", PartKind.SHAFT_LINE),
    /** What guides the front axle. */
    FRONT_SUSPENSION("front suspension", "frontSuspension", PartKind.SUSPENSION),
    /** What the engine burns. */
    FUEL("fuel", "fuel", PartKind.FUEL),
    /** What moves the fuel. */
    FUEL_PUMP("pump", "pump", PartKind.FUEL_PUMP),
    /** The way of the fuel from the tank to the engine. */
    FEED_LINE("feed line", "feedLine", PartKind.FUEL_LINE),
    /** The way of what the engine does not burn back to the tank; empty where there is none. */
    RETURN_LINE("return line", "returnLine", PartKind.FUEL_LINE),
    /** The injectors; empty for an engine without. */
    INJECTORS("injectors", "injectors", PartKind.INJECTORS),
    /** How the supply is set up and under what conditions it works. */
    FUEL_SYSTEM("fuel system", "fuelSystem", PartKind.FUEL_SYSTEM),
    /** The fuel tank. */
    TANK("tank", "tank", PartKind.TANK);

    /** What the gear train is made of. */
    static final Set<Slot> GEARING = Set.of(TRANSMISSION, OVERDRIVE, TRANSFER, REAR_AXLE, HUBS);

    private static final Set<Slot> FUEL_SUPPLY =
            Set.of(FUEL, FUEL_PUMP, FEED_LINE, RETURN_LINE, INJECTORS, FUEL_SYSTEM, TANK);

    private final String word;
    private final String key;

    @SuppressWarnings("ImmutableEnumChecker") // PartKind is immutable; its parser is a pure function
    private final PartKind<?> kind;

    Slot(String word, String key, PartKind<?> kind) {
        this.word = word;
        this.key = key;
        this.kind = kind;
    }

    /**
     * Returns the trade's word for it.
     *
     * @return the word
     */
    public String word() {
        return word;
    }

    /**
     * Returns the key under which an order file holds it.
     *
     * @return the key
     */
    public String key() {
        return key;
    }

    /**
     * Returns the kind of part that fills it.
     *
     * @return the kind
     */
    public PartKind<?> kind() {
        return kind;
    }

    /**
     * Finds a slot by the key of an order file.
     *
     * @param key the key
     * @return the slot, or empty
     */
    public static Optional<Slot> ofKey(String key) {
        return Arrays.stream(values()).filter(slot -> slot.key.equals(key)).findFirst();
    }

    /**
     * Tells whether the slot belongs to the fuel supply.
     *
     * @return true for the fuel and everything that holds or moves it
     */
    public boolean isFuelSupply() {
        return FUEL_SUPPLY.contains(this);
    }
}
