package drivetrain.driveshaft;

import drivetrain.driveshaft.ShaftHouse.Rule;
import drivetrain.finding.Finding;
import drivetrain.finding.HouseLimit;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Torque;

/** Holds the torque of a shaft against its tube and against the ratings of joints and flanges. */
public final class TorsionChecks {

    private static final Source RATING = Source.given("the supplier's rating");

    private TorsionChecks() {}

    /**
     * Holds a torque against the yield of the tube.
     *
     * @param which which shaft, such as {@code rear shaft}
     * @param torsion tube, material and torque
     * @param where what limits the torque, such as {@code engine limited in 1st low}
     * @param house the limits of the shop
     * @return met with the wanted factor to spare, marginal with less, exceeded beyond yield; not evaluated where the strength is not known
     */
    public static Finding tube(String which, Torsion torsion, String where, ShaftHouse house) {
        String checked = which + " tube, " + where;
        HouseLimit wanted = house.of(Rule.YIELD_FACTOR);
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
     * @param house the limits of the shop
     * @return met or exceeded; marginal in between where the shop wants a reserve
     */
    public static Finding rating(String what, Torque torque, Torque rating, String where, ShaftHouse house) {
        HouseLimit reserve = house.of(Rule.RATING_RESERVE);
        Torque allowed = rating.times(1.0 - reserve.value());
        Verdict verdict = verdict(torque, allowed, rating);
        return Finding.of(
                what + ", " + where,
                torque(torque),
                torque(rating),
                torque(rating.minus(torque)),
                verdict,
                switch (verdict) {
                    case EXCEEDED -> "the torque is more than the supplier rates it for";
                    case MARGINAL ->
                        "the rating is the supplier's, of which less is left than the "
                                + DecimalText.significant(100.0 * reserve.value(), 3) + " % that the shop wants";
                    default -> "the rating is the supplier's, as given with the shaft";
                },
                verdict == Verdict.EXCEEDED && reserve.isGiven() ? RATING : reserve.source());
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
