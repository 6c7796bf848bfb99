package drivetrain.driveshaft;

import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;

/**
 * A stretch of one section.
 *
 * @param length its length, more than 0 and up to 10 m
 * @param section its section, hollow or solid
 * @param material what it is made of
 * @param mass its mass, spread evenly
 */
public record BeamSpan(Length length, Tube section, ShaftMaterial material, Mass mass) implements BeamPiece {

    /**
     * Checks length and mass.
     *
     * @throws drivetrain.refusal.RefusedException if one of them is not greater than zero or impossibly great
     */
    public BeamSpan {
        length = length.requirePositive("length of the shaft")
                .requireBetween("length of the shaft", Length.ofMeters(0.0), Length.ofMeters(10.0), Length.MILLIMETER);
        mass = mass.requirePositive("mass of the shaft")
                .requireBetween("mass of the shaft", Mass.ofKilograms(0.0), Mass.ofKilograms(20_000.0), Mass.KILOGRAM);
    }

    /**
     * Makes a stretch with the mass of its material.
     *
     * @param length its length
     * @param section its section
     * @param material what it is made of
     * @return the stretch
     * @throws drivetrain.refusal.RefusedException if the length is impossible
     */
    public static BeamSpan of(Length length, Tube section, ShaftMaterial material) {
        double kilograms = material.density().si() * section.area() * length.toMeters();
        return new BeamSpan(length, section, material, Mass.ofKilograms(kilograms));
    }

    /**
     * Takes a yoke as a round bar of its own length and mass, no thicker than the tube that it is welded to.
     *
     * @param yoke the yoke
     * @param tube the tube
     * @param metal the metal of the yoke
     * @return the stretch
     */
    public static BeamSpan of(Yoke yoke, Tube tube, ShaftMaterial metal) {
        double area = yoke.mass().toKilograms()
                / (metal.density().si() * yoke.length().toMeters());
        double diameter = Math.sqrt(4.0 * area / Math.PI);
        double least = Math.max(0.005, 0.2 * tube.diameter().toMeters());
        Length bar = Length.ofMeters(
                Math.max(least, Math.min(diameter, tube.diameter().toMeters())));
        return new BeamSpan(yoke.length(), Tube.solid(bar), metal, yoke.mass());
    }

    BeamSection beam() {
        return BeamSection.of(section, material, mass.toKilograms() / length.toMeters());
    }
}
