package drivetrain.driveshaft;

import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.PlainFigure;

/** How a critical speed is worked out, as text; made only when asked for. */
final class CriticalSpeedWorking {

    static final Source BEAM = Source.handbook(
            "Timoshenko's beam with rotary inertia and shear; shear coefficient of the hollow circle: Cowper, Journal of Applied "
                    + "Mechanics 33 (1966) 335-340");
    private static final Source CLOSED_FORM = Source.derived(
            "a uniform beam whose ends tilt freely swings in half a sine wave, which solves Timoshenko's equations exactly");

    private CriticalSpeedWorking() {}

    static Working of(CriticalSpeed critical) {
        BeamShaft beam = critical.beam();
        int longest = beam.longest();
        ShaftPiece piece = beam.shaft().pieces().get(longest);
        Length length = beam.lengths().get(longest);
        Working.Builder working = Working.of("critical speed of the driveshaft").from(ofTube(piece, length));
        piece.yoke()
                .ifPresent(yoke -> working.input("mass of a yoke", "m_y", Figure.of(yoke.mass(), Display.MASS), "given")
                        .input("length of a yoke", "L_y", Figure.of(yoke.length(), Display.DIMENSION), "given"));
        beam.shaft()
                .bearing()
                .ifPresent(mount -> working.input(
                        "stiffness of the center bearing's mount", "c", Figure.of(mount, Display.SUPPORT), "given"));
        for (int i = 0; i < critical.modes().size(); i++) {
            BeamMode mode = critical.modes().get(i);
            working.step(
                    (mode.isBending() ? "bending mode " : "bounce on the mount, mode ") + (i + 1),
                    "K x = w^2 M x, all pieces as one beam",
                    rotation(mode.speed()));
        }
        return working.step("critical speed", "the lowest of the bending modes", rotation(critical.speed()))
                .source(BEAM)
                .build();
    }

    /** The tube by the closed form. */
    static Working ofTube(ShaftPiece piece, Length length) {
        Tube tube = piece.tube();
        ShaftMaterial material = piece.material();
        double squareMillimeters = tube.area() * 1e6;
        double quartics = tube.secondMoment() * 1e12;
        return Working.of("critical speed of the tube")
                .input("outside diameter", "D", Figure.of(tube.diameter(), Display.WALL), "given")
                .input("wall", "t", Figure.of(tube.wall(), Display.WALL), "given")
                .input("length, joint center to joint center", "L", Figure.of(length, Display.DIMENSION), "given")
                .input("modulus of elasticity", "E", Figure.of(material.modulus(), Display.MODULUS), material.text())
                .input("shear modulus", "G", Figure.of(material.shearModulus(), Display.MODULUS), material.text())
                .input("density", "rho", Figure.of(material.density(), Display.SOLID_DENSITY), material.text())
                .step("area of the section", "A = pi/4 (D^2 - d^2), d = D - 2 t", plain(squareMillimeters, "mm2", 1))
                .step("second moment of area", "I = pi/64 (D^4 - d^4)", plain(quartics, "mm4", 0))
                .step(
                        "shear coefficient",
                        "k by Cowper; 1/2 for a laminate",
                        plain(material.shearCoefficient(tube), "", 4))
                .step(
                        "critical speed of the slender tube",
                        "w = (pi/L)^2 sqrt(E I / (rho A))",
                        rotation(CriticalSpeed.ofSlender(tube, material, length)))
                .step(
                        "critical speed of the tube with shear and rotary inertia",
                        "lower root of E I b^4 - w^2 (rho A + rho I b^2 (1 + E/(k G))) + w^4 rho^2 I/(k G) = 0, b = pi/L",
                        rotation(CriticalSpeed.ofUniform(tube, material, length)))
                .source(CLOSED_FORM)
                .build();
    }

    static Figure rotation(AngularSpeed speed) {
        return Figure.of(speed, Display.ROTATION);
    }

    private static Figure plain(double value, String unit, int decimals) {
        return new PlainFigure(value, unit, decimals);
    }
}
