package drivetrain.finding;

import drivetrain.quantity.DecimalText;
import drivetrain.refusal.Refusal;

/**
 * Two limits of a room of which the lower one must not be above the higher one, as what is good is never more than what is too much.
 *
 * @param low the rule of the lower one
 * @param lower what is set for it
 * @param high the rule of the higher one
 * @param higher what is set for that
 */
public record HouseOrder(HouseRule low, HouseLimit lower, HouseRule high, HouseLimit higher) {

    /**
     * Checks the two against each other.
     *
     * @param key the name of the rule that a refusal is to speak of, one of the two
     * @throws drivetrain.refusal.RefusedException if the lower one is above the higher one
     */
    public void require(String key) {
        if (lower.value() > higher.value()) {
            throw (key.equals(high.key())
                            ? contradiction(high, higher, "is less than ", "at least ", low, lower)
                            : contradiction(low, lower, "is more than ", "at most ", high, higher))
                    .asException();
        }
    }

    private static Refusal contradiction(
            HouseRule rule, HouseLimit set, String wrong, String right, HouseRule other, HouseLimit kept) {
        return Refusal.of("house limit " + rule.key(), DecimalText.shortest(set.value()), wrong + other.key())
                .allowing(right + DecimalText.shortest(kept.value()) + " (" + kept.source()
                        + (kept.isGiven() ? ")" : "); or set both"));
    }
}
