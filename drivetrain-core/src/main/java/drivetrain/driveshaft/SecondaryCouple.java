package drivetrain.driveshaft;

import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Angle;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Torque;

/**
 * The bending couples that a joint at an angle puts on its two shafts while it carries a torque. They try to straighten the joint, and the bearings of the shafts
 * have to take them.
 *
 * <p>Those of a single joint swing between zero and their greatest value twice a turn: half is steady, half vibrates at the second order. Those of a double joint, which turns
 * evenly, stand still.
 *
 * @param onDriving the greatest couple on the driving shaft: T tan b, of a double joint T tan b/2
 * @param onDriven the greatest couple on the driven shaft: T sin b, of a double joint T tan b/2
 * @param swings true for a single joint
 */
public record SecondaryCouple(Torque onDriving, Torque onDriven, boolean swings) {

    private static final Source SINGLE = Source.derived(
            "the torque passes a single joint square to the plane of its cross: along the driven shaft at one time, along the driving shaft a quarter turn later");
    private static final Source DOUBLE = Source.derived(
            "equal torques on both sides of a joint that turns evenly balance with two equal couples, T tan b/2 in the plane of the joint");

    /**
     * Finds the couples of a single joint.
     *
     * @param torque the torque in the driving shaft
     * @param angle the operating angle, 0 to less than 90 degrees
     * @return the couples
     * @throws drivetrain.refusal.RefusedException if the torque is not greater than zero
     */
    public static SecondaryCouple of(Torque torque, Angle angle) {
        torque.requirePositive("shaft torque");
        return new SecondaryCouple(
                torque.times(Math.tan(angle.toRadians())), torque.times(Math.sin(angle.toRadians())), true);
    }

    /**
     * Finds the couples of a double joint, as long as it turns evenly.
     *
     * @param torque the torque in the shafts
     * @param angle the operating angle of the whole joint, 0 to less than 180 degrees
     * @return the couples
     * @throws drivetrain.refusal.RefusedException if the torque is not greater than zero
     */
    public static SecondaryCouple ofDouble(Torque torque, Angle angle) {
        torque.requirePositive("shaft torque");
        Torque couple = torque.times(Math.tan(angle.toRadians() / 2.0));
        return new SecondaryCouple(couple, couple, false);
    }

    /**
     * Returns how far the greater of the couples swings about its mean.
     *
     * @return half the greater couple of a single joint, at the second order; zero of a double joint
     */
    public Torque secondOrder() {
        return swings ? onDriving.dividedBy(2.0) : Torque.ofNewtonMeters(0.0);
    }

    /**
     * Works the couples out.
     *
     * @param name the joint, such as {@code rear joint 1}
     * @param torque the torque they were found for
     * @param angle the angle they were found for
     * @return the working
     */
    Working working(String name, Torque torque, Angle angle) {
        Working.Builder working = Working.of("secondary couple of the " + name)
                .input("greatest torque of the shaft", "T", Figure.of(torque, Display.TORQUE), "load path")
                .input("angle of the " + name, "b", Figure.of(angle, Display.JOINT_ANGLE), "line")
                .step(
                        "couple on the driving side of the " + name,
                        swings ? "T tan b" : "T tan b/2",
                        Figure.of(onDriving, Display.TORQUE))
                .step(
                        "couple on the driven side of the " + name,
                        swings ? "T sin b" : "T tan b/2",
                        Figure.of(onDriven, Display.TORQUE));
        if (swings) {
            working.step(
                    "second order of the " + name,
                    "T tan b / 2, about a mean as great",
                    Figure.of(secondOrder(), Display.TORQUE));
        }
        return working.source(swings ? SINGLE : DOUBLE).build();
    }
}
