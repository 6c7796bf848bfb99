package drivetrain.combination;

import drivetrain.gearing.Speedometer;
import drivetrain.quantity.Mass;
import java.util.Optional;

/**
 * What the drivetrain package is built into.
 *
 * @param name the vehicle, described by kind
 * @param mass the mass ready to drive
 * @param frontAxleLoad the greatest load that the front axle will carry
 * @param rearAxleLoad the greatest load that the rear axle will carry
 * @param dualRearWheels true if the rear axle has two wheels a side
 * @param speedometer what the speedometer was made for
 * @param road what answers about the road need to know of it
 */
public record Vehicle(
        String name,
        Optional<Mass> mass,
        Optional<Mass> frontAxleLoad,
        Optional<Mass> rearAxleLoad,
        boolean dualRearWheels,
        Optional<Speedometer> speedometer,
        RoadData road) {

    private static final Mass LEAST = Mass.ofKilograms(100.0);
    private static final Mass MOST = Mass.ofKilograms(20_000.0);

    /**
     * Checks the masses.
     *
     * @throws drivetrain.refusal.RefusedException if a mass lies outside 100 kg to 20,000 kg
     */
    public Vehicle {
        mass.ifPresent(value -> requirePlausible("vehicle mass", value));
        frontAxleLoad.ifPresent(value -> requirePlausible("front axle load", value));
        rearAxleLoad.ifPresent(value -> requirePlausible("rear axle load", value));
    }

    /**
     * Makes a vehicle of which only masses and speedometer are known.
     *
     * @param name the vehicle, described by kind
     * @param mass the mass ready to drive
     * @param frontAxleLoad the greatest load that the front axle will carry
     * @param rearAxleLoad the greatest load that the rear axle will carry
     * @param dualRearWheels true if the rear axle has two wheels a side
     * @param speedometer what the speedometer was made for
     * @throws drivetrain.refusal.RefusedException if a mass lies outside 100 kg to 20,000 kg
     */
    public Vehicle(
            String name,
            Optional<Mass> mass,
            Optional<Mass> frontAxleLoad,
            Optional<Mass> rearAxleLoad,
            boolean dualRearWheels,
            Optional<Speedometer> speedometer) {
        this(name, mass, frontAxleLoad, rearAxleLoad, dualRearWheels, speedometer, RoadData.unknown());
    }

    static Mass requirePlausible(String subject, Mass value) {
        return value.requireBetween(subject, LEAST, MOST, Mass.KILOGRAM);
    }

    /**
     * Reads a literal: {@code mass 2150 kg front 1250 kg rear 1700 kg [dual] drag 1.4 m2 wheelbase 2850 mm cg 760 mm split 54 % engine-inertia 0.3 kg m2 wheel-inertia
     * 2 kg m2}, each part of it optional but at least one given.
     *
     * @param text the literal
     * @return the vehicle, without a speedometer
     * @throws drivetrain.refusal.RefusedException if the text is no such literal, with the index of the fault
     */
    public static Vehicle parse(String text) {
        return new VehicleText(text).read();
    }
}
