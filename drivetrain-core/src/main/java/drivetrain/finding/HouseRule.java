package drivetrain.finding;

import drivetrain.quantity.DecimalText;
import drivetrain.refusal.Refusal;
import java.util.Optional;

/** What a shop can set in a room: an enumeration of the room names its rules, each with its range and the limit that comes with the library. */
public interface HouseRule {

    /**
     * Returns the name by which a catalog sets it.
     *
     * @return the name, which ends with its unit where it has one
     */
    String key();

    /**
     * Returns which numbers it can mean.
     *
     * @return the range, in the unit of the rule
     */
    HouseRange range();

    /**
     * Returns the limit that comes with the library.
     *
     * @return the packed limit
     */
    HouseLimit packed();

    /**
     * Returns the rule of the same room that must not be set lower than this one, as what is too much is never less than what is good.
     *
     * @return that rule, or empty if this one stands alone
     */
    default Optional<HouseRule> ceiling() {
        return Optional.empty();
    }

    /**
     * Checks a number by itself.
     *
     * @param value the number in the unit of the rule
     * @throws drivetrain.refusal.RefusedException if the rule cannot mean it
     */
    default void require(double value) {
        if (!range().contains(value)) {
            String given = Double.isFinite(value) ? DecimalText.shortest(value) : Double.toString(value);
            throw Refusal.of("house limit " + key(), given, "is out of range")
                    .allowing(range().words() + "; packed: " + DecimalText.shortest(packed().value()))
                    .asException();
        }
    }
}
