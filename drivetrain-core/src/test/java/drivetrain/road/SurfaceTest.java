package drivetrain.road;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.finding.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SurfaceTest {

    @ParameterizedTest
    @ValueSource(strings = {"wet-asphalt", "Wet Asphalt", " wet  asphalt "})
    void understandsBlanksAndCapitals(String text) {
        assertThat(Surface.parse(text).name()).isEqualTo("wet-asphalt");
    }

    @Test
    void dryIsTheUsualState() {
        assertThat(Surface.parse("dry concrete")).isEqualTo(Surface.parse("concrete"));
    }

    @Test
    void refusesAnUnknownOneWithNearNames() {
        assertThat(Refusals.of(() -> Surface.parse("asfalt")).suggestions()).contains("asphalt");
    }

    @Test
    void aTireHoldsMoreBeforeItSlidesThanWhileItSlides() {
        assertThat(Surface.names()).hasSizeGreaterThan(8);
        for (String name : Surface.names()) {
            Surface surface = Surface.parse(name);
            assertThat(surface.peak()).as(name).isGreaterThanOrEqualTo(surface.sliding());
            assertThat(surface.rolling()).as(name).isBetween(surface.leastRolling(), surface.mostRolling());
        }
    }

    @Test
    void everyFrictionIsFlagged() {
        Surface surface = Surface.parse("gravel");
        assertThat(surface.slidingAssumption().flagged()).isTrue();
        assertThat(surface.peakAssumption().flagged()).isTrue();
        assertThat(surface.rollingAssumptions()).hasSize(1);
        assertThat(Surface.parse("asphalt").rollingAssumptions()).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, -0.1, 1.51, Double.NaN})
    void refusesAnImpossibleFriction(double friction) {
        assertThat(Refusals.of(() -> Surface.requireFriction(friction)).allowed())
                .contains("1.5");
    }

    @Test
    void refusesAnImpossibleRollingResistance() {
        Source given = Source.given("test");
        assertThat(Refusals.of(() -> new Surface("x", "x", 0.6, 0, 1, true, given, 0.5, 0.6, given))
                        .allowed())
                .contains("0.5");
    }
}
