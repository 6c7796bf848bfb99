package drivetrain.driveshaft;

import drivetrain.driveshaft.ShaftHouse.Rule;
import drivetrain.finding.Finding;
import drivetrain.finding.HouseLimit;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Angle;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import java.util.Optional;

/** Holds the speeds of a shaft against its critical speed. */
public final class ShaftSpeedChecks {

    private static final Source BOUNCE = Source.commonPractice(
            "a shaft may pass the bounce of its center bearing's mount, whose rubber damps it, but should not be held there");

    private ShaftSpeedChecks() {}

    /**
     * Returns the greatest speed that is good on the road.
     *
     * @param critical the critical speed
     * @param house the limits of the shop
     * @return the share of it that is good
     */
    public static AngularSpeed allowed(AngularSpeed critical, ShaftHouse house) {
        return critical.times(house.number(Rule.CRITICAL_GOOD));
    }

    /**
     * Returns the critical speed that a shaft needs for a speed.
     *
     * @param speed the greatest speed of the shaft
     * @param house the limits of the shop
     * @return the speed over the share that is good
     */
    public static AngularSpeed needed(AngularSpeed speed, ShaftHouse house) {
        return speed.dividedBy(house.number(Rule.CRITICAL_GOOD));
    }

    /**
     * Holds a speed against the critical speed.
     *
     * @param which which shaft, such as {@code rear}
     * @param critical its critical speed
     * @param speed the speed that it reaches
     * @param house the limits of the shop
     * @return met up to the share that is good, marginal up to the one that is too much, else exceeded
     */
    public static Finding critical(String which, AngularSpeed critical, ShaftSpeed speed, ShaftHouse house) {
        HouseLimit good = house.of(Rule.CRITICAL_GOOD);
        HouseLimit most = house.of(Rule.CRITICAL_MOST);
        double fraction = speed.speed().ratioTo(critical);
        Verdict verdict =
                fraction <= good.value() ? Verdict.MET : fraction <= most.value() ? Verdict.MARGINAL : Verdict.EXCEEDED;
        AngularSpeed allowed = critical.times(good.value());
        return Finding.of(
                which + " shaft speed, " + speed.where(),
                rotation(speed.speed()),
                rotation(allowed),
                rotation(allowed.minus(speed.speed())),
                verdict,
                statement(fraction, critical, good.value(), most),
                verdict == Verdict.EXCEEDED ? most.source() : good.source());
    }

    private static String statement(double fraction, AngularSpeed critical, double good, HouseLimit most) {
        String share =
                "this is " + percent(fraction) + " of the critical speed of " + critical.format(AngularSpeed.RPM, 0);
        if (fraction >= 1.0) {
            return share + ": the shaft whirls and can break loose";
        }
        if (fraction > most.value()) {
            return share
                    + (most.isGiven() ? ", and the shop allows no more than " : ", and no maker allows more than ")
                    + percent(most.value());
        }
        return share + ", of which " + percent(good) + (fraction > good ? " is good" : " may be used");
    }

    /**
     * Holds a speed that is driven for long against half the critical speed, at which the second order of a bent joint shakes the shaft in its first mode.
     *
     * @param which which shaft, such as {@code rear}
     * @param critical its critical speed
     * @param speed the speed that is held
     * @param angle the greatest angle of its single joints; empty if it is not known
     * @param house the limits of the shop
     * @return met where the joints bend little or the speed keeps away, marginal where it does not; not evaluated where the speed is near and the angle is not known
     */
    public static Finding half(
            String which, AngularSpeed critical, ShaftSpeed speed, Optional<Angle> angle, ShaftHouse house) {
        String checked = which + " shaft, half critical speed, " + speed.where();
        HouseLimit band = house.of(Rule.HALF_CRITICAL);
        HouseLimit bend = house.of(Rule.HALF_CRITICAL_ANGLE);
        AngularSpeed half = critical.dividedBy(2.0);
        double away = Math.abs(speed.speed().ratioTo(half) - 1.0);
        boolean near = away < band.value();
        if (near && angle.isEmpty()) {
            return Finding.notEvaluated(
                    checked,
                    "the speed is within " + percent(band.value()) + " of half the critical speed, "
                            + half.format(AngularSpeed.RPM, 0)
                            + ", which shakes if the joints bend; the line's angles are not given",
                    band.source());
        }
        boolean bent = angle.isPresent() && angle.get().toDegrees() > bend.value();
        AngularSpeed distance = AngularSpeed.ofRadiansPerSecond(
                Math.abs(speed.speed().minus(half).toRadiansPerSecond()));
        AngularSpeed wanted = half.times(band.value());
        return Finding.of(
                checked,
                rotation(distance),
                rotation(wanted),
                rotation(distance.minus(wanted)),
                near && bent ? Verdict.MARGINAL : Verdict.MET,
                "half the critical speed is " + half.format(AngularSpeed.RPM, 0)
                        + (near ? nearness(bent, bend.value()) : ", and the speed keeps away from it"),
                near && !bent ? bend.source() : band.source());
    }

    private static String nearness(boolean bent, double degrees) {
        return bent
                ? "; the joints bend more than " + DecimalText.shortest(degrees)
                        + " deg, so that their second order shakes the shaft here"
                : "; the speed is near it, but the joints bend no more than " + DecimalText.shortest(degrees) + " deg";
    }

    /**
     * Holds a speed that is driven for long against the bounce on the mount of a center bearing.
     *
     * @param which which shaft, such as {@code rear}
     * @param bounce the speed at which it bounces
     * @param speed the speed that is held
     * @param house the limits of the shop, of which the distance from half the critical speed serves here too
     * @return marginal where the two are near, else met
     */
    public static Finding bounce(String which, AngularSpeed bounce, ShaftSpeed speed, ShaftHouse house) {
        HouseLimit band = house.of(Rule.HALF_CRITICAL);
        boolean near = Math.abs(speed.speed().ratioTo(bounce) - 1.0) < band.value();
        return Finding.of(
                which + " shaft, bounce of the center bearing, " + speed.where(),
                rotation(speed.speed()),
                near ? Verdict.MARGINAL : Verdict.MET,
                "the shaft bounces on the mount of its center bearing at " + bounce.format(AngularSpeed.RPM, 0)
                        + (near ? ", which is within " + percent(band.value()) : ", which this keeps away from"),
                band.isGiven() ? band.source() : BOUNCE);
    }

    private static Figure rotation(AngularSpeed speed) {
        return Figure.of(speed, Display.ROTATION);
    }

    private static String percent(double fraction) {
        return DecimalText.significant(100.0 * fraction, 3) + " %";
    }
}
