package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Combination;
import drivetrain.combination.Part;
import drivetrain.combination.Slot;
import drivetrain.finding.Verdict;
import drivetrain.fuel.Injectors;
import drivetrain.fuel.Pump;
import drivetrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class FuelSizeAnswersTest {

    private static Part<Pump> pump(String name, String text) {
        return Part.of(name, "", Pump.parse(text, other -> Optional.empty()), "test");
    }

    private static Part<Injectors> injector(String name, String text) {
        return Part.of(name, "", Injectors.parse(text, other -> Optional.empty()), "test");
    }

    @Test
    void sizesThePumpByDemandMarginAndLines() {
        PumpSizeAnswer answer = PumpSizeAnswer.of(
                        Builds.tourer(),
                        List.of(
                                pump("large", "13.5 V, 374 L/h at 0 psi 7 A, 281 L/h at 80 psi 15 A"),
                                pump("small", "13.5 V, 150 L/h at 0 psi 3 A, 100 L/h at 80 psi 6 A"),
                                pump("unknown", "13.5 V, 150 L/h at 0 psi, 100 L/h at 20 psi")))
                .orThrow();
        assertThat(answer.wanted().ratioTo(answer.demand().volume())).isCloseTo(1.15, within(1e-12));
        assertThat(answer.added().toPsi()).isBetween(58.0, 66.0);
        assertThat(answer.rows())
                .extracting(PumpSizeAnswer.Row::verdict)
                .containsExactly(Verdict.MET, Verdict.EXCEEDED, Verdict.NOT_EVALUATED);
        assertThat(answer.assumptions()).noneMatch(one -> one.subject().equals("injector duty"));
        assertThat(answer.findings()).isEmpty();
        assertThat(answer.cautions()).isNotEmpty();
        Whole.assertWorkedOut(answer);
    }

    @Test
    void needsNoPumpToSizeOne() {
        Combination without = Builds.of(Builds.TOURER.without(Slot.FUEL_PUMP));
        assertThat(PumpSizeAnswer.of(without, List.of()).value()).isPresent();
        assertThat(PumpSizeAnswer.of(Builds.of(Builds.TOURER.without(Slot.FEED_LINE)), List.of())
                        .reason()
                        .orElseThrow())
                .startsWith("no feed line is chosen");
    }

    @Test
    void sizesTheInjectors() {
        InjectorSizeAnswer answer = InjectorSizeAnswer.of(
                        Builds.tourer(),
                        OptionalInt.empty(),
                        List.of(injector("i-60", "60 lb/h at 43.5 psi"), injector("i-20", "20 lb/h at 43.5 psi")))
                .orThrow();
        assertThat(answer.number()).isEqualTo(8);
        assertThat(answer.each().toPoundsPerHour())
                .isCloseTo(answer.demand().mass().toPoundsPerHour() / 8 / 0.85, within(1e-9));
        assertThat(answer.rated()).isLessThan(answer.each());
        assertThat(answer.rows()).extracting(InjectorSizeAnswer.Row::fits).containsExactly(true, false);
        assertThat(answer.findings()).isEmpty();
        assertThat(answer.cautions()).isNotEmpty();
        Whole.assertWorkedOut(answer);
    }

    @Test
    void sharesTheFuelAmongTheInjectorsThatAreAskedFor() {
        InjectorSizeAnswer six = InjectorSizeAnswer.of(Builds.tourer(), OptionalInt.of(6), List.of())
                .orThrow();
        assertThat(six.number()).isEqualTo(6);
        assertThat(InjectorSizeAnswer.of(
                                Builds.of(Builds.TOURER.without(Slot.INJECTORS)), OptionalInt.empty(), List.of())
                        .reason()
                        .orElseThrow())
                .contains("such as size injectors 8");
        assertThat(InjectorSizeAnswer.of(Builds.of(Builds.TOURER.without(Slot.FUEL_PUMP)), OptionalInt.of(8), List.of())
                        .orThrow()
                        .difference()
                        .toPsi())
                .isCloseTo(58.0, within(1e-9));
    }

    @Test
    void sizesTheLineForTheWholePumpFlowInAReturnSystem() {
        LineSizeAnswer answer =
                LineSizeAnswer.of(Builds.tourer(), Optional.empty()).orThrow();
        assertThat(answer.ofPump()).isTrue();
        assertThat(LineSizeAnswer.narrowest(answer.feed())).isPresent();
        assertThat(answer.length().toMeters()).isCloseTo(5.8, within(1e-9));
        Whole.assertWorkedOut(answer);
        assertThat(answer.findings()).isEmpty();
        assertThat(answer.cautions()).isNotEmpty();
    }

    @Test
    void sizesTheLineForTheDemandInAReturnlessOne() {
        Combination returnless = Builds.of(Builds.TOURER.with(Slot.FUEL_SYSTEM, "returnless 58 psi, 13.5 V"));
        LineSizeAnswer answer =
                LineSizeAnswer.of(returnless, Optional.of(Length.ofMeters(3.0))).orThrow();
        assertThat(answer.ofPump()).isFalse();
        assertThat(answer.length()).isEqualTo(Length.ofMeters(3.0));
        assertThat(LineSizeAnswer.of(Builds.of(Builds.TOURER.without(Slot.FEED_LINE)), Optional.empty())
                        .reason()
                        .orElseThrow())
                .contains("such as size line 5 m");
    }
}
