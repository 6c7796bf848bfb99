package drivetrain.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** What tests ask of a refusal. */
final class Refusals {

    private Refusals() {}

    static Refusal of(ThrowingCallable call) {
        RefusedException refused = catchThrowableOfType(RefusedException.class, call);
        assertThat(refused).isNotNull();
        return refused.refusal();
    }

    static void assertRefusedAt(int position, String problem, ThrowingCallable call) {
        Refusal refusal = of(call);
        assertThat(refusal.problem()).contains(problem);
        assertThat(refusal.position()).hasValue(position);
    }
}
