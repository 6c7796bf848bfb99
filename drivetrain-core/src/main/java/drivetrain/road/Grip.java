package drivetrain.road;

import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Force;
import drivetrain.quantity.Mass;

/**
 * The force that the tires can put on the ground, with the load that it shifts to the rear axle.
 *
 * @param balance how the weight divides between the axles
 * @param friction friction force over load, more than 0, up to 1.5
 * @param rolling rolling resistance over load, zero or more
 */
public record Grip(AxleBalance balance, double friction, double rolling) {

    private static final Source SOURCE = Source.derived(
            "moments about the contact of one axle: the force at the ground shifts load from the front to the rear axle by height over wheelbase");

    /**
     * Checks the friction.
     *
     * @throws drivetrain.refusal.RefusedException if it is not above 0 and up to 1.5
     */
    public Grip {
        Surface.requireFriction(friction);
    }

    /**
     * Returns the greatest force that a layout can put down.
     *
     * @param layout which wheels drive
     * @param grade the grade that it stands on
     * @return the sum of the forces of all driven wheels
     */
    public Force greatest(DriveLayout layout, Grade grade) {
        double load = balance.total(grade);
        double shift = balance.leverage();
        double resistance = rolling * load;
        double front = load * balance.frontShare() + shift * resistance;
        double rear = load * (1.0 - balance.frontShare()) - shift * resistance;
        double force = switch (layout) {
            case REAR -> upTo(friction * load, friction * rear, 1.0 - friction * shift);
            case FRONT -> friction * front / (1.0 + friction * shift);
            case OPEN ->
                Math.min(
                        2.0 * friction * front / (1.0 + 2.0 * friction * shift),
                        upTo(friction * load, 2.0 * friction * rear, 1.0 - 2.0 * friction * shift));
            case LOCKED -> friction * load;
        };
        return Force.ofNewtons(Math.max(0.0, force));
    }

    /**
     * Returns the greatest force with both axles driven and tied, for which only the mass matters.
     *
     * @param mass the mass with its load
     * @param friction friction force over load, more than 0, up to 1.5
     * @param grade the grade that it stands on
     * @return friction x weight x cosine of the slope
     * @throws drivetrain.refusal.RefusedException if the friction is not above 0 and up to 1.5
     */
    public static Force tied(Mass mass, double friction, Grade grade) {
        return Force.ofNewtons(Surface.requireFriction(friction) * mass.si() * RoadLoad.GRAVITY * grade.cosine());
    }

    /** The quotient, or the most where the shifted load grows as fast as the force. */
    private static double upTo(double most, double dividend, double divisor) {
        return divisor <= 0.0 ? most : Math.min(most, dividend / divisor);
    }

    /**
     * Returns the steepest grade that grip holds at a steady speed, whatever the engine can do.
     *
     * @param layout which wheels drive
     * @return the grade, or why it has none
     */
    public Outcome<Grade> steepest(DriveLayout layout) {
        double shift = balance.leverage();
        double front = balance.frontShare();
        double rear = 1.0 - front;
        double tangent = switch (layout) {
            case REAR -> upTo(friction - rolling, friction * rear - rolling, 1.0 - friction * shift);
            case FRONT -> (friction * front - rolling) / (1.0 + friction * shift);
            case OPEN ->
                Math.min(
                        (2.0 * friction * front - rolling) / (1.0 + 2.0 * friction * shift),
                        upTo(friction - rolling, 2.0 * friction * rear - rolling, 1.0 - 2.0 * friction * shift));
            case LOCKED -> friction - rolling;
        };
        double tips = front / shift;
        return tangent <= 0.0
                ? Outcome.notEvaluated("the tires grip less than the ground resists, even on the level")
                : Outcome.of(new Grade(Math.min(tangent, tips)));
    }

    /**
     * Shows how the greatest force is worked out.
     *
     * @param layout which wheels drive
     * @param grade the grade
     * @return the working
     */
    public Working working(DriveLayout layout, Grade grade) {
        Force greatest = greatest(layout, grade);
        Force net = Force.ofNewtons(greatest.si() - rolling * balance.total(grade));
        return Working.of("grip with " + layout.label())
                .input("mass", "m", Figure.of(balance.mass(), Display.MASS), "vehicle")
                .input("share of the weight in front", "s", Figure.percent(balance.frontShare(), 0), "vehicle")
                .input("wheelbase", "L", Figure.of(balance.wheelbase(), Display.DIMENSION), "vehicle")
                .input(
                        "height of the center of gravity",
                        "h",
                        Figure.of(balance.height(), Display.DIMENSION),
                        "vehicle")
                .input("friction", "mu", Figure.plain(friction, 2), "table")
                .input("rolling resistance", "c", Figure.plain(rolling, 3), "table")
                .input("grade", "tan a", grade.figure(), "given")
                .step("greatest force, " + layout.label(), formula(layout), Figure.of(greatest, Display.FORCE))
                .step(
                        "load on the front axle then",
                        "W_f = m g cos a s - (F - c m g cos a) h / L",
                        Figure.of(balance.front(grade, net), Display.FORCE))
                .step(
                        "load on the rear axle then",
                        "W_r = m g cos a - W_f",
                        Figure.of(balance.rear(grade, net), Display.FORCE))
                .source(SOURCE)
                .build();
    }

    private static String formula(DriveLayout layout) {
        return switch (layout) {
            case REAR -> "F = mu m g cos a (1 - s - c h / L) / (1 - mu h / L)";
            case FRONT -> "F = mu m g cos a (s + c h / L) / (1 + mu h / L)";
            case OPEN -> "F = twice mu times the load on the lighter axle";
            case LOCKED -> "F = mu m g cos a";
        };
    }
}
