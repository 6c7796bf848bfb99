package drivetrain.driveshaft;

import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;

/**
 * The yoke that is welded into an end of a tube, with its share of the joint.
 *
 * @param mass the mass, 50 g to 50 kg
 * @param length from the end of the tube to the joint center, 10 mm to 500 mm
 */
public record Yoke(Mass mass, Length length) {

    /**
     * Checks the figures.
     *
     * @throws drivetrain.refusal.RefusedException if one is out of range
     */
    public Yoke {
        mass = mass.requireBetween("yoke mass", Mass.ofKilograms(0.05), Mass.ofKilograms(50.0), Mass.KILOGRAM);
        length = length.requireBetween(
                "yoke length", Length.ofMillimeters(10.0), Length.ofMillimeters(500.0), Length.MILLIMETER);
    }
}
