package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.finding.Working;

/** What tests ask of every working. */
final class Whole {

    private Whole() {}

    static void assertWorkedOut(Answer answer) {
        Working working = answer.working();
        assertThat(working.question()).isNotBlank();
        assertThat(working.inputs()).isNotEmpty();
        assertThat(working.steps()).isNotEmpty();
        assertThat(working.sources()).isNotEmpty();
        assertThat(working.inputs()).doesNotHaveDuplicates();
        assertThat(answer.working()).isEqualTo(working);
    }
}
