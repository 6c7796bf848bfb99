package drivetrain.gearing;

import drivetrain.quantity.AngularSpeed;

/**
 * One shift to the next taller gear.
 *
 * @param from the gear left
 * @param to the gear taken
 * @param step the ratio of the gear left over that of the gear taken, above 1
 * @param before the engine speed before the shift
 * @param after the engine speed after the shift, at the same road speed and with nothing slipping
 */
public record Upshift(DriveGear from, DriveGear to, double step, AngularSpeed before, AngularSpeed after) {

    static Upshift between(DriveGear from, DriveGear to, AngularSpeed before) {
        double step = from.totalRatio() / to.totalRatio();
        return new Upshift(from, to, step, before, before.dividedBy(step));
    }
}
