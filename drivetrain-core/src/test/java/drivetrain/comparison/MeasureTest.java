package drivetrain.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.assessment.Assessment;
import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.quantity.Speed;
import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.RefusedException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MeasureTest {

    private static final Optional<Speed> SPEED = Optional.of(Speed.ofMilesPerHour(65.0));

    @Test
    void agreesWithTheAssessment() {
        Combination order = TestShelf.order();
        Assessment assessment = Assessment.of(order);
        assertThat(Measures.engineSpeedAt(SPEED.get()).of(order).orThrow())
                .isEqualTo(assessment.cruise().orThrow().engineSpeed().si());
        assertThat(Measures.CRAWL_RATIO.of(order).orThrow())
                .isEqualTo(assessment.crawl().orThrow().crawl().ratio());
        assertThat(Measures.CRAWL_SPEED.of(order).orThrow())
                .isEqualTo(assessment.crawl().orThrow().speed().orThrow().si());
        assertThat(Measures.WHEEL_TORQUE.of(order).orThrow())
                .isEqualTo(assessment.crawl().orThrow().torque().orThrow().si());
        assertThat(Measures.PEAK_TORQUE.figure(order).orThrow().text(UnitSystem.US))
                .isEqualTo("460 lb·ft");
        assertThat(Measures.PEAK_POWER.figure(order).orThrow().text(UnitSystem.US))
                .isEqualTo("420 hp");
        assertThat(Measures.GEARED_SPEED.of(order).orThrow())
                .isEqualTo(assessment.speeds().orThrow().rows().stream()
                        .mapToDouble(row -> row.roadSpeed().si())
                        .max()
                        .orElseThrow());
    }

    @Test
    void agreesWithTheAssessmentOfEveryPackage() {
        for (String box : List.of("auto-6", "manual-5", "manual-4")) {
            for (String transfer : List.of("two-speed", "deep", "single")) {
                Combination order = Combination.resolve(
                        TestShelf.ORDER
                                .with(Slot.TRANSMISSION, box)
                                .with(Slot.TRANSFER, transfer)
                                .with(Slot.OVERDRIVE, "0.78")
                                .with(Slot.HUBS, "24/16"),
                        TestShelf.CATALOG);
                Assessment assessment = Assessment.of(order);
                assertThat(Measures.engineSpeedAt(SPEED.get()).of(order).orThrow())
                        .isEqualTo(assessment.cruise().orThrow().engineSpeed().si());
                assertThat(Measures.CRAWL_SPEED.of(order).orThrow())
                        .isEqualTo(
                                assessment.crawl().orThrow().speed().orThrow().si());
                assertThat(Measures.WHEEL_TORQUE.of(order).orThrow())
                        .isEqualTo(assessment
                                .torque()
                                .orThrow()
                                .rows()
                                .get(0)
                                .wheels()
                                .total()
                                .si());
                assertThat(Measures.GEARED_SPEED.of(order).orThrow())
                        .isEqualTo(assessment.speeds().orThrow().rows().stream()
                                .mapToDouble(row -> row.roadSpeed().si())
                                .max()
                                .orElseThrow());
            }
        }
    }

    /** 41/11 and 6th gear 0.67: at 100 mph and 2.510 m a turn the shaft turns 100 mph / 2.510 m x 41/11. */
    @Test
    void takesTheShaftSpeedAtTheLowerOfBothLimits() {
        double fast = 44.704 / 2.510 * 41.0 / 11.0 * 2.0 * Math.PI;
        assertThat(Measures.SHAFT_SPEED.of(TestShelf.order()).orThrow()).isCloseTo(fast, within(1e-9 * fast));
        Combination low = Combination.resolve(
                TestShelf.ORDER.with(Slot.TRANSMISSION, "3.0 2.0").with(Slot.REAR_AXLE, "41/8"), TestShelf.CATALOG);
        double geared = 6600.0 * 2.0 * Math.PI / 60.0 / 2.0;
        assertThat(Measures.SHAFT_SPEED.of(low).orThrow()).isCloseTo(geared, within(1e-9 * geared));
    }

    @Test
    void saysWhatIsMissing() {
        Combination noIdle = Combination.resolve(TestShelf.ORDER.with(Slot.ENGINE, "no-idle"), TestShelf.CATALOG);
        assertThat(Measures.CRAWL_SPEED.of(noIdle).reason()).hasValue("the engine's idle speed is not given");
        assertThat(Measures.SHAFT_SPEED
                        .of(Combination.resolve(TestShelf.ORDER.without(Slot.ENGINE), TestShelf.CATALOG))
                        .reason())
                .hasValue("no engine is chosen");
    }

    @Test
    void readsItsWords() {
        assertThat(MeasureWords.parse("crawl ratio", SPEED)).isSameAs(Measures.CRAWL_RATIO);
        assertThat(MeasureWords.parse(" Crawl  ".strip(), SPEED)).isSameAs(Measures.CRAWL_RATIO);
        assertThat(MeasureWords.parse("rpm", SPEED).word()).isEqualTo("rpm at 65 mph");
        assertThat(MeasureWords.parse("engine speed at 110 km/h", Optional.empty())
                        .word())
                .isEqualTo("rpm at 110 km/h");
        assertThat(MeasureWords.parse("rpm at 110 km/h", Optional.empty()).key())
                .isEqualTo("rpmAt110kmh");
        assertThat(MeasureWords.parse("rpm at 62.55 mph", SPEED).word()).isEqualTo("rpm at 62.6 mph");
    }

    @Test
    void refusesOtherWords() {
        assertThatThrownBy(() -> MeasureWords.parse("craw ratio", SPEED))
                .isInstanceOfSatisfying(
                        RefusedException.class,
                        refused -> assertThat(refused.refusal().suggestions()).contains("crawl ratio"));
        assertThatThrownBy(() -> MeasureWords.parse("rpm", Optional.empty()))
                .hasMessageContaining("needs a road speed");
        assertThatThrownBy(() -> MeasureWords.parse("crawl ratio at 5 mph", SPEED))
                .hasMessageContaining("not asked at a speed");
        assertThatThrownBy(() -> MeasureWords.parse("rpm at 65", SPEED)).hasMessageContaining("has no unit");
        assertThatThrownBy(() -> MeasureWords.parse("rpm at 0 mph", SPEED)).isInstanceOf(RefusedException.class);
    }

    @Test
    void readsAndShowsNumbersOnItsScale() {
        assertThat(Scale.plain(1).parse(" 62.5")).isEqualTo(62.5);
        assertThat(Scale.percent(1).parse("70 %")).isEqualTo(0.7);
        assertThat(Scale.percent(1).figure(0.705).text(UnitSystem.US)).isEqualTo("70.5 %");
        assertThatThrownBy(() -> Scale.plain(1).parse("62,5")).hasMessageContaining("decimal point");
        assertThatThrownBy(() -> Scale.percent(1).parse("70")).hasMessageContaining("%");
        assertThatThrownBy(() -> Scale.percent(1).parse("x %")).isInstanceOf(RefusedException.class);
        assertThat(Measures.CRAWL_SPEED.scale().units()).contains("mph", "km/h");
        assertThat(Measures.CRAWL_SPEED.scale().parse("1 m/s")).isEqualTo(1.0);
    }
}
