package drivetrain.gearing;

import drivetrain.refusal.Refusal;

/**
 * A driven speedometer gear that could be fitted.
 *
 * @param teeth its teeth, 5 to 80
 * @param shownOverTrue shown speed over true speed with it
 * @param legal true if the reading keeps UN Regulation 39 at its test speeds
 */
public record DrivenGear(int teeth, double shownOverTrue, boolean legal) {

    /**
     * Checks the teeth.
     *
     * @throws drivetrain.refusal.RefusedException if the count is out of range
     */
    public DrivenGear {
        requireTeeth(teeth);
    }

    static DrivenGear of(int teeth, double exactTeeth) {
        double shownOverTrue = exactTeeth / teeth;
        return new DrivenGear(teeth, shownOverTrue, SpeedometerRules.keepsUnR39(shownOverTrue));
    }

    static boolean allows(int teeth) {
        return teeth >= Ratio.FEWEST_TEETH && teeth <= Ratio.MOST_TEETH;
    }

    static void requireTeeth(int teeth) {
        if (!allows(teeth)) {
            throw Refusal.of("speedometer gear", Integer.toString(teeth), "has a tooth count out of range")
                    .allowing(Ratio.FEWEST_TEETH + " to " + Ratio.MOST_TEETH + " teeth")
                    .asException();
        }
    }
}
