package drivetrain.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.quantity.Figure;
import org.junit.jupiter.api.Test;

class WorkingTest {

    private static final Figure RATIO = Figure.plain(4.1, 2);
    private static final Figure TOTAL = Figure.plain(16.523, 2);
    private static final Source SOURCE = Source.derived("ratios in line multiply");

    @Test
    void keepsTheOrderAndEachInputAndSourceOnce() {
        Working axle = Working.of("axle")
                .input("axle ratio", "i_a", RATIO, "given")
                .step("axle", "i_a", RATIO)
                .source(SOURCE)
                .build();
        Working total = Working.of("total ratio in 1st")
                .from(axle)
                .input("axle ratio", "i_a", RATIO, "given")
                .input("first gear", "i_1", Figure.plain(4.03, 2), "given")
                .step("total ratio", "i_1 \u00B7 i_a", TOTAL)
                .source(SOURCE)
                .build();

        assertThat(total.question()).isEqualTo("total ratio in 1st");
        assertThat(total.inputs()).extracting(Working.Input::symbol).containsExactly("i_a", "i_1");
        assertThat(total.steps()).extracting(Working.Step::name).containsExactly("axle", "total ratio");
        assertThat(total.sources()).containsExactly(SOURCE);
    }

    @Test
    void takesNoInputThatAStepHasWorkedOutAndNoStepTwice() {
        Working ratio = Working.of("ratio")
                .input("gear ratio", "i_g", RATIO, "given")
                .step("total ratio", "i", TOTAL)
                .build();
        Working speed = Working.of("speed")
                .input("total ratio", "i", TOTAL, "given")
                .input("other ratio", "j", TOTAL, "given")
                .step("total ratio", "i", TOTAL)
                .step("speed", "n", RATIO)
                .build();
        Working both = Working.of("both").from(ratio).from(speed).build();

        assertThat(both.inputs()).extracting(Working.Input::name).containsExactly("gear ratio", "other ratio");
        assertThat(both.steps()).extracting(Working.Step::name).containsExactly("total ratio", "speed");
    }

    @Test
    void isNotChangedByItsBuilder() {
        Working.Builder builder = Working.of("crawl ratio");
        Working empty = builder.build();
        builder.step("crawl ratio", "i_1 \u00B7 i_t \u00B7 i_a", TOTAL);

        assertThat(empty.steps()).isEmpty();
        assertThatThrownBy(() -> empty.inputs().clear()).isInstanceOf(UnsupportedOperationException.class);
    }
}
