package drivetrain.combination;

import drivetrain.finding.Outcome;
import drivetrain.fuel.Fuel;
import drivetrain.fuel.FuelLine;
import drivetrain.fuel.FuelSystem;
import drivetrain.fuel.Injectors;
import drivetrain.fuel.Pump;
import drivetrain.fuel.Tank;
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
 */
public record FuelParts(
        Optional<Part<Fuel>> fuel,
        Optional<Part<Pump>> pump,
        Optional<Part<FuelLine>> feedLine,
        Optional<Part<FuelLine>> returnLine,
        Optional<Part<Injectors>> injectors,
        Optional<Part<FuelSystem>> system,
        Optional<Part<Tank>> tank) {

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
     * Returns the tank for an answer that needs one.
     *
     * @return the tank, or what to type to choose one
     */
    public Outcome<Tank> needTank() {
        return Outcome.of(tank.map(Part::item), "no tank is chosen; type one, such as tank 90 L");
    }
}
