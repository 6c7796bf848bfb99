package drivetrain.driveshaft;

/**
 * What a stretch of a beam is to bending, in SI units.
 *
 * @param bending bending stiffness E I (N m^2)
 * @param shear shear stiffness k G A (N)
 * @param massPerLength mass per length (kg/m)
 * @param rotaryInertia rotary inertia per length, rho I (kg m)
 */
record BeamSection(double bending, double shear, double massPerLength, double rotaryInertia) {

    static BeamSection of(Tube tube, ShaftMaterial material) {
        double massPerLength = material.density().si() * tube.area();
        return of(tube, material, massPerLength);
    }

    /** A section whose mass is not that of its metal, such as a yoke that is taken as a bar. */
    static BeamSection of(Tube tube, ShaftMaterial material, double massPerLength) {
        return new BeamSection(
                material.modulus().si() * tube.secondMoment(),
                material.shearCoefficient(tube) * material.shearModulus().si() * tube.area(),
                massPerLength,
                massPerLength * tube.secondMoment() / tube.area());
    }
}
