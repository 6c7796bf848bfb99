package drivetrain.driveshaft;

import drivetrain.finding.Outcome;
import drivetrain.quantity.Angle;

/**
 * How to turn the sliding spline so that the joints on either side of it cancel as well as they can.
 *
 * @param teeth by how many teeth to turn the yoke at the axle's end: positive clockwise for one who looks from the transfer case toward the axle; 0 to leave it
 * @param phase the phase of the yokes then
 * @param before the equivalent residual angle now
 * @param after the equivalent residual angle then
 */
public record Reclocking(int teeth, Angle phase, Angle before, Angle after) {

    private static final double WORTH_A_TOOTH = Math.toRadians(0.005);

    /**
     * Tries every tooth.
     *
     * @param installed the shaft in its line
     * @return the best one, with the fewest teeth to turn; or why turning does nothing
     */
    public static Outcome<Reclocking> of(InstalledShaft installed) {
        Driveshaft shaft = installed.shaft();
        int last = shaft.joints().size() - 1;
        if (shaft.joints().get(last).isDouble() || shaft.joints().get(last - 1).isDouble()) {
            return Outcome.notEvaluated("a double joint turns evenly however the spline is put together");
        }
        return Outcome.of(shaft.slip(), "the shaft's spline teeth are not given, such as slip 24 teeth")
                .map(slip -> best(installed, slip));
    }

    private static Reclocking best(InstalledShaft installed, SlipSpline slip) {
        double present = installed.phase(installed.shaft().pieces().size() - 1);
        double before = installed.residual().radians();
        Reclocking best = at(installed, slip, 0, present, before);
        for (int teeth = 1; teeth <= slip.teeth() / 2; teeth++) {
            for (int way = 1; way >= -1; way -= 2) {
                Reclocking other = at(installed, slip, way * teeth, present, before);
                if (other.after.toRadians() < best.after.toRadians() - WORTH_A_TOOTH) {
                    best = other;
                }
            }
        }
        return best;
    }

    private static Reclocking at(InstalledShaft installed, SlipSpline slip, int teeth, double present, double before) {
        double full = present + teeth * slip.pitch().toRadians();
        Angle phase = Angle.ofRadians(teeth == 0 ? present : Math.IEEEremainder(full, 2.0 * Math.PI));
        InstalledShaft turned =
                new InstalledShaft(installed.place(), installed.shaft().withLastPhase(phase), installed.line());
        return new Reclocking(
                teeth, phase, Angle.ofRadians(before), turned.residual().equivalentAngle());
    }
}
