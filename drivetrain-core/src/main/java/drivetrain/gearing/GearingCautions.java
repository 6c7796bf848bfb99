package drivetrain.gearing;

import drivetrain.finding.Caution;
import java.util.List;

/** The warnings that belong to every answer of this room. */
public final class GearingCautions {

    private static final Caution TIED_AXLES = new Caution(
            "tied axles",
            "Part-time or locked four-wheel drive winds up on a dry road: the vehicle steers badly and shafts, joints or the transfer case can break. "
                    + "Use it on loose or slippery ground only.");

    private static final Caution TORQUE = new Caution(
            "wheel torque",
            "Low range and a converter at stall can break shafts, joints and axle gears that hold on the road. Compare these torques with the "
                    + "ratings from the suppliers of the parts before driving.");

    private static final Caution SHAFTS = new Caution(
            "rotating shafts",
            "In an overdriven gear the driveshafts turn faster than the engine. Have balance, length and critical speed of the shafts checked by a "
                    + "driveline shop.");

    private static final Caution SPEEDOMETER = new Caution(
            "speedometer",
            "After a change of tire, axle or hub reduction check the speedometer against a measured speed. Local vehicle law decides whether the "
                    + "change needs an inspection; ask a licensed inspector.");

    private static final List<Caution> ALL = List.of(TIED_AXLES, TORQUE, SHAFTS, SPEEDOMETER);

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
     * Returns the cautions that torque through a transfer case calls for.
     *
     * @param tie how it ties the axles
     * @return the caution about torque and, where the axles can be tied, that about tied axles
     */
    public static List<Caution> of(AxleTie tie) {
        return tie.isTied() ? List.of(TORQUE, TIED_AXLES) : List.of(TORQUE);
    }

    /**
     * Returns the caution that driveshaft speeds call for.
     *
     * @return the caution
     */
    public static List<Caution> rotatingShafts() {
        return List.of(SHAFTS);
    }

    /**
     * Returns the caution that a speedometer reading calls for.
     *
     * @return the caution
     */
    public static List<Caution> speedometer() {
        return List.of(SPEEDOMETER);
    }
}
