package drivetrain.gearing;

import drivetrain.finding.Caution;
import java.util.List;

/** The warnings that belong to every answer of this room. */
public final class GearingCautions {

    private static final Caution TIED_AXLES = new Caution(
            "tied axles",
            "Part-time or locked four-wheel drive winds up on a dry road: the vehicle steers badly and shafts, joints or the transfer case can break. "
                    + "Use it on loose or slippery ground only.");

    private static final Caution WHEEL_TORQUE = new Caution(
            "wheel torque",
            "Low range and a converter at stall can break shafts, joints and axle gears that hold on the road. Compare these torques with the "
                    + "ratings from the suppliers of the parts before driving.");

    private static final Caution ROTATING_SHAFTS = new Caution(
            "rotating shafts",
            "In an overdriven gear the driveshafts turn faster than the engine. Have balance, length and critical speed of the shafts "
                    + "checked by a driveline shop.");

    private static final Caution SPEEDOMETER = new Caution(
            "speedometer",
            "After a change of tire, axle or hub reduction check the speedometer against a measured speed. Local vehicle law decides whether the "
                    + "change needs an inspection; ask a licensed inspector.");

    private static final List<Caution> ALL = List.of(TIED_AXLES, WHEEL_TORQUE, ROTATING_SHAFTS, SPEEDOMETER);

    private GearingCautions() {}

    /**
     * Returns every caution.
     *
     * @return the cautions
     */
    public static List<Caution> all() {
        return ALL;
    }

    /**
     * Returns the caution that a transfer case calls for.
     *
     * @param tie how it ties the axles
     * @return the caution about tied axles, or nothing where they cannot be tied
     */
    public static List<Caution> of(AxleTie tie) {
        return tie.isTied() ? List.of(TIED_AXLES) : List.of();
    }

    /**
     * Returns the cautions that a wheel torque calls for.
     *
     * @param tie how the transfer case ties the axles
     * @return the cautions
     */
    public static List<Caution> torque(AxleTie tie) {
        return tie.isTied() ? List.of(WHEEL_TORQUE, TIED_AXLES) : List.of(WHEEL_TORQUE);
    }

    /**
     * Returns the cautions that a driveshaft speed calls for.
     *
     * @return the cautions
     */
    public static List<Caution> shafts() {
        return List.of(ROTATING_SHAFTS);
    }

    /**
     * Returns the cautions that a speedometer reading calls for.
     *
     * @return the cautions
     */
    public static List<Caution> speedometer() {
        return List.of(SPEEDOMETER);
    }
}
