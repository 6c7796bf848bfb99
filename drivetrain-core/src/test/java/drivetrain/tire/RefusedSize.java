package drivetrain.tire;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** What is refused, for the tests to look at. */
final class RefusedSize {

    private RefusedSize() {}

    static Refusal of(String size) {
        return by(() -> TireDesignation.parse(size));
    }

    static Refusal tire(String tire) {
        return by(() -> Tire.parse(tire));
    }

    static Refusal by(ThrowingCallable call) {
        return catchThrowableOfType(RefusedException.class, call).refusal();
    }
}
