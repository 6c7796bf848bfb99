package drivetrain.tire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TireDesignationTest {

    @Test
    void readsAMetricSizeWithDualServiceDescription() {
        TireDesignation read = TireDesignation.parse("LT265/75R16 123/120R");

        assertThat(read)
                .isEqualTo(new MetricDesignation(
                        265,
                        OptionalInt.of(75),
                        Construction.RADIAL,
                        false,
                        16.0,
                        new Markings(
                                Optional.of(TireUse.LIGHT_TRUCK),
                                Optional.empty(),
                                Optional.of(new ServiceDescription(
                                        new LoadIndex(123),
                                        Optional.of(new LoadIndex(120)),
                                        new SpeedSymbol("R"),
                                        false)))));
        assertThat(read.rimDiameter().toInches()).isEqualTo(16.0);
        assertThat(read.size()).isEqualTo("LT265/75R16");
    }

    @Test
    void readsAFlotationSize() {
        assertThat(TireDesignation.parse("35x12.50-15"))
                .isEqualTo(new FlotationDesignation(35.0, 12.5, Construction.DIAGONAL, 15.0, Markings.NONE));
    }

    @Test
    void readsANumericSize() {
        TireDesignation read = TireDesignation.parse("7.50R16.5");

        assertThat(read).isEqualTo(new NumericDesignation(7.5, Construction.RADIAL, 16.5, Markings.NONE));
        assertThat(read.rimDiameter().toMillimeters()).isCloseTo(419.1, within(1e-9));
    }

    @Test
    void readsAMetricSizeWithoutAspectRatio() {
        TireDesignation read = TireDesignation.parse("205R16");

        assertThat(read)
                .isEqualTo(new MetricDesignation(
                        205, OptionalInt.empty(), Construction.RADIAL, false, 16.0, Markings.NONE));
        assertThat(read.service()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "265/75R16, 265/75R16",
        "'  265 / 75 r 16  ', 265/75R16",
        "265/75r16 116t, 265/75R16 116T",
        "p265/70r17 113 s, P265/70R17 113S",
        "LT 265/75R16 123 / 120 Q, LT265/75R16 123/120Q",
        "265/75R16LT, LT265/75R16",
        "st205/75d15, ST205/75-15",
        "265/75-16, 265/75-16",
        "P195/75B14, P195/75B14",
        "285/35ZR19 (99Y), 285/35ZR19 (99Y)",
        "285/35zr19 (99 y), 285/35ZR19 (99Y)",
        "285/35ZR19(99W), 285/35ZR19 (99W)",
        "6.50R16C 108/107N, 6.50R16C 108/107N",
        "195/75 R16 C 107/105R, ''",
        "195/75R16C 107/105R, 195/75R16C 107/105R",
        "LT265/75R16C, LT265/75R16 LRC",
        "LT265/75R16 C, LT265/75R16 LRC",
        "LT265/75R16E 123/120R, LT265/75R16 123/120R LRE",
        "265/75R16 load range e, 265/75R16 LRE",
        "265/75R16 LoadRange E, 265/75R16 LRE",
        "265/75R16 LR E, 265/75R16 LRE",
        "265/75R16 10PR 116T, 265/75R16 116T LRE",
        "7.50-16 8 pr, 7.50-16 LRD",
        "205/60R15 95V XL, 205/60R15 95V XL",
        "205/60R15 extra load 95V, 205/60R15 95V XL",
        "205/60R15 reinforced, 205/60R15 XL",
        "205/60R15 sl, 205/60R15 SL",
        "205/60R15 standard load, 205/60R15 SL",
        "35x12.50R17LT, 35x12.50R17LT",
        "35X12.5R17 lt, 35x12.50R17LT",
        "35\u00D712.50R17LTE, 35x12.50R17LT LRE",
        "LT35x12.50R17, 35x12.50R17LT",
        "38.5x14.50-16.5, 38.5x14.50-16.5",
        "33x12.50D15, 33x12.50-15",
        "7.5R16, 7.50R16",
        "10R22.5, 10.00R22.5",
        "7.50R16LT LRD, 7.50R16LT LRD",
        "20.5x8.0-10ST, 20.5x8.00-10ST",
        "12-16.5 144 a3, 12.00-16.5 144A3",
        "205R16 104\u00A0S, 205R16 104S",
    })
    void readsWhatPeopleWrite(String typed, String canonical) {
        if (canonical.isEmpty()) {
            assertThat(RefusedSize.of(typed).position()).hasValue(11);
            return;
        }
        TireDesignation read = TireDesignation.parse(typed);

        assertThat(read.text()).isEqualTo(canonical);
        assertThat(TireDesignation.parse(canonical)).isEqualTo(read).hasSameHashCodeAs(read);
    }

    @ParameterizedTest
    @ValueSource(strings = {"A1", "A8", "B", "H", "Q", "Y"})
    void readsEverySortOfSpeedSymbol(String symbol) {
        assertThat(TireDesignation.parse("265/75R16 116" + symbol)
                        .service()
                        .orElseThrow()
                        .speed())
                .isEqualTo(new SpeedSymbol(symbol));
    }

    @Test
    void tellsSizesApartByTheirMarkings() {
        assertThat(TireDesignation.parse("265/75R16")).isNotEqualTo(TireDesignation.parse("LT265/75R16"));
        assertThat(TireDesignation.parse("7.50R16")).isNotEqualTo(TireDesignation.parse("7.50-16"));
    }

    @Test
    void labelsConstructionsInWords() {
        assertThat(TireDesignation.parse("7.50-16").construction().label()).isEqualTo("diagonal (bias-ply)");
    }
}
