package drivetrain.finding;

import drivetrain.refusal.Refusal;
import java.util.Optional;
import java.util.function.Function;

/**
 * A value, or the reason why there is none.
 *
 * @param <T> the type of the value
 */
public sealed interface Outcome<T> {

    /**
     * Returns the outcome of an evaluation that succeeded.
     *
     * @param value the value
     * @param <T> the type of the value
     * @return the outcome
     */
    static <T> Outcome<T> of(T value) {
        return new Evaluated<>(value);
    }

    /**
     * Returns the outcome of an evaluation that lacks something.
     *
     * @param reason what is missing, to stand behind "not evaluated because"
     * @param <T> the type that the value would have had
     * @return the outcome
     */
    static <T> Outcome<T> notEvaluated(String reason) {
        return new NotEvaluated<>(reason);
    }

    /**
     * Turns an optional part into an outcome.
     *
     * @param part the part, or empty
     * @param reason what is missing if it is empty
     * @param <T> the type of the part
     * @return the outcome
     */
    static <T> Outcome<T> of(Optional<T> part, String reason) {
        return part.<Outcome<T>>map(Evaluated::new).orElseGet(() -> new NotEvaluated<>(reason));
    }

    /**
     * Handles both cases.
     *
     * @param evaluated what to do with the value
     * @param notEvaluated what to do with the reason
     * @param <R> the type of the result
     * @return the result
     */
    <R> R fold(Function<? super T, ? extends R> evaluated, Function<String, ? extends R> notEvaluated);

    /**
     * Goes on with the value; a missing value stays missing for the same reason.
     *
     * @param next the next evaluation
     * @param <R> the type of its value
     * @return its outcome
     */
    default <R> Outcome<R> then(Function<? super T, Outcome<R>> next) {
        return this.<Outcome<R>>fold(next, Outcome::notEvaluated);
    }

    /**
     * Changes the value; a missing value stays missing for the same reason.
     *
     * @param change the change
     * @param <R> the type of the new value
     * @return the outcome
     */
    default <R> Outcome<R> map(Function<? super T, ? extends R> change) {
        return this.<Outcome<R>>fold(value -> new Evaluated<>(change.apply(value)), NotEvaluated::new);
    }

    /**
     * Returns the value if there is one.
     *
     * @return the value, or empty
     */
    default Optional<T> value() {
        return this.<Optional<T>>fold(Optional::of, reason -> Optional.empty());
    }

    /**
     * Returns the reason if there is no value.
     *
     * @return the reason, or empty
     */
    default Optional<String> reason() {
        return this.<Optional<String>>fold(value -> Optional.empty(), Optional::of);
    }

    /**
     * Returns the value where the caller knows that there is one.
     *
     * @return the value
     * @throws drivetrain.refusal.RefusedException with the reason, if there is none
     */
    default T orThrow() {
        return this.<T>fold(value -> value, reason -> {
            throw Refusal.of("answer", "", "not evaluated because " + reason).asException();
        });
    }

    /**
     * A value.
     *
     * @param found the value
     * @param <T> its type
     */
    record Evaluated<T>(T found) implements Outcome<T> {
        @Override
        public <R> R fold(Function<? super T, ? extends R> evaluated, Function<String, ? extends R> notEvaluated) {
            return evaluated.apply(found);
        }
    }

    /**
     * A reason.
     *
     * @param because what is missing
     * @param <T> the type that the value would have had
     */
    record NotEvaluated<T>(String because) implements Outcome<T> {
        @Override
        public <R> R fold(Function<? super T, ? extends R> evaluated, Function<String, ? extends R> notEvaluated) {
            return notEvaluated.apply(because);
        }
    }
}
