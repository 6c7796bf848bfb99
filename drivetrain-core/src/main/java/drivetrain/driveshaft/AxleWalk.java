package drivetrain.driveshaft;

/** A walk over the travel of an axle, from place to place. */
@FunctionalInterface
public interface AxleWalk {

    /**
     * Tells where the axle stands.
     *
     * @param heave how far its middle is raised from ride height, in meters
     * @param roll how far it rolls against the body, in radians, positive with the left side up
     * @return its place
     * @throws drivetrain.refusal.RefusedException if the suspension cannot follow
     */
    AxlePose pose(double heave, double roll);
}
