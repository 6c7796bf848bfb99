package drivetrain.driveshaft;

import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Angle;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.PlainFigure;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Torque;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A tube under torque.
 *
 * @param tube the tube
 * @param material what it is made of
 * @param torque the torque, zero or more
 */
public record Torsion(Tube tube, ShaftMaterial material, Torque torque) {

    private static final Display<Angle> TWIST = new Display<>(Angle.DEGREE, 2, Angle.DEGREE, 2);
    private static final Source TORSION =
            Source.derived("torsion of a round tube: the shear strain grows with the distance from the axis");
    private static final Source YIELD =
            Source.derived("yield in shear at the tensile yield strength over root 3: distortion energy");

    /**
     * Checks the torque.
     *
     * @throws drivetrain.refusal.RefusedException if it is negative or more than a million N m
     */
    public Torsion {
        torque = torque.requireBetween(
                "driveshaft torque", Torque.ofNewtonMeters(0.0), Torque.ofNewtonMeters(1e6), Torque.NEWTON_METER);
    }

    /**
     * Returns the shear stress at the outside of the tube.
     *
     * @return T D / (2 J)
     */
    public Pressure stress() {
        return Pressure.ofPascals(torque.toNewtonMeters() * tube.diameter().toMeters() / (2.0 * tube.polarMoment()));
    }

    /**
     * Returns how far a length of the tube twists.
     *
     * @param length the length of the tube
     * @return T L / (G J)
     */
    public Angle twist(Length length) {
        return Angle.ofRadians(torque.toNewtonMeters()
                * length.toMeters()
                / (material.shearModulus().toPascals() * tube.polarMoment()));
    }

    /**
     * Returns how many times the torque goes into the one at which the tube yields.
     *
     * @return the factor; empty if the strength is not known or there is no torque
     */
    public OptionalDouble factor() {
        Optional<Pressure> strength = material.shearStrength();
        return strength.isEmpty() || torque.toNewtonMeters() == 0.0
                ? OptionalDouble.empty()
                : OptionalDouble.of(strength.get().ratioTo(stress()));
    }

    /**
     * Returns the torque at which the outside of the tube yields, or a laminate fails.
     *
     * @return the torque, or empty if the strength is not known
     */
    public Optional<Torque> yieldTorque() {
        return material.shearStrength()
                .map(strength -> Torque.ofNewtonMeters(strength.toPascals()
                        * 2.0
                        * tube.polarMoment()
                        / tube.diameter().toMeters()));
    }

    /**
     * Returns what to tell of the material so that its strength is known.
     *
     * @return a phrase to stand behind "not evaluated because", for a material whose strength is not known
     */
    public String strengthMissing() {
        return material.strengthMissing();
    }

    /**
     * Works stress, twist and factor out.
     *
     * @param length the length of the tube; empty leaves the twist out
     * @return the working
     */
    public Working working(Optional<Length> length) {
        Working.Builder working = Working.of("shear stress of the tube")
                .input("torque", "T", Figure.of(torque, Display.TORQUE), "given")
                .input("outside diameter", "D", Figure.of(tube.diameter(), Display.WALL), "given")
                .input("wall", "t", Figure.of(tube.wall(), Display.WALL), "given")
                .input("shear modulus", "G", Figure.of(material.shearModulus(), Display.MODULUS), material.text())
                .step(
                        "polar moment of area",
                        "J = pi/32 (D^4 - d^4), d = D - 2 t",
                        new PlainFigure(tube.polarMoment() * 1e12, "mm4", 0))
                .step("shear stress", "tau = T D / (2 J)", Figure.of(stress(), Display.STRESS))
                .source(TORSION);
        length.ifPresent(known -> working.input("length of the tube", "L", Figure.of(known, Display.DIMENSION), "given")
                .step("twist", "theta = T L / (G J)", Figure.of(twist(known), TWIST)));
        material.shearStrength().ifPresent(strength -> {
            working.input("strength in shear", "tau_y", Figure.of(strength, Display.STRESS), material.text());
            working.source(YIELD);
        });
        factor().ifPresent(factor -> working.step("factor against yield", "tau_y / tau", Figure.plain(factor, 2)));
        return working.build();
    }
}
