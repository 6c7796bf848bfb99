package drivetrain.road;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RoadLimitTest {

    @Test
    void everyLimitIsAShare() {
        assertThat(GradeHeld.leastReserve()).isBetween(0.0, 1.0);
        assertThat(RoadLimit.of("rating-marginal").most()).isBetween(0.0, 1.0);
        assertThat(GradeHeld.reserveRule().citation()).isNotBlank();
    }

    @Test
    void refusesALimitThatIsNotThere() {
        assertThat(Refusals.of(() -> RoadLimit.of("nothing")).problem()).contains("not in the table");
    }
}
