package drivetrain.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.assessment.Assessment;
import drivetrain.assessment.CriticalSpeedAnswer;
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
    void holdsTheShaftSpeedAgainstTheCriticalSpeedOfTheAssessment() {
        Combination order = TestShelf.order();
        double critical = CriticalSpeedAnswer.of(order)
                .orThrow()
                .shafts()
                .get(0)
                .critical()
                .speed()
                .si();
        assertThat(Measures.CRITICAL_SHARE.of(order).orThrow())
                .isEqualTo(Measures.SHAFT_SPEED.of(order).orThrow() / critical);
        Combination shorter = Combination.resolve(
                TestShelf.ORDER.with(
                        Slot.REAR_SHAFT, TestShelf.SHAFT + " length 900 mm, yokes 1.3 kg 60 mm long in phase"),
                TestShelf.CATALOG);
        assertThat(Measures.CRITICAL_SHARE.of(shorter).orThrow())
                .isLessThan(0.7 * Measures.CRITICAL_SHARE.of(order).orThrow());
        assertThat(Measures.CRITICAL_SHARE.of(order).orThrow())
                .isEqualTo(Measures.SHAFT_SPEED.of(order).orThrow() / critical);
    }

    /**
     * A slender tube held at both ends whirls at (pi / L)^2 sqrt(E I / m), m its mass for a length (textbook; the formula from memory). For steel of 200 GPa and
     * 7850 kg/m3 with light, short yokes that is good to 3 %.
     */
    @Test
    void agreesWithTheTextbookForASlenderTube() {
        Combination order = Combination.resolve(
                TestShelf.ORDER.with(
                        Slot.REAR_SHAFT, TestShelf.SHAFT + " length 1500 mm, yokes 0.1 kg 10 mm long in phase"),
                TestShelf.CATALOG);
        double outer = 0.0762;
        double inner = outer - 2.0 * 0.0021;
        double radiusOfGyration = Math.sqrt(outer * outer + inner * inner) / 4.0;
        double critical = Math.pow(Math.PI / 1.5, 2) * Math.sqrt(200e9 / 7850.0) * radiusOfGyration;
        double share = 44.704 / 2.510 * 41.0 / 11.0 * 2.0 * Math.PI / critical;
        assertThat(Measures.CRITICAL_SHARE.of(order).orThrow()).isCloseTo(share, within(0.03 * share));
    }

    /** 420 hp x 0.50 lb/(hp h) = 210 lb/h = 95.25 kg/h; over 0.750 kg/L that is 127.0 L/h. Units: NIST SP 811, 1 lb = 0.45359237 kg. */
    @Test
    void takesTheFuelFlowAtPeakPower() {
        Combination order = Combination.resolve(
                TestShelf.ORDER
                        .with(Slot.FUEL, "gasoline, 750 kg/m3")
                        .with(Slot.FUEL_SYSTEM, "burns 0.50 lb/(hp-h), fuel at 15 degC"),
                TestShelf.CATALOG);
        assertThat(Measures.FUEL_FLOW.of(order).orThrow() * 3.6e6)
                .isCloseTo(420.0 * 0.50 * 0.45359237 / 0.750, within(0.001 * 127.0));
        assertThat(Measures.FUEL_FLOW.figure(order).orThrow().text(UnitSystem.METRIC))
                .isEqualTo("127 L/h");
    }

    @Test
    void saysWhatIsMissingForShaftAndFuel() {
        Combination bare =
                Combination.resolve(TestShelf.ORDER.without(Slot.REAR_SHAFT).without(Slot.FUEL), TestShelf.CATALOG);
        assertThat(Measures.CRITICAL_SHARE.of(bare).reason()).hasValue("no rear shaft is chosen");
        assertThat(Measures.FUEL_FLOW.of(bare).reason().orElseThrow()).contains("no fuel is chosen");
        Combination noRoom = Combination.resolve(
                TestShelf.ORDER
                        .with(Slot.REAR_SHAFT, TestShelf.SHAFT + " yokes 1.3 kg 60 mm long in phase")
                        .with(Slot.REAR_LINE, "output 4 deg down, shaft 100 mm 9 deg down, pinion 5 deg down"),
                TestShelf.CATALOG);
        assertThat(Measures.CRITICAL_SHARE.of(noRoom).reason().orElseThrow())
                .contains("rear shaft length 100 mm leaves no tube");
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
    void readsTheWordsOfShaftAndFuel() {
        assertThat(MeasureWords.parse("share of critical speed", SPEED)).isSameAs(Measures.CRITICAL_SHARE);
        assertThat(MeasureWords.parse("shaft speed of critical", SPEED)).isSameAs(Measures.CRITICAL_SHARE);
        assertThat(Measures.CRITICAL_SHARE.scale().units()).containsExactly("%");
        assertThat(MeasureWords.parse("fuel", SPEED)).isSameAs(Measures.FUEL_FLOW);
        assertThat(Measures.FUEL_FLOW.scale().units()).contains("L/h", "US gal/h");
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
