package drivetrain.driveshaft;

import drivetrain.quantity.Mass;

/**
 * A mass at one place of a beam, such as a damper ring.
 *
 * @param mass the mass, zero or more
 */
public record BeamMass(Mass mass) implements BeamPiece {

    /**
     * Checks the mass.
     *
     * @throws drivetrain.refusal.RefusedException if it is negative or more than 500 kg
     */
    public BeamMass {
        mass = mass.requireBetween("mass on the shaft", Mass.ofKilograms(0.0), Mass.ofKilograms(500.0), Mass.KILOGRAM);
    }
}
