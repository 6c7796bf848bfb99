package drivetrain.driveshaft;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.Density;
import drivetrain.quantity.Pressure;
import java.util.List;
import java.util.Optional;

/**
 * A fiber laminate, such as carbon in epoxy. It has no usual figures: the angles of its plies make them, so the maker of the tube must tell.
 *
 * @param modulus the modulus of elasticity along the tube, 5 to 700 GPa
 * @param shearModulus the shear modulus in the plane of the laminate, 1 to 100 GPa
 * @param density the density, 1000 to 3000 kg/m3
 * @param shearStrength the shear stress at which the tube fails in torsion, by rupture or by buckling, 5 to 1000 MPa, if known
 */
public record ShaftLaminate(Pressure modulus, Pressure shearModulus, Density density, Optional<Pressure> shearStrength)
        implements ShaftMaterial {

    /**
     * The shear coefficient of a thin-walled tube, 1/2: the shear flow q = V sin(a) / (pi r) stores twice the energy of an even one. The formula of
     * Cowper holds for materials that are alike in all directions; at a Poisson's ratio of 0 it gives the same.
     */
    private static final double THIN_TUBE = 0.5;

    /**
     * Checks that the figures are those of a laminate.
     *
     * @throws drivetrain.refusal.RefusedException if a figure is so far off that its unit must be wrong
     */
    public ShaftLaminate {
        SolidLimits.requireLaminateModulus(modulus);
        SolidLimits.requireLaminateShear(shearModulus);
        SolidLimits.requireLaminateDensity(density);
        shearStrength.ifPresent(SolidLimits::requireLaminateStrength);
    }

    /**
     * Makes a laminate.
     *
     * @param modulus the modulus of elasticity along the tube
     * @param shearModulus the shear modulus in the plane of the laminate
     * @param density the density
     * @return the laminate, its strength not known
     * @throws drivetrain.refusal.RefusedException if a figure is so far off that its unit must be wrong
     */
    public static ShaftLaminate of(Pressure modulus, Pressure shearModulus, Density density) {
        return new ShaftLaminate(modulus, shearModulus, density, Optional.empty());
    }

    /**
     * Returns the laminate with its strength.
     *
     * @param strength the shear stress at which the tube fails in torsion
     * @return a copy that has it
     * @throws drivetrain.refusal.RefusedException if it is so far off that its unit must be wrong
     */
    public ShaftLaminate withShearStrength(Pressure strength) {
        return new ShaftLaminate(modulus, shearModulus, density, Optional.of(strength));
    }

    @Override
    public String text() {
        return "laminate modulus " + modulus + " shear " + shearModulus + " density " + density
                + shearStrength.map(strength -> " strength " + strength).orElse("");
    }

    @Override
    public String strengthMissing() {
        return "the strength of the laminate is not given; ask the maker of the tube and add it, such as strength 120 MPa";
    }

    @Override
    public double shearCoefficient(Tube tube) {
        return THIN_TUBE;
    }

    @Override
    public List<Assumption> assumptions() {
        return List.of(Assumption.flagged(
                "laminate",
                "the laminate's moduli and density are taken as given, alike over the length; ends, bonds and moisture change them, so have "
                        + "the maker of the tube confirm the critical speed",
                Source.given("the maker of the tube")));
    }
}
