package drivetrain.road;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;

/** How rolling resistance rises with speed on a hard surface. */
final class RollingResistance {

    /**
     * Tire pressure for which the rise is taken, 2.4 bar: common practice, no source.
     */
    static final double PRESSURE_BAR = 2.4;

    /**
     * The rise at 100 km/h, a share of the load: 0.0095 / p with p in bar, from 0.005 + (1/p)(0.01 + 0.0095 (v / 100 km/h)^2) on a public engineering
     * reference page.
     */
    static final double RISE_AT_100_KMH = 0.0095 / PRESSURE_BAR;

    static final Source SPEED_SOURCE = Source.commonPractice(
            "a public engineering reference page: 0.005 + (1/p)(0.01 + 0.0095 (v / 100 km/h)^2), p in bar; its speed term at 2.4 bar");

    static final Assumption SPEED_ASSUMPTION = Assumption.of(
            "rolling resistance at speed",
            "rolling resistance rises by 0.004 of the weight at 100 km/h, with the square of the speed, as for tires at 2.4 bar",
            SPEED_SOURCE);

    private static final double HUNDRED_KMH = 100.0 / 3.6;

    private RollingResistance() {}

    /** Returns rolling resistance over the load at a speed in m/s. */
    static double at(double coefficient, boolean hard, double speed) {
        double share = speed / HUNDRED_KMH;
        return hard ? coefficient + RISE_AT_100_KMH * share * share : coefficient;
    }
}
