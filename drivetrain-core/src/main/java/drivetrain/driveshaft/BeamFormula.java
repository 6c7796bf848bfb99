package drivetrain.driveshaft;

/**
 * The uniform beam between two joints in closed form.
 *
 * <p>A sine of one half wave, b = pi / L, satisfies the equations of Timoshenko with both ends free to tilt: E I b^4 - w^2 (m + r b^2 (1 + s)) + w^4 m r / S = 0 with m mass and r
 * rotary inertia per length, S = k G A and s = E I m / (S r). The lower root in w is the critical speed; the greater root in b is the half wave that belongs to a speed.
 */
final class BeamFormula {

    private BeamFormula() {}

    /** The critical speed (rad/s) of a length (m). */
    static double speed(BeamSection section, double length) {
        double wave = Math.PI * Math.PI / (length * length);
        double a = section.massPerLength() * section.rotaryInertia() / section.shear();
        double b = middle(section, wave);
        double c = section.bending() * wave * wave;
        return Math.sqrt(2.0 * c / (b + Math.sqrt(Math.max(0.0, b * b - 4.0 * a * c))));
    }

    private static double middle(BeamSection section, double wave) {
        return section.massPerLength()
                + wave * (section.rotaryInertia() + section.bending() * section.massPerLength() / section.shear());
    }

    static double slenderSpeed(BeamSection section, double length) {
        return Math.PI * Math.PI / (length * length) * Math.sqrt(section.bending() / section.massPerLength());
    }

    /** The length (m) of which a speed (rad/s) is critical; 0 if no length is short enough. */
    static double length(BeamSection section, double speed) {
        double squared = speed * speed;
        double linear = squared * (middle(section, 1.0) - section.massPerLength());
        double constant =
                squared * section.massPerLength() * (1.0 - squared * section.rotaryInertia() / section.shear());
        if (constant <= 0.0) {
            return 0.0;
        }
        double root = Math.sqrt(linear * linear + 4.0 * section.bending() * constant);
        return Math.PI * Math.sqrt(2.0 * section.bending() / (linear + root));
    }
}
