package drivetrain.driveshaft;

import drivetrain.finding.Assumption;
import drivetrain.quantity.Density;
import drivetrain.quantity.Pressure;
import java.util.List;
import java.util.Optional;

/** What a shaft is made of. */
public sealed interface ShaftMaterial permits ShaftMetal, ShaftLaminate {

    /**
     * Reads a material: a name of {@link StockMaterials}, or a metal or laminate that is written out.
     *
     * @param text the text, such as {@code steel}, {@code modulus 205 GPa poisson 0.29 density 7850 kg/m3 yield 350 MPa} or {@code laminate
     *     modulus 110 GPa shear 14 GPa density 1580 kg/m3 strength 120 MPa}
     * @return the material
     * @throws drivetrain.refusal.RefusedException if the text is neither, or a figure is not that of a solid, with the index of the fault
     */
    static ShaftMaterial parse(String text) {
        return StockMaterials.named(text).orElseGet(() -> ShaftMaterialText.read(text));
    }

    /**
     * Returns the name, or the material written out.
     *
     * @return the text that {@link #parse} reads back as an equal material
     */
    String text();

    /**
     * Returns the modulus of elasticity along the shaft.
     *
     * @return the modulus, E
     */
    Pressure modulus();

    /**
     * Returns the shear modulus.
     *
     * @return the modulus, G: of the laminate in its plane, of a metal E / 2 (1 + nu)
     */
    Pressure shearModulus();

    /**
     * Returns the density.
     *
     * @return mass per volume
     */
    Density density();

    /**
     * Returns the shear stress at which the material yields, or a laminate fails.
     *
     * @return the stress, or empty if it is not known
     */
    Optional<Pressure> shearStrength();

    /**
     * Returns what to tell of the material where its strength is not known.
     *
     * @return a phrase that names what is missing and what to write, to stand behind "not evaluated because"
     */
    String strengthMissing();

    /**
     * Returns Timoshenko's shear coefficient of a tube of this material.
     *
     * @param tube the tube
     * @return the coefficient, between 0.5 and 0.9
     */
    double shearCoefficient(Tube tube);

    /**
     * Returns what the figures rest on.
     *
     * @return the assumptions; empty where the user gave the figures
     */
    List<Assumption> assumptions();
}
