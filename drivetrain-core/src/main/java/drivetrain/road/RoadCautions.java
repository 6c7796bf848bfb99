package drivetrain.road;

import drivetrain.finding.Caution;
import java.util.List;

/** The warnings that belong to the answers of this room. */
public final class RoadCautions {

    private static final Caution SPEED = new Caution(
            "speed",
            "A speed that the engine can reach is not one that tires, brakes, steering, shafts or the road allow. Keep to the lowest of their limits and "
                    + "to the law; test on a closed course only.");

    private static final Caution GRADES = new Caution(
            "steep ground",
            "A vehicle tips or slides long before these limits when the ground is uneven, the slope lies across or the load is high. Walk the "
                    + "ground first; recovery work belongs to trained people.");

    private static final Caution LOADS = new Caution(
            "broken parts",
            "Shock, worn parts, hopping tires and ground that holds better than assumed exceed these torques. A broken shaft or axle can take the brakes "
                    + "and the steering with it: have the parts chosen and fitted by a driveline shop.");

    private static final Caution STALL = new Caution(
            "converter at stall",
            "At stall all of the engine's power heats the transmission oil within seconds. Hold it no longer than the transmission's maker allows, with "
                    + "wheels chocked, brakes sound and nobody in front of or behind the vehicle.");

    private RoadCautions() {}

    /**
     * Returns the caution that a top speed or a run calls for.
     *
     * @return the caution
     */
    public static List<Caution> speed() {
        return List.of(SPEED);
    }

    /**
     * Returns the caution that grades and grip call for.
     *
     * @return the caution
     */
    public static List<Caution> grades() {
        return List.of(GRADES);
    }

    /**
     * Returns the caution that torques in parts call for.
     *
     * @return the caution
     */
    public static List<Caution> loads() {
        return List.of(LOADS);
    }

    /**
     * Returns the caution that a converter at stall calls for.
     *
     * @return the caution
     */
    public static List<Caution> stall() {
        return List.of(STALL);
    }
}
