package drivetrain.finding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HouseRangeTest {

    @Test
    void reachesItsEndsOrStopsShortOfTheLowerOne() {
        assertThat(HouseRange.above(0.0, 1.0).contains(0.0)).isFalse();
        assertThat(HouseRange.above(0.0, 1.0).contains(Double.MIN_VALUE)).isTrue();
        assertThat(HouseRange.between(1.0, 10.0).contains(1.0)).isTrue();
        assertThat(HouseRange.between(1.0, 10.0).contains(10.0)).isTrue();
        assertThat(HouseRange.between(1.0, 10.0).contains(Math.nextUp(10.0))).isFalse();
        assertThat(HouseRange.between(1.0, 10.0).contains(Math.nextDown(1.0))).isFalse();
    }

    @Test
    void containsNothingThatIsNoNumber() {
        assertThat(HouseRange.between(0.0, 1.0).contains(Double.NaN)).isFalse();
        assertThat(HouseRange.above(0.0, 1.0).contains(Double.NaN)).isFalse();
        assertThat(HouseRange.above(0.0, 1.0).contains(Double.POSITIVE_INFINITY))
                .isFalse();
    }

    @Test
    void tellsItselfInWords() {
        assertThat(HouseRange.above(0.0, 0.5).words()).isEqualTo("more than 0, at most 0.5");
        assertThat(HouseRange.between(1.0, 10.0).words()).isEqualTo("1 to 10");
    }
}
