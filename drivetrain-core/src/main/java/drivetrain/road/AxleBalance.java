package drivetrain.road;

import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Force;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.refusal.Refusal;

/**
 * How the weight divides between the axles, at rest and while a force at the ground or a grade shifts it to the rear.
 *
 * @param mass the mass with its load, 100 to 50,000 kg
 * @param frontShare the share of the weight on the front axle, standing on the level; more than 0, less than 1
 * @param wheelbase from front to rear axle, 1 to 10 m
 * @param height the height of the center of gravity above the ground, 0.1 to 3 m
 */
public record AxleBalance(Mass mass, double frontShare, Length wheelbase, Length height) {

    /** The shortest wheelbase, 1 m. */
    public static final Length SHORTEST = Length.ofMeters(1.0);

    /** The longest wheelbase, 10 m. */
    public static final Length LONGEST = Length.ofMeters(10.0);

    /** The lowest center of gravity, 0.1 m. */
    public static final Length LOWEST = Length.ofMeters(0.1);

    /** The highest center of gravity, 3 m. */
    public static final Length HIGHEST = Length.ofMeters(3.0);

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range, or the center of gravity does not lie between the axles
     */
    public AxleBalance {
        mass.requireBetween("vehicle mass", RoadLoad.LEAST_MASS, RoadLoad.MOST_MASS, Mass.KILOGRAM);
        requireShare(frontShare);
        wheelbase.requireBetween("wheelbase", SHORTEST, LONGEST, Length.MILLIMETER);
        height.requireBetween("height of the center of gravity", LOWEST, HIGHEST, Length.MILLIMETER);
    }

    /**
     * Returns a share of the weight that is possible and refuses any other.
     *
     * @param share the share of the weight on the front axle
     * @return the share
     * @throws drivetrain.refusal.RefusedException if it is not between 0 and 1, which puts the center of gravity outside the wheelbase
     */
    public static double requireShare(double share) {
        if (!(share > 0.0 && share < 1.0)) {
            throw Refusal.of(
                            "load split",
                            Double.isFinite(share)
                                    ? DecimalText.fixed(100.0 * share, 1) + " %"
                                    : Double.toString(share),
                            "puts the center of gravity outside the wheelbase")
                    .allowing("more than 0 %, less than 100 % of the weight on the front axle")
                    .asException();
        }
        return share;
    }

    /**
     * Returns the load on the front axle.
     *
     * @param grade the grade
     * @param netForce the force along the road at the ground, driving force less rolling resistance
     * @return the load, which is zero where the axle would lift
     */
    public Force front(Grade grade, Force netForce) {
        return Force.ofNewtons(Math.max(0.0, total(grade) * frontShare - netForce.si() * leverage()));
    }

    /**
     * Returns the load on the rear axle.
     *
     * @param grade the grade
     * @param netForce the force along the road at the ground, driving force less rolling resistance
     * @return the load, at most all that presses on the ground
     */
    public Force rear(Grade grade, Force netForce) {
        return Force.ofNewtons(total(grade) - front(grade, netForce).si());
    }

    double total(Grade grade) {
        return mass.si() * RoadLoad.GRAVITY * grade.cosine();
    }

    /** Height of the center of gravity over wheelbase. */
    double leverage() {
        return height.ratioTo(wheelbase);
    }
}
