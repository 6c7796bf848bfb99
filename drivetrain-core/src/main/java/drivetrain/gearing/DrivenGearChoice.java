package drivetrain.gearing;

import java.util.Optional;

/**
 * The driven speedometer gears on both sides of the exact one. Fewer teeth turn the cable faster and show more; because a speedometer must
 * never show too little, the gear with more teeth is illegal however near it is.
 *
 * @param exactTeeth the tooth count that would show the true speed, not a whole number as a rule
 * @param fewer the gear with the next lower whole count, or the exact one; empty if out of range
 * @param more the gear with the next higher whole count; empty if out of range, or if the exact count is whole
 */
public record DrivenGearChoice(double exactTeeth, Optional<DrivenGear> fewer, Optional<DrivenGear> more) {

    /** A count this near to a whole number is whole but for rounding. */
    private static final double WHOLE = 1e-9;

    /**
     * Finds the gears.
     *
     * @param fittedTeeth the teeth of the driven gear now fitted
     * @param shownOverTrue shown speed over true speed with it
     * @return the choice
     */
    static DrivenGearChoice of(int fittedTeeth, double shownOverTrue) {
        double exact = fittedTeeth * shownOverTrue;
        double nearest = Math.rint(exact);
        if (Math.abs(exact - nearest) <= WHOLE * exact) {
            return new DrivenGearChoice(nearest, gear((int) nearest, nearest), Optional.empty());
        }
        int floor = (int) Math.floor(exact);
        return new DrivenGearChoice(exact, gear(floor, exact), gear(floor + 1, exact));
    }

    private static Optional<DrivenGear> gear(int teeth, double exact) {
        return DrivenGear.allows(teeth) ? Optional.of(DrivenGear.of(teeth, exact)) : Optional.empty();
    }

    /**
     * Returns the gear to fit.
     *
     * @return the legal one, or empty if none is: then the driving gear or an adapter box has to change
     */
    public Optional<DrivenGear> legal() {
        return fewer.filter(DrivenGear::legal).or(() -> more.filter(DrivenGear::legal));
    }
}
