package drivetrain.driveshaft;

import drivetrain.finding.Caution;
import java.util.List;

/** The warnings that belong to the speed and the torque of a shaft. */
public final class ShaftSpeedCautions {

    private static final Caution WHIRL = new Caution(
            "rotating shaft",
            "A shaft that whirls or breaks can pierce the floor and throw the vehicle. Have it built and balanced by a driveline shop, fit a "
                    + "safety loop where local rules ask for one, and never stand beside a shaft that turns.");

    private static final Caution STRENGTH = new Caution(
            "driveshaft strength",
            "A tube is rarely the weakest part: welds, splines, joints and flanges have ratings of their own. Compare the greatest torque with the "
                    + "supplier's sheet of each before driving.");

    private static final Caution ROAD_TEST = new Caution(
            "road test",
            "Read a vibration meter with a second person at the wheel, or with the vehicle on stands on a closed yard, wheels chocked and nobody beside "
                    + "the shafts.");

    private ShaftSpeedCautions() {}

    /**
     * Returns the cautions about whirling.
     *
     * @return the cautions
     */
    public static List<Caution> whirl() {
        return List.of(WHIRL);
    }

    /**
     * Returns the cautions about strength.
     *
     * @return the cautions
     */
    public static List<Caution> strength() {
        return List.of(STRENGTH);
    }

    /**
     * Returns the cautions about finding a vibration.
     *
     * @return the cautions
     */
    public static List<Caution> roadTest() {
        return List.of(ROAD_TEST);
    }
}
