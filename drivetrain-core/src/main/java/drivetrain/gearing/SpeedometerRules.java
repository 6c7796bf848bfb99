package drivetrain.gearing;

import drivetrain.finding.Finding;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Speed;

/** The limits within which a speedometer may err. */
final class SpeedometerRules {

    /** Shown above true: 0 at least, 0.1 of the true speed + 4 km/h at most. */
    static final Source UN_R39 =
            Source.standard("UN Regulation No. 39, Revision 1, 5.3; test speeds (5.2.5) from memory");

    static final Source CFR = Source.standard("49 CFR 393.82");

    private static final double FRACTION = 0.1;
    private static final double ALLOWANCE_KMH = 4.0;
    /** Test speeds of 5.2.5 for a vehicle that reaches 150 km/h or more; from memory. A slower one is tested at 80 % of its top speed instead. */
    private static final double[] TEST_SPEEDS_KMH = {40.0, 80.0, 120.0};
    /** Rounding of double arithmetic must not fail an equality: 1e-9 of the speed. */
    private static final double ROUNDING = 1e-9;

    private static final Speed CFR_SPEED = Speed.ofMilesPerHour(50.0);
    private static final double CFR_TOLERANCE_MPH = 5.0;

    private SpeedometerRules() {}

    static boolean keepsUnR39(double shownOverTrue) {
        for (double speed : TEST_SPEEDS_KMH) {
            if (margin(speed, shownOverTrue) < 0.0) {
                return false;
            }
        }
        return true;
    }

    /** The distance to the nearer limit in km/h, negative where it is exceeded, zero at equality. */
    private static double margin(double trueKmh, double shownOverTrue) {
        double error = (shownOverTrue - 1.0) * trueKmh;
        double margin = Math.min(error, FRACTION * trueKmh + ALLOWANCE_KMH - error);
        return Math.abs(margin) <= ROUNDING * trueKmh ? 0.0 : margin;
    }

    static Finding unR39(double shownOverTrue) {
        double worst = TEST_SPEEDS_KMH[0];
        for (double speed : TEST_SPEEDS_KMH) {
            if (margin(speed, shownOverTrue) < margin(worst, shownOverTrue)) {
                worst = speed;
            }
        }
        return unR39At(Speed.ofKilometersPerHour(worst), shownOverTrue);
    }

    static Finding unR39At(Speed actual, double shownOverTrue) {
        double kmh = actual.requirePositive("true speed").toKilometersPerHour();
        double margin = margin(kmh, shownOverTrue);
        boolean low = shownOverTrue < 1.0 + FRACTION / 2.0 + ALLOWANCE_KMH / kmh / 2.0;
        double limit = low ? kmh : kmh * (1.0 + FRACTION) + ALLOWANCE_KMH;
        String statement = "at a true " + DecimalText.significant(kmh, 4) + " km/h it shows "
                + DecimalText.fixed(kmh * shownOverTrue, 1) + " km/h; it must show "
                + DecimalText.fixed(kmh, 1) + " to " + DecimalText.fixed(kmh * (1.0 + FRACTION) + ALLOWANCE_KMH, 1)
                + " km/h";
        return Finding.of(
                "speedometer",
                road(kmh * shownOverTrue),
                road(limit),
                road(margin),
                margin >= 0.0 ? Verdict.MET : Verdict.EXCEEDED,
                statement,
                UN_R39);
    }

    static Finding usCommercial(double shownOverTrue) {
        Speed shown = CFR_SPEED.times(shownOverTrue);
        double error = Math.abs(shown.minus(CFR_SPEED).toMilesPerHour());
        double margin = CFR_TOLERANCE_MPH - error;
        boolean kept = margin >= -ROUNDING * CFR_SPEED.toMilesPerHour();
        String statement = "at a true 50 mph it shows " + DecimalText.fixed(shown.toMilesPerHour(), 1)
                + " mph; within 5 mph is asked of commercial motor vehicles in the United States, for information";
        return Finding.of(
                "speedometer, US commercial vehicles",
                GearWorkings.road(shown),
                GearWorkings.road(Speed.ofMilesPerHour(CFR_TOLERANCE_MPH)),
                GearWorkings.road(Speed.ofMilesPerHour(margin)),
                kept ? Verdict.MET : Verdict.MARGINAL,
                statement,
                CFR);
    }

    private static Figure road(double kmh) {
        return Figure.of(Speed.ofKilometersPerHour(kmh), Display.ROAD_SPEED);
    }
}
