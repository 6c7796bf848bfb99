package drivetrain.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Speed;
import org.junit.jupiter.api.Test;

class GradeHeldTest {

    private static final Speed SPEED = Speed.ofMetersPerSecond(25.0);

    @Test
    void onTheGradeHeldNothingIsLeftOver() {
        ForceCurve curve = Roads.constant("3rd high", 4000.0, 10.0, 40.0);
        GradeHeld level = GradeHeld.of(curve, Roads.wagon(), SPEED).orThrow();
        assertThat(level.holds()).isTrue();
        RoadLoad steep = Roads.wagon().on(level.steepest().orThrow());
        GradeHeld there = GradeHeld.of(curve, steep, SPEED).orThrow();
        assertThat(there.reserve().si()).isCloseTo(0.0, within(1e-6));
        assertThat(there.steepest().orThrow().tangent())
                .isCloseTo(level.steepest().orThrow().tangent(), within(1e-12));
    }

    @Test
    void aWeakGearHoldsOnlyDownhill() {
        GradeHeld weak = GradeHeld.of(Roads.constant("6th high", 100.0, 10.0, 40.0), Roads.wagon(), SPEED)
                .orThrow();
        assertThat(weak.holds()).isFalse();
        assertThat(weak.steepest().orThrow().tangent()).isNegative();
    }

    @Test
    void aForceBeyondTheWeightIsLeftToGrip() {
        GradeHeld strong = GradeHeld.of(Roads.constant("1st low", 30_000.0, 0.5, 40.0), Roads.wagon(), SPEED)
                .orThrow();
        assertThat(strong.steepest().reason())
                .hasValueSatisfying(why -> assertThat(why).contains("grip"));
        assertThat(strong.working(Roads.wagon()).steps()).isNotEmpty();
    }

    @Test
    void outsideTheGearItSaysWhy() {
        ForceCurve curve = Roads.constant("1st low", 30_000.0, 0.5, 4.0);
        assertThat(GradeHeld.of(curve, Roads.wagon(), SPEED).reason()).isPresent();
    }

    @Test
    void explainsItself() {
        GradeHeld held = GradeHeld.of(Roads.constant("3rd high", 4000.0, 10.0, 40.0), Roads.wagon(), SPEED)
                .orThrow();
        assertThat(held.working(Roads.wagon()).steps()).hasSize(7);
    }
}
