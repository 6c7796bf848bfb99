package drivetrain.finding;

import org.jspecify.annotations.Nullable;

/**
 * What an answer rests on that was not measured on this vehicle.
 *
 * @param subject what is assumed, such as {@code rolling circumference}; two assumptions with one subject say the same thing once
 * @param statement the assumption with its figure, as a sentence without a full stop
 * @param source where it comes from
 * @param flagged true if the answer is uncertain because of it
 */
public record Assumption(String subject, String statement, Source source, boolean flagged) {

    /**
     * States an assumption, flagged if its source is uncertain.
     *
     * @param subject what is assumed
     * @param statement the assumption with its figure
     * @param source where it comes from
     * @return the assumption
     */
    public static Assumption of(String subject, String statement, Source source) {
        return new Assumption(subject, statement, source, source.kind().isUncertain());
    }

    /**
     * States an assumption that makes the answer uncertain whatever its source.
     *
     * @param subject what is assumed
     * @param statement the assumption and why it is uncertain
     * @param source where it comes from
     * @return the assumption
     */
    public static Assumption flagged(String subject, String statement, Source source) {
        return new Assumption(subject, statement, source, true);
    }

    /**
     * Compares all components. Written out, because the equality that a record comes with costs its first caller some 20 ms.
     *
     * @param other any object
     * @return true if all components are equal
     */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Assumption that
                && subject.equals(that.subject)
                && statement.equals(that.statement)
                && source.equals(that.source)
                && flagged == that.flagged;
    }

    /**
     * Returns a hash of all components.
     *
     * @return the hash
     */
    @Override
    public int hashCode() {
        return 31 * (31 * subject.hashCode() + statement.hashCode()) + source.hashCode();
    }
}
