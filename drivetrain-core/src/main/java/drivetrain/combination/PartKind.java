package drivetrain.combination;

import drivetrain.driveshaft.Driveshaft;
import drivetrain.driveshaft.LineSurvey;
import drivetrain.driveshaft.Suspension;
import drivetrain.engine.Engine;
import drivetrain.fuel.Conduit;
import drivetrain.fuel.Fuel;
import drivetrain.fuel.FuelFilter;
import drivetrain.fuel.FuelLine;
import drivetrain.fuel.FuelSystem;
import drivetrain.fuel.Injectors;
import drivetrain.fuel.Pump;
import drivetrain.fuel.Tank;
import drivetrain.gearing.AxleRatio;
import drivetrain.gearing.HubReduction;
import drivetrain.gearing.Overdrive;
import drivetrain.gearing.TransferCase;
import drivetrain.gearing.Transmission;
import drivetrain.tire.Tire;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * A kind of part: its name in the singular and in a catalog, and how a literal of it is read.
 *
 * @param <T> the type of the part
 */
public final class PartKind<T> {

    /** A vehicle: masses, axle loads, speedometer. */
    public static final PartKind<Vehicle> VEHICLE = new PartKind<>(
            "vehicle", "vehicles", "mass 2150 kg front 1250 kg rear 1700 kg drag 1.4 m2", Vehicle::parse);

    /** An engine. */
    public static final PartKind<Engine> ENGINE = new PartKind<>(
            "engine",
            "engines",
            "420 hp at 5700 rpm, 460 lb-ft at 4100 rpm, idle 650 rpm, max 6600 rpm",
            Engine::parse);

    /** A transmission, manual or automatic. */
    public static final PartKind<Transmission> TRANSMISSION = new PartKind<>(
            "transmission", "transmissions", "4.03 2.36 1.53 1.15 0.85 0.67 reverse 3.06", Transmission::parse);

    /** An auxiliary over- or underdrive. */
    public static final PartKind<Overdrive> OVERDRIVE =
            new PartKind<>("overdrive", "overdrives", "0.78 or none", Overdrive::parse);

    /** A transfer case. */
    public static final PartKind<TransferCase> TRANSFER_CASE =
            new PartKind<>("transfer case", "transferCases", "1.00 2.72 or none", TransferCase::parse);

    /** An axle's ring and pinion. */
    public static final PartKind<AxleRatio> AXLE = new PartKind<>("axle", "axles", "41/10 or 4.10", AxleRatio::parse);

    /** A reduction in the wheel hubs. */
    public static final PartKind<HubReduction> HUB_REDUCTION =
            new PartKind<>("hub reduction", "hubReductions", "24/16 or none", HubReduction::parse);

    /** A tire on its rim. */
    public static final PartKind<Tire> TIRE =
            new PartKind<>("tire", "tires", "285/75R16 122/119Q rollout 2510 mm", Tire::parse);

    /** A driveshaft: tubes, joints, spline. */
    public static final PartKind<Driveshaft> DRIVESHAFT = new PartKind<>(
            "driveshaft",
            "driveshafts",
            "tube 76.2 mm x 2.1 mm of steel, yokes in phase, joints to 30 deg, slip 24 teeth 95 mm engaged 50 mm free",
            Driveshaft::parse);

    /** The line in which a driveshaft runs, as measured. */
    public static final PartKind<LineSurvey> SHAFT_LINE = new PartKind<>(
            "shaft line",
            "shaftLines",
            "output 3.5 deg down, shaft 1185 mm 9.2 deg down 40 mm left, pinion 3 deg down",
            LineSurvey::parse);

    /** What guides a live axle. */
    public static final PartKind<Suspension> SUSPENSION = new PartKind<>(
            "suspension",
            "suspensions",
            "leaf springs 560 mm ahead 25 mm below 1000 mm apart, pinion 260 mm ahead 30 mm above, bump 90 mm, droop 120 mm, track 1490 mm",
            Suspension::parse);

    /** A fuel. */
    public static final PartKind<Fuel> FUEL =
            new PartKind<>("fuel", "fuels", "E10 or E85, ethanol 70 %, 780 kg/m3", Fuel::parse);

    /** A fuel pump, or several. */
    public static final PartKind<Pump> FUEL_PUMP = new PartKind<>(
            "pump",
            "pumps",
            "13.5 V, 280 L/h at 30 psi 7 A, 210 L/h at 70 psi 11 A or 2 x NAME in parallel",
            (text, catalog) -> Pump.parse(text, name -> item(catalog, "pumps", name, Pump.class)));

