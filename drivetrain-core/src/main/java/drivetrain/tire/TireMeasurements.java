package drivetrain.tire;

import drivetrain.finding.Outcome;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Length;
import drivetrain.quantity.Quantity;
import drivetrain.quantity.RevolutionsPerDistance;
import drivetrain.quantity.Unit;
import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.Optional;

/** What can be measured on a tire: whether it is possible, and how it is written. */
final class TireMeasurements {

    static final String ROLLOUT = "rollout";
    static final String REVOLUTIONS = "revs";
    static final String DIAMETER = "diameter";

    private static final Length LEAST_DIAMETER = Length.ofMillimeters(250);
    private static final Length MOST_DIAMETER = Length.ofMillimeters(2000);
    private static final Length LEAST_ROLLOUT = Length.ofMillimeters(750);
    private static final Length MOST_ROLLOUT = Length.ofMillimeters(6500);
    private static final RevolutionsPerDistance FEWEST = RevolutionsPerDistance.ofPerMile(250);
    private static final RevolutionsPerDistance MOST = RevolutionsPerDistance.ofPerMile(2100);

    private static final int MOST_DIGITS = 15;

    private TireMeasurements() {}

    static void require(
            TireDesignation designation,
            Optional<Length> rollout,
            Optional<RevolutionsPerDistance> revolutions,
            Optional<Length> diameter) {
        diameter.ifPresent(given -> {
            given.requireBetween("overall diameter", LEAST_DIAMETER, MOST_DIAMETER, Length.MILLIMETER);
            requireNear("overall diameter", given, designation.overallDiameter().map(OverallDiameter::diameter));
        });
        rollout.ifPresent(given -> {
            given.requireBetween("roll-out", LEAST_ROLLOUT, MOST_ROLLOUT, Length.MILLIMETER);
            requireNear("roll-out", given, bySize(designation));
        });
        revolutions.ifPresent(given -> {
            given.requireBetween("revolutions", FEWEST, MOST, RevolutionsPerDistance.PER_MILE);
            requireNear("roll-out by the revolutions", given.perRevolution(), bySize(designation));
        });
    }

    /** The rolling circumference by the rule, from the size alone. */
    static Outcome<Length> bySize(TireDesignation designation) {
        return designation.overallDiameter().map(overall -> Tire.byRule(overall).circumference());
    }

    private static void requireNear(String subject, Length given, Outcome<Length> expected) {
        expected.value().ifPresent(size -> {
            double off = given.ratioTo(size) - 1.0;
            if (Math.abs(off) > TireLimits.absurdMeasurement()) {
                throw Refusal.of(
                                subject,
                                given.format(Length.MILLIMETER, 0),
                                "is " + DecimalText.fixed(100.0 * Math.abs(off), 0) + " % "
                                        + (off > 0 ? "more" : "less")
                                        + " than the size tells; probably another unit is meant")
                        .allowing("within " + DecimalText.fixed(100.0 * TireLimits.absurdMeasurement(), 0) + " % of "
                                + size.format(Length.MILLIMETER, 0))
                        .asException();
            }
        });
    }

    static String text(
            Optional<Length> rollout, Optional<RevolutionsPerDistance> revolutions, Optional<Length> diameter) {
        return rollout.map(given -> " " + ROLLOUT + " " + lengthText(given)).orElse("")
                + revolutions
                        .map(given -> " " + REVOLUTIONS + " "
                                + fewestDigits(
                                        given,
                                        List.of(RevolutionsPerDistance.PER_MILE, RevolutionsPerDistance.PER_KILOMETER)))
                        .orElse("")
                + diameter.map(given -> " " + DIAMETER + " " + lengthText(given))
                        .orElse("");
    }

    private static String lengthText(Length length) {
        return fewestDigits(length, List.of(Length.MILLIMETER, Length.INCH, Length.METER));
    }

    /** The text in the unit that needs the fewest digits to be read back as exactly the same quantity; the first unit where that is a draw. */
    private static <Q extends Quantity<Q>> String fewestDigits(Q quantity, List<Unit<Q>> units) {
        for (int digits = 1; digits <= MOST_DIGITS; digits++) {
            for (Unit<Q> unit : units) {
                String text = DecimalText.significant(quantity.in(unit), digits) + " " + unit.symbol();
                if (quantity.kind().parse(text).equals(quantity)) {
                    return text;
                }
            }
        }
        return quantity.toString();
    }
}
