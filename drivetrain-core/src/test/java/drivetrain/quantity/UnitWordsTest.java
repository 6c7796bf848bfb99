package drivetrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every word of every unit of every kind. */
class UnitWordsTest {

    static Stream<Kind<?>> kinds() {
        return Kinds.all().stream();
    }

    private static List<String> wordsOf(Unit<?> unit) {
        List<String> words = new ArrayList<>(unit.spellings());
        words.add(unit.symbol());
        words.add(unit.asciiSymbol());
        return words;
    }

    @ParameterizedTest
    @MethodSource("kinds")
    <Q extends Quantity<Q>> void everyWordReadsItsOwnUnit(Kind<Q> kind) {
        for (Unit<Q> unit : kind.units()) {
            for (String word : wordsOf(unit)) {
                assertThat(kind.unit(word)).as(word).hasValue(unit);
                assertThat(kind.parse("400 " + word).in(unit)).as(word).isCloseTo(400, within(1e-12 * 400));
                if (!Character.isDigit(word.charAt(0))) {
                    assertThat(kind.parse("400" + word)).isEqualTo(kind.parse("400 " + word));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    <Q extends Quantity<Q>> void noCaseTurnsOneUnitIntoAnother(Kind<Q> kind) {
        for (Unit<Q> unit : kind.units()) {
            for (String word : wordsOf(unit)) {
                assertThat(kind.unit(word.toUpperCase(Locale.ROOT)).orElse(unit))
                        .as(word)
                        .isSameAs(unit);
                assertThat(kind.unit(word.toLowerCase(Locale.ROOT)).orElse(unit))
                        .as(word)
                        .isSameAs(unit);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void noWordIsReadByTwoKinds(Kind<?> kind) {
        for (Unit<?> unit : kind.units()) {
            for (String word : wordsOf(unit)) {
                assertThat(Kinds.all().stream().filter(any -> any.unit(word).isPresent()))
                        .as(word)
                        .hasSize(1);
                assertThat(Kinds.measuredIn(word).orElseThrow()).isSameAs(kind);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void everyUnitOfAnotherKindIsRefusedByItsName(Kind<?> kind) {
        for (Kind<?> other : Kinds.all()) {
            for (Unit<?> unit : other.units()) {
                if (other != kind) {
                    assertThatThrownBy(() -> kind.parse("1 " + unit.symbol()))
                            .isInstanceOf(RefusedException.class)
                            .hasMessageContaining("is a unit of " + other.name() + ", not of " + kind.name());
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void asciiSymbolsAreAscii(Kind<?> kind) {
        for (Unit<?> unit : kind.units()) {
            assertThat(unit.asciiSymbol().chars()).as(unit.symbol()).allMatch(c -> c > ' ' - 1 && c < 127);
            assertThat(unit).hasToString(unit.symbol());
        }
    }

    @Test
    void kindsHaveDifferentNamesAndTheirUnitsDifferentSymbols() {
        assertThat(Kinds.all().stream().map(Kind::name)).doesNotHaveDuplicates().isNotEmpty();
        assertThat(Kinds.all().stream().flatMap(kind -> kind.units().stream()).map(Unit::symbol))
                .doesNotHaveDuplicates();
    }

    @Test
    void oneWordForTwoUnitsIsAMistakeOfTheProgram() {
        Unit<Length> first = Unit.of("x", 1.0, "same");
        Unit<Length> second = Unit.of("y", 2.0, "same");

        assertThatThrownBy(() -> new UnitWords<Length>(List.of(first, second), Map.of()))
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void wordsThatDifferOnlyInCaseMustBeWrittenExactly() {
        Unit<Length> small = Unit.of("x", 1.0);
        Unit<Length> large = Unit.of("X", 2.0, "XX");
        UnitWords<Length> words = new UnitWords<>(List.of(small, large), Map.of());

        assertThat(words.find("x")).hasValue(small);
        assertThat(words.find("X")).hasValue(large);
        assertThat(words.find("xx")).hasValue(large);
        UnitWords<Length> twoLetters = new UnitWords<Length>(List.of(Unit.of("xy", 1.0), Unit.of("XY", 2.0)), Map.of());
        assertThat(twoLetters.find("Xy")).isEmpty();
    }
}
