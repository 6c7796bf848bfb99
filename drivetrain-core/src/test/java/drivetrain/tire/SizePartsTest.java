package drivetrain.tire;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.refusal.Refusal;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Designations made of parts, without a text. */
class SizePartsTest {

    private static final Markings PASSENGER =
            new Markings(Optional.of(TireUse.PASSENGER), Optional.empty(), Optional.empty());

    private static MetricDesignation metric(int width, int aspect, Construction construction, boolean zr, double rim) {
        return new MetricDesignation(width, OptionalInt.of(aspect), construction, zr, rim, Markings.NONE);
    }

    @Test
    void rejectsAspectRatioOfZero() {
        Refusal refusal = RefusedSize.by(() -> metric(265, 0, Construction.RADIAL, false, 16));

        assertThat(refusal.subject()).isEqualTo("aspect ratio");
        assertThat(refusal.given()).isEqualTo("0");
        assertThat(refusal.allowed()).isEqualTo("20 to 100 %, whole");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -16, 16.25, 31, Double.NaN, Double.POSITIVE_INFINITY})
    void rejectsRimsThatDoNotExist(double rim) {
        assertThat(RefusedSize.by(() -> metric(265, 75, Construction.RADIAL, false, rim))
                        .allowed())
                .isEqualTo("8 to 30 in, in halves");
    }

    @Test
    void rejectsNegativeSectionWidth() {
        assertThat(RefusedSize.by(() -> metric(-265, 75, Construction.RADIAL, false, 16))
                        .subject())
                .isEqualTo("section width");
    }

    @Test
    void rejectsZrOfABiasPlyTire() {
        assertThat(RefusedSize.by(() -> metric(285, 35, Construction.DIAGONAL, true, 19))
                        .given())
                .isEqualTo("Z-");
    }

    @Test
    void rejectsAFlotationSizeWithoutRoomForTheTire() {
        Refusal refusal = RefusedSize.by(() -> new FlotationDesignation(20, 8, Construction.RADIAL, 17, Markings.NONE));

        assertThat(refusal.allowed()).isEqualTo("at most 16 in for a nominal diameter of 20 in");
    }

    @Test
    void rejectsInchSizesMarkedForPassengerCars() {
        assertThat(RefusedSize.by(() -> new FlotationDesignation(35, 12.5, Construction.RADIAL, 17, PASSENGER))
                        .given())
                .isEqualTo("P");
        assertThat(RefusedSize.by(() -> new NumericDesignation(7.5, Construction.RADIAL, 16, PASSENGER))
                        .given())
                .isEqualTo("P");
    }

    @Test
    void rejectsMoreDecimalsThanASizeHas() {
        assertThat(RefusedSize.by(() -> new NumericDesignation(7.505, Construction.RADIAL, 16, Markings.NONE))
                        .allowed())
                .isEqualTo("2.5 to 18 in, at most two decimals");
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 171, Integer.MAX_VALUE})
    void rejectsLoadIndicesOutsideTheTable(int index) {
        assertThat(RefusedSize.by(() -> new LoadIndex(index)).allowed()).isEqualTo("0 to 170");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "I", "O", "X", "Z", "A", "A9", "QQ"})
    void rejectsSpeedSymbolsThatDoNotExist(String symbol) {
        assertThat(RefusedSize.by(() -> new SpeedSymbol(symbol)).allowed()).contains("U H V");
    }

    @Test
    void takesSpeedSymbolsInLowerCase() {
        assertThat(new SpeedSymbol("q")).isEqualTo(new SpeedSymbol("Q")).hasToString("Q");
    }

    @Test
    void rejectsADualLoadIndexAboveTheSingleOne() {
        assertThat(RefusedSize.by(() -> new ServiceDescription(
                                new LoadIndex(119), Optional.of(new LoadIndex(122)), new SpeedSymbol("Q"), false))
                        .allowed())
                .isEqualTo("at most 119");
    }

    @Test
    void rejectsParenthesesAroundAnOrdinarySpeedSymbol() {
        assertThat(RefusedSize.by(() -> new ServiceDescription(
                                new LoadIndex(119), Optional.empty(), new SpeedSymbol("Q"), true))
                        .allowed())
                .isEqualTo("W or Y in parentheses");
    }

    @Test
    void writesServiceDescriptionsAsMarked() {
        assertThat(ServiceDescription.of(new LoadIndex(116), new SpeedSymbol("T"))
                        .text())
                .isEqualTo("116T");
    }
}
