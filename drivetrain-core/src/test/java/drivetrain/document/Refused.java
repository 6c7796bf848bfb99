package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** Runs what must be refused, and checks what holds for every refusal of a document. */
final class Refused {

    private Refused() {}

    static Refusal by(ThrowingCallable call) {
        RefusedException refused = catchThrowableOfType(RefusedException.class, call);
        assertThat(refused).as("refused").isNotNull();
        requireReadable(refused);
        return refused.refusal();
    }

    static String sentence(ThrowingCallable call) {
        return by(call).sentence();
    }

    /** One located line in plain words. */
    static void requireReadable(RefusedException refused) {
        String sentence = refused.refusal().sentence();
        assertThat(refused.refusal().place()).as("place of: %s", sentence).isPresent();
        assertThat(sentence).doesNotContain("\n", "\r", "\u001b", "Exception", "java.", "jackson", "snakeyaml");
        assertThat(Characters.firstRefused(sentence)).isEmpty();
        assertThat(sentence.length()).as(sentence).isLessThan(1200);
    }
}
