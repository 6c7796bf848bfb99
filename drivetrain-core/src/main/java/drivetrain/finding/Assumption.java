package drivetrain.finding;

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
}
