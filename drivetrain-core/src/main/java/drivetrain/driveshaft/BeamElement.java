package drivetrain.driveshaft;

/**
 * One element of a Timoshenko beam: deflection and slope at either end, the shape being the exact static one, so that it does not lock.
 *
 * <p>Stiffness, and consistent mass of translation and rotation: Przemieniecki, Theory of Matrix Structural Analysis, and Friedman and Kosmatka, Computers
 * and Structures 47 (1993), both from memory; confirmed by the closed form for the pinned beam, by the NAFEMS benchmark FV5 and by a
 * transfer matrix in the tests.
 */
final class BeamElement {

    private BeamElement() {}

    /**
     * Adds an element to stiffness and mass.
     *
     * @param dofs the four places of deflection and slope at its start, deflection and slope at its end
     * @param length its length (m)
     * @param section what it is made of
     */
    static void add(BeamMatrix stiffness, BeamMatrix mass, int[] dofs, double length, BeamSection section) {
        addStiffness(stiffness, dofs, length, section);
        addMass(mass, dofs, length, section);
    }

    private static double shear(double length, BeamSection section) {
        return 12.0 * section.bending() / (section.shear() * length * length);
    }

    private static void addStiffness(BeamMatrix stiffness, int[] dofs, double length, BeamSection section) {
        double phi = shear(length, section);
        double unit = section.bending() / (length * length * length * (1.0 + phi));
        double couple = 6.0 * length * unit;
        double near = (4.0 + phi) * length * length * unit;
        double far = (2.0 - phi) * length * length * unit;
        fill(stiffness, dofs, 12.0 * unit, couple, -12.0 * unit, couple, near, -couple, far);
    }

    private static void addMass(BeamMatrix mass, int[] dofs, double length, BeamSection section) {
        double phi = shear(length, section);
        double squared = phi * phi;
        double part = 1.0 / ((1.0 + phi) * (1.0 + phi));
        double m = section.massPerLength() * length * part;
        fill(
                mass,
                dofs,
                m * (13.0 / 35.0 + 7.0 * phi / 10.0 + squared / 3.0),
                m * length * (11.0 / 210.0 + 11.0 * phi / 120.0 + squared / 24.0),
                m * (9.0 / 70.0 + 3.0 * phi / 10.0 + squared / 6.0),
                -m * length * (13.0 / 420.0 + 3.0 * phi / 40.0 + squared / 24.0),
                m * length * length * (1.0 / 105.0 + phi / 60.0 + squared / 120.0),
                m * length * (13.0 / 420.0 + 3.0 * phi / 40.0 + squared / 24.0),
                -m * length * length * (1.0 / 140.0 + phi / 60.0 + squared / 120.0));
        double r = section.rotaryInertia() / length * part;
        fill(
                mass,
                dofs,
                r * 6.0 / 5.0,
                r * length * (1.0 / 10.0 - phi / 2.0),
                -r * 6.0 / 5.0,
                r * length * (1.0 / 10.0 - phi / 2.0),
                r * length * length * (2.0 / 15.0 + phi / 6.0 + squared / 3.0),
                -r * length * (1.0 / 10.0 - phi / 2.0),
                r * length * length * (-1.0 / 30.0 - phi / 6.0 + squared / 6.0));
    }

    /** The seven different entries of an element that is alike from both ends. */
    private static void fill(
            BeamMatrix matrix,
            int[] at,
            double deflection,
            double coupled,
            double across,
            double acrossCoupled,
            double slope,
            double acrossSlope,
            double slopes) {
        matrix.add(at[0], at[0], deflection);
        matrix.add(at[1], at[0], coupled);
        matrix.add(at[2], at[0], across);
        matrix.add(at[3], at[0], acrossCoupled);
        matrix.add(at[1], at[1], slope);
        matrix.add(at[2], at[1], acrossSlope);
        matrix.add(at[3], at[1], slopes);
        matrix.add(at[2], at[2], deflection);
        matrix.add(at[3], at[2], -coupled);
        matrix.add(at[3], at[3], slope);
    }
}