    /** The injectors of an engine. */
    public static final PartKind<Injectors> INJECTORS = new PartKind<>(
            "injectors",
            "injectors",
            "8 x 42 lb/h at 43.5 psi or 8 x NAME",
            (text, catalog) -> Injectors.parse(text, name -> item(catalog, "injectors", name, Injectors.class)));

    /** A tube or hose of fuel lines. */
    public static final PartKind<Conduit> FUEL_HOSE =
            new PartKind<>("fuel hose", "fuelHoses", "8 mm tube or 3/8 in hose", Conduit::parse);

    /** A fuel filter. */
    public static final PartKind<FuelFilter> FUEL_FILTER =
            new PartKind<>("fuel filter", "fuelFilters", "8 kPa at 200 L/h", FuelFilter::parse);

    /** A fuel line: tubes, hoses, filters and fittings in the order of the flow. */
    public static final PartKind<FuelLine> FUEL_LINE = new PartKind<>(
            "line",
            "fuelLines",
            "4.5 m of 8 mm tube, filter 8 kPa at 200 L/h, 0.6 m of 3/8 in hose",
            (text, catalog) -> FuelLine.parse(
                    text,
                    new FuelLine.Shelves(
                            name -> item(catalog, "fuelHoses", name, Conduit.class),
                            name -> item(catalog, "fuelFilters", name, FuelFilter.class))));

    /** How a fuel supply is set up: regulator, voltage, wires, temperature. */
    public static final PartKind<FuelSystem> FUEL_SYSTEM =
            new PartKind<>("system", "fuelSystems", "return 43.5 psi, 13.8 V, lift 0.5 m", FuelSystem::parse);

    /** A fuel tank. */
    public static final PartKind<Tank> TANK =
            new PartKind<>("tank", "tanks", "90 L, usable 82 L, canister 75 g", Tank::parse);

    private static final List<PartKind<?>> ALL = List.of(
            VEHICLE,
            ENGINE,
            TRANSMISSION,
            OVERDRIVE,
            TRANSFER_CASE,
            AXLE,
            HUB_REDUCTION,
            TIRE,
            DRIVESHAFT,
            SHAFT_LINE,
            SUSPENSION,
            FUEL,
            FUEL_PUMP,
            INJECTORS,
            FUEL_HOSE,
            FUEL_FILTER,
            FUEL_LINE,
            FUEL_SYSTEM,
            TANK);

    private final String word;
    private final String key;
    private final String example;
    private final BiFunction<String, Catalog, T> literal;

    private PartKind(String word, String key, String example, Function<String, T> literal) {
        this(word, key, example, (text, catalog) -> literal.apply(text));
    }

    private PartKind(String word, String key, String example, BiFunction<String, Catalog, T> literal) {
        this.word = word;
        this.key = key;
        this.example = example;
        this.literal = literal;
    }

    /**
     * Returns every kind, in the order from engine to tire, the vehicle first.
     *
     * @return the kinds
     */
    public static List<PartKind<?>> all() {
        return ALL;
    }

    /**
     * Returns the name of one such part, such as {@code transfer case}.
     *
     * @return the word
     */
    public String word() {
        return word;
    }

    /**
     * Returns the key under which a catalog file lists such parts, such as {@code transferCases}.
     *
     * @return the key
     */
    public String key() {
        return key;
    }

    /**
     * Returns a literal as a user may type it.
     *
     * @return the example
     */
    public String example() {
        return example;
    }

    /**
     * Reads a part from a literal.
     *
     * @param text the literal
     * @return the part
     * @throws drivetrain.refusal.RefusedException if the text is no such literal
     */
    public T parse(String text) {
        return literal.apply(text, Catalog.empty());
    }

    /**
     * Reads a part from its literal text, in which the pieces of a part that is put together may be named by what is on the shelf.
     *
     * @param text the text as written
     * @param catalog the shelf
     * @return the part
     * @throws drivetrain.refusal.RefusedException if the text cannot be read
     */
    public T parse(String text, Catalog catalog) {
        return literal.apply(text, catalog);
    }

    /** Finds a piece by its name; the kind is looked up by its key, because this one may not stand yet. */
    private static <P> Optional<P> item(Catalog catalog, String key, String name, Class<P> type) {
        return ALL.stream()
                .filter(kind -> kind.key.equals(key))
                .findFirst()
                .flatMap(kind -> catalog.find(kind, name))
                .map(part -> type.cast(part.item()));
    }

    /**
     * Returns the word.
     *
     * @return the word
     */
    @Override
    public String toString() {
        return word;
    }
}
