package drivetrain.driveshaft;

import drivetrain.finding.Assumption;
import java.util.List;

/** What guides a live axle, and how far it moves. Positions are taken from the middle of the axle at ride height, in the axes of ISO 8855. */
public sealed interface Suspension permits RadiusArms, FourLinks, LeafSprings {

    /**
     * Reads a suspension.
     *
     * <p>First what guides the axle, then in any order {@code pinion 260 mm ahead 30 mm above 40 mm left} (the pinion's joint center, from the middle
     * of the axle), {@code bump 90 mm}, {@code droop 120 mm} (travel of a wheel from ride height) and {@code track 1490 mm}.
     *
     * <ul>
     *   <li>{@code radius arms 880 mm behind 40 mm below 640 mm apart}: the bushes at the chassis, from the middle of the axle;
     *   <li>{@code four links, lower from 20 mm behind 90 mm below 900 mm apart to 780 mm ahead 110 mm below 700 mm apart, upper from ... to ...}: each pair of
     *       links from the axle to the chassis;
     *   <li>{@code leaf springs 560 mm ahead 25 mm below 1000 mm apart}: the fixed eyes; where the pinion was seen to turn, {@code turning 1.5 deg up per
     *       100 mm} of bump.
     * </ul>
     *
     * Radius arms and four links may have {@code panhard from 20 mm ahead 60 mm above 450 mm left to 20 mm ahead 90 mm above 480 mm right}, from the axle
     * to the chassis.
     *
     * @param text the text
     * @return the suspension
     * @throws drivetrain.refusal.RefusedException if the text is something else, with the index of the fault
     */
    static Suspension parse(String text) {
        return new SuspensionText(text).read();
    }

    /**
     * Returns the travel and where the pinion sits.
     *
     * @return the travel
     */
    AxleTravel travel();

    /**
     * Tells where the axle stands.
     *
     * @param heave how far its middle is raised from ride height, in meters
     * @param roll how far it rolls against the body, in radians, positive with the left side up
     * @return its place
     * @throws drivetrain.refusal.RefusedException if the suspension cannot follow
     */
    AxlePose pose(double heave, double roll);

    /**
     * Starts a walk over the travel, which finds its way faster from place to place than from ride height to each.
     *
     * @return what tells where the axle stands; not for use by several threads
     */
    default AxleWalk walk() {
        return this::pose;
    }

    /**
     * Returns what is taken for granted about the guidance of the axle.
     *
     * @return the assumptions
     */
    List<Assumption> assumptions();

    /**
     * Writes the suspension.
     *
     * @return the text that {@link #parse} reads back as an equal suspension
     */
    String text();
}
