package drivetrain.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.refusal.RefusedException;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class OutcomeTest {

    private static final Outcome<Integer> FOUND = Outcome.of(21);
    private static final Outcome<Integer> MISSING = Outcome.notEvaluated("no tire is chosen");

    @Test
    void hasAValueOrAReason() {
        assertThat(FOUND.value()).hasValue(21);
        assertThat(FOUND.reason()).isEmpty();
        assertThat(MISSING.value()).isEmpty();
        assertThat(MISSING.reason()).hasValue("no tire is chosen");
    }

    @Test
    void comesFromAnOptionalPart() {
        assertThat(Outcome.of(Optional.of(21), "no tire is chosen")).isEqualTo(FOUND);
        assertThat(Outcome.of(Optional.<Integer>empty(), "no tire is chosen")).isEqualTo(MISSING);
    }

    @Test
    void goesOnWithTheValue() {
        assertThat(FOUND.map(n -> n * 2)).isEqualTo(Outcome.of(42));
        assertThat(FOUND.then(n -> Outcome.of(n + 1))).isEqualTo(Outcome.of(22));
        assertThat(FOUND.then(n -> Outcome.<String>notEvaluated("too few"))).isEqualTo(Outcome.notEvaluated("too few"));
    }

    @Test
    void keepsTheFirstReason() {
        assertThat(MISSING.map(n -> n * 2)).isEqualTo(Outcome.notEvaluated("no tire is chosen"));
        assertThat(MISSING.then(n -> Outcome.notEvaluated("never asked")).reason())
                .hasValue("no tire is chosen");
    }

    @Test
    void folds() {
        assertThat(FOUND.<String>fold(n -> "found " + n, reason -> reason)).isEqualTo("found 21");
        assertThat(MISSING.<String>fold(n -> "found " + n, reason -> reason)).isEqualTo("no tire is chosen");
    }

    @Test
    void refusesWithTheReasonWhereAValueWasDemanded() {
        assertThat(FOUND.orThrow()).isEqualTo(21);
        assertThatThrownBy(MISSING::orThrow)
                .isInstanceOf(RefusedException.class)
                .hasMessage("answer: not evaluated because no tire is chosen");
    }
}
