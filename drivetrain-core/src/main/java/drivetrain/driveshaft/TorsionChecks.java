package drivetrain.driveshaft;

import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Torque;

/** Holds the torque of a shaft against its tube and against the ratings of joints and flanges. */
public final class TorsionChecks {

    private TorsionChecks() {}

    /**
     * Holds a torque against the yield of the tube.
     *
     * @param which which shaft, such as {@code rear shaft}
     * @param torsion tube, material and torque
     * @param where what limits the torque, such as {@code engine limited in 1st low}
     * @return met with the wanted factor to spare, marginal with less, exceeded beyond yield; not evaluated where the strength is not known
     */
    public static Finding tube(String which, Torsion torsion, String where) {
        String checked = which + " tube, " + where;
        ShaftSpeedLimits.Limit wanted = ShaftSpeedLimits.yieldFactor();
        if (torsion.yieldTorque().isEmpty()) {
            return Finding.notEvaluated(checked, torsion.strengthMissing(), wanted.source());
        }
        Torque yield = torsion.yieldTorque().get();
        Torque allowed = yield.dividedBy(wanted.value());
        Verdict verdict = verdict(torsion.torque(), allowed, yield);
        return Finding.of(
                checked,
                torque(torsion.torque()),
                torque(allowed),
                torque(allowed.minus(torsion.torque())),
                verdict,
                "the tube yields at " + yield.format(Torque.NEWTON_METER, 0) + " ("
                        + yield.format(Torque.POUND_FOOT, 0) + "), and a factor of "
                        + DecimalText.shortest(wanted.value()) + " is wanted",
                wanted.source());
    }

    /**
     * Holds a torque against a rating from a supplier's sheet.
     *
     * @param what what is rated, such as {@code rear shaft joints}
     * @param torque the torque
     * @param rating the rating
     * @param where what limits the torque
     * @return met or exceeded; marginal in between where the shop wants a reserve
     */
    public static Finding rating(String what, Torque torque, Torque rating, String where) {
        ShaftSpeedLimits.Limit reserve = ShaftSpeedLimits.ratingReserve();
        Torque allowed = rating.times(1.0 - reserve.value());
        Verdict verdict = verdict(torque, allowed, rating);
        return Finding.of(
                what + ", " + where,
                torque(torque),
                torque(rating),
                torque(rating.minus(torque)),
                verdict,
                verdict == Verdict.EXCEEDED
                        ? "the torque is more than the supplier rates it for"
                        : "the rating is the supplier's, as given with the shaft",
                reserve.source());
    }

    private static Verdict verdict(Torque torque, Torque allowed, Torque most) {
        if (torque.compareTo(allowed) <= 0) {
            return Verdict.MET;
        }
        return torque.compareTo(most) <= 0 ? Verdict.MARGINAL : Verdict.EXCEEDED;
    }

    private static Figure torque(Torque torque) {
        return Figure.of(torque, Display.TORQUE);
    }
}
