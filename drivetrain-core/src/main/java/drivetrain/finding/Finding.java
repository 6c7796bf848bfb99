package drivetrain.finding;

import drivetrain.quantity.Figure;
import java.util.Collection;
import java.util.Optional;

/**
 * One check and its verdict.
 *
 * @param checked what was checked, such as {@code front tire load}
 * @param value the value found; empty where there is none
 * @param limit the limit that it was held against; empty where the rule has none
 * @param margin what is left to the limit, negative where it is exceeded; empty where it means nothing
 * @param verdict the verdict
 * @param statement what that means, or why it was not evaluated: one sentence without a full stop
 * @param rule the rule and how good its source is
 */
public record Finding(
        String checked,
        Optional<Figure> value,
        Optional<Figure> limit,
        Optional<Figure> margin,
        Verdict verdict,
        String statement,
        Source rule) {

    /**
     * Reports a check with a value and a limit.
     *
     * @param checked what was checked
     * @param value the value found
     * @param limit the limit
     * @param margin what is left to the limit
     * @param verdict the verdict
     * @param statement what that means
     * @param rule the rule
     * @return the finding
     */
    public static Finding of(
            String checked, Figure value, Figure limit, Figure margin, Verdict verdict, String statement, Source rule) {
        return new Finding(
                checked, Optional.of(value), Optional.of(limit), Optional.of(margin), verdict, statement, rule);
    }

    /**
     * Reports a check whose limit is not one number.
     *
     * @param checked what was checked
     * @param value the value found
     * @param verdict the verdict
     * @param statement what that means
     * @param rule the rule
     * @return the finding
     */
    public static Finding of(String checked, Figure value, Verdict verdict, String statement, Source rule) {
        return new Finding(checked, Optional.of(value), Optional.empty(), Optional.empty(), verdict, statement, rule);
    }

    /**
     * Reports a check that could not be made.
     *
     * @param checked what should have been checked
     * @param reason what is missing
     * @param rule the rule
     * @return the finding
     */
    public static Finding notEvaluated(String checked, String reason, Source rule) {
        return new Finding(
                checked, Optional.empty(), Optional.empty(), Optional.empty(), Verdict.NOT_EVALUATED, reason, rule);
    }

    /**
     * Judges the same check otherwise.
     *
     * @param other the verdict
     * @param because what that means
     * @return a copy with that verdict and that statement
     */
    public Finding judged(Verdict other, String because) {
        return new Finding(checked, value, limit, margin, other, because, rule);
    }

    /**
     * Returns the worst verdict.
     *
     * @param findings any number of findings
     * @return the worst verdict; {@link Verdict#NOT_EVALUATED} where there is no finding
     */
    public static Verdict worst(Collection<Finding> findings) {
        return findings.stream().map(Finding::verdict).reduce(Verdict::worse).orElse(Verdict.NOT_EVALUATED);
    }
}
