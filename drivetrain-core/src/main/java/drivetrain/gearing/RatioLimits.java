package drivetrain.gearing;

import drivetrain.quantity.DecimalText;
import drivetrain.refusal.Refusal;

/**
 * The ratios that a kind of part can have; common practice, no source. What lies outside is a slip of the pen, not a part.
 *
 * @param subject what the ratio belongs to
 * @param least the least ratio
 * @param most the greatest ratio
 */
record RatioLimits(String subject, double least, double most) {

    static final RatioLimits ANY = new RatioLimits("ratio", Ratio.LEAST, Ratio.MOST);
    static final RatioLimits GEAR = new RatioLimits("gear ratio", Ratio.LEAST, Ratio.MOST);
    static final RatioLimits RANGE = new RatioLimits("transfer case ratio", 0.5, 10.0);
    static final RatioLimits AUXILIARY = new RatioLimits("auxiliary ratio", 0.5, 5.0);
    static final RatioLimits AXLE = new RatioLimits("axle ratio", 1.5, 12.0);
    static final RatioLimits HUB = new RatioLimits("hub reduction", 1.0, 7.0);

    boolean allow(double ratio) {
        return ratio >= least && ratio <= most;
    }

    void require(Ratio ratio) {
        if (!allow(ratio.value())) {
            throw Refusal.of(subject, ratio.text(), "is out of range")
                    .allowing(text())
                    .asException();
        }
    }

    String text() {
        return DecimalText.shortest(least) + " to " + DecimalText.shortest(most);
    }
}
