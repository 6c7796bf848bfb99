package drivetrain.driveshaft;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Density;
import drivetrain.quantity.Pressure;
import java.util.List;
import java.util.Optional;

/**
 * A metal, alike in all directions.
 *
 * @param name the name in {@code driveshaft/materials.csv}; empty if the user wrote the metal out
 * @param modulus the modulus of elasticity E, 20 to 700 GPa
 * @param poisson Poisson's ratio nu, 0 to 0.5
 * @param density the density, 1000 to 20000 kg/m3
 * @param yield the tensile yield strength, 20 to 4000 MPa, if known
 * @param source where the figures come from
 */
public record ShaftMetal(
        String name, Pressure modulus, double poisson, Density density, Optional<Pressure> yield, Source source)
        implements ShaftMaterial {

    private static final Source GIVEN = Source.given("the material as written out");

    /**
     * Checks that the figures are those of a metal.
     *
     * @throws drivetrain.refusal.RefusedException if a figure is so far off that its unit must be wrong
     */
    public ShaftMetal {
        SolidLimits.requireModulus(modulus);
        SolidLimits.requireDensity(density);
        SolidLimits.requirePoisson(poisson);
        yield.ifPresent(SolidLimits::requireYield);
    }

    /**
     * Makes a metal from the user's own figures.
     *
     * @param modulus the modulus of elasticity
     * @param poisson Poisson's ratio
     * @param density the density
     * @return the metal, its yield strength not known
     * @throws drivetrain.refusal.RefusedException if a figure is so far off that its unit must be wrong
     */
    public static ShaftMetal of(Pressure modulus, double poisson, Density density) {
        return new ShaftMetal("", modulus, poisson, density, Optional.empty(), GIVEN);
    }

    /**
     * Returns the metal with its yield strength.
     *
     * @param strength the tensile yield strength
     * @return a copy that has it, written out
     * @throws drivetrain.refusal.RefusedException if it is so far off that its unit must be wrong
     */
    public ShaftMetal withYield(Pressure strength) {
        return new ShaftMetal("", modulus, poisson, density, Optional.of(strength), GIVEN);
    }

    @Override
    public String text() {
        if (!name.isEmpty()) {
            return name;
        }
        return "modulus " + modulus + " poisson " + DecimalText.shortest(poisson) + " density " + density
                + yield.map(strength -> " yield " + strength).orElse("");
    }

    @Override
    public Pressure shearModulus() {
        return modulus.dividedBy(2.0 * (1.0 + poisson));
    }

    /** Yield in shear is the tensile yield strength over the root of 3: distortion energy, von Mises. */
    @Override
    public Optional<Pressure> shearStrength() {
        return yield.map(strength -> strength.dividedBy(Math.sqrt(3.0)));
    }

    @Override
    public String strengthMissing() {
        if (name.isEmpty()) {
            return "the yield strength of the material is not given; add it, such as yield 350 MPa";
        }
        List<String> grades = StockMaterials.gradesOf(name);
        return "which " + name + " it is was not said; "
                + (grades.isEmpty() ? "" : "name the grade bought, " + String.join(", ", grades) + ", or ")
                + "write it out with the yield of its certificate";
    }

    /**
     * Returns Cowper's coefficient for a hollow circular section.
     *
     * <p>With m the inner over the outer radius: 6 (1 + nu) (1 + m^2)^2 / ((7 + 6 nu) (1 + m^2)^2 + (20 + 12 nu) m^2). Cowper, Journal of Applied
     * Mechanics 33 (1966) 335-340, table 1. It passes into his formulas for the solid circle, 6 (1 + nu) / (7 + 6 nu), and for the thin
     * tube, 2 (1 + nu) / (4 + 3 nu).
     */
    @Override
    public double shearCoefficient(Tube tube) {
        double m = tube.bore().ratioTo(tube.diameter());
        double square = (1.0 + m * m) * (1.0 + m * m);
        return 6.0 * (1.0 + poisson) * square / ((7.0 + 6.0 * poisson) * square + (20.0 + 12.0 * poisson) * m * m);
    }

    @Override
    public List<Assumption> assumptions() {
        if (name.isEmpty()) {
            return List.of();
        }
        return List.of(Assumption.of(
                "shaft material " + name,
                name + ": modulus " + modulus.format(Pressure.GIGAPASCAL, 1) + ", Poisson's ratio "
                        + DecimalText.shortest(poisson) + ", density "
                        + density.format(Density.KILOGRAM_PER_CUBIC_METER, 0)
                        + yield.map(strength -> ", yield " + strength.format(Pressure.MEGAPASCAL, 0))
                                .orElse("; its yield strength is left open, for it depends on the tube bought"),
                source));
    }
}
