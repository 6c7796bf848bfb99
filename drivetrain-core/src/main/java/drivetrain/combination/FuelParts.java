package drivetrain.combination;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.fuel.Fuel;
import drivetrain.fuel.FuelLine;
import drivetrain.fuel.FuelSystem;
import drivetrain.fuel.Injectors;
import drivetrain.fuel.Pump;
import drivetrain.fuel.Tank;
import drivetrain.quantity.Length;
import java.util.Optional;

/**
 * The parts of the fuel supply.
 *
 * @param fuel what the engine burns
 * @param pump what moves the fuel
 * @param feedLine the way to the engine
 * @param returnLine the way back
 * @param injectors the injectors
 * @param system how it is set up
 * @param tank the tank
 * @param air what the order's air tells
 */
public record FuelParts(
        Optional<Part<Fuel>> fuel,
        Optional<Part<Pump>> pump,
        Optional<Part<FuelLine>> feedLine,
        Optional<Part<FuelLine>> returnLine,
        Optional<Part<Injectors>> injectors,
        Optional<Part<FuelSystem>> system,
        Optional<Part<Tank>> tank,
        FuelAir air) {

    private static final Source ORDERED_AIR = Source.given("the order's air");
    private static final double SAME_METERS = 1.0;

    /**
     * Tells whether anything of a fuel supply is chosen.
     *
     * @return true if at least one part is
     */
    public boolean isAnyChosen() {
        return fuel.isPresent()
                || pump.isPresent()
                || feedLine.isPresent()
                || returnLine.isPresent()
                || injectors.isPresent()
                || system.isPresent()
                || tank.isPresent();
    }

    /**
     * Returns the part that fills a slot.
     *
     * @param slot a slot of the fuel supply
     * @return the part, or empty
     */
    public Optional<? extends Part<?>> in(Slot slot) {
        return switch (slot) {
            case FUEL -> fuel;
            case FUEL_PUMP -> pump;
            case FEED_LINE -> feedLine;
            case RETURN_LINE -> returnLine;
            case INJECTORS -> injectors;
            case FUEL_SYSTEM -> system;
            case TANK -> tank;
            default -> Optional.empty();
        };
    }

    /**
     * Returns the fuel for an answer that needs one.
     *
     * @return the fuel, or what to type to choose one
     */
    public Outcome<Fuel> needFuel() {
        return Outcome.of(fuel.map(Part::item), "no fuel is chosen; type one, such as fuel E10");
    }

    /**
     * Returns the pump for an answer that needs one.
     *
     * @return the pump, or what to type to choose one
     */
    public Outcome<Pump> needPump() {
        return Outcome.of(pump.map(Part::item), "no pump is chosen; \"parts pump\" lists those on the shelf");
    }

    /**
     * Returns the feed line for an answer that needs one.
     *
     * @return the line, or what to type to choose one
     */
    public Outcome<FuelLine> needFeedLine() {
        return Outcome.of(
                feedLine.map(Part::item),
                "no feed line is chosen; type its pieces, such as feed 4.5 m of 8 mm tube, 3 elbows");
    }

    /**
     * Returns the injectors for an answer that needs them.
     *
     * @return the injectors, or that none are chosen
     */
    public Outcome<Injectors> needInjectors() {
        return Outcome.of(injectors.map(Part::item), "no injectors are chosen");
    }

    /**
     * Returns the set-up.
     *
     * @return the set-up, of which nothing is known if none is chosen
     */
    public FuelSystem systemOrUnknown() {
        return system.map(Part::item).orElseGet(FuelSystem::unknown);
    }

    /**
     * Returns the elevation above sea level for an answer that needs one.
     *
     * @return that of the fuel system, else the altitude of the order's air, or what to type
     */
    public Outcome<Length> needElevation() {
        return Outcome.of(
                systemOrUnknown().elevation().or(air::altitude),
                "neither the fuel system nor the air names an elevation; add it to the fuel system, such as elevation 600 m, or type air altitude 600 m");
    }

    /**
     * Says which elevation is taken where the fuel system and the order's air do not say the same.
     *
     * @return the assumption; empty where the order's air names no altitude or the same one
     */
    public Optional<Assumption> elevationAssumption() {
        Optional<Length> own = systemOrUnknown().elevation();
        Optional<Length> altitude = air.altitude();
        if (altitude.isEmpty() || (own.isPresent() && isSame(own.get(), altitude.get()))) {
            return Optional.empty();
        }
        String aloft = meters(altitude.get());
        return Optional.of(
                own.isEmpty()
                        ? Assumption.of(
                                "elevation of the fuel system",
                                "the fuel system names no elevation: the altitude of the air, " + aloft + ", is taken",
                                ORDERED_AIR)
                        : Assumption.flagged(
                                "elevation of the fuel system",
                                "the fuel is reckoned at the fuel system's elevation of " + meters(own.get())
                                        + ", although the order's air is at " + aloft,
                                Source.given("the order's fuel system")));
    }

    private static boolean isSame(Length one, Length other) {
        return Math.abs(one.minus(other).toMeters()) < SAME_METERS;
    }

    private static String meters(Length height) {
        return height.format(Length.METER, 0) + " (" + height.format(Length.FOOT, 0) + ")";
    }

    /**
     * Returns the tank for an answer that needs one.
     *
     * @return the tank, or what to type to choose one
     */
    public Outcome<Tank> needTank() {
        return Outcome.of(tank.map(Part::item), "no tank is chosen; type one, such as tank 90 L");
    }
}
