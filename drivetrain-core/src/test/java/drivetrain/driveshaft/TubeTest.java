package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TubeTest {

    private static final Tube THREE_INCH = Tube.of(Length.ofInches(3.0), Length.ofInches(0.083));

    private static Refusal refusalOf(String text) {
        return catchThrowableOfType(RefusedException.class, () -> Tube.parse(text))
                .refusal();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "3 in x 0.083 in",
                "3x0.083 in",
                "3 X 0.083in",
                "3 in\u00D70.083 in",
                " 3.0\" x .083\" ",
                "3 in x 0.083 in"
            })
    void readsATubeInEveryCustomaryWriting(String text) {
        assertThat(Tube.parse(text)).isEqualTo(THREE_INCH);
    }

    @Test
    void readsFractionsAndOtherUnits() {
        assertThat(Tube.parse("3 1/2 x 0.083 in").diameter()).isEqualTo(Length.ofInches(3.5));
        assertThat(Tube.parse("76.2 x 2.1 mm").diameter()).isEqualTo(Length.ofMillimeters(76.2));
        assertThat(Tube.parse("3 in x 2.1 mm").wall()).isEqualTo(Length.ofMillimeters(2.1));
    }

    @Test
    void readsBackWhatItWrites() {
        Tube metric = Tube.of(Length.ofMillimeters(88.9), Length.ofMillimeters(2.11));

        assertThat(Tube.parse(metric.text())).isEqualTo(metric);
        assertThat(Tube.parse(THREE_INCH.text())).isEqualTo(THREE_INCH);
    }

    @Test
    void hasTheMomentsOfARing() {
        double outside = 0.0762;
        double inside = 0.0762 - 2 * 0.0254 * 0.083;

        assertThat(THREE_INCH.bore().toMeters()).isCloseTo(inside, within(1e-15));
        assertThat(THREE_INCH.area())
                .isCloseTo(Math.PI / 4 * (Math.pow(outside, 2) - Math.pow(inside, 2)), within(1e-16));
        assertThat(THREE_INCH.secondMoment())
                .isCloseTo(Math.PI / 64 * (Math.pow(outside, 4) - Math.pow(inside, 4)), within(1e-20));
        assertThat(THREE_INCH.polarMoment()).isEqualTo(2 * THREE_INCH.secondMoment());
    }

    @Test
    void aWallOfHalfTheDiameterIsASolidBar() {
        Tube bar = Tube.solid(Length.ofMillimeters(40));

        assertThat(bar.bore()).isEqualTo(Length.ofMeters(0));
        assertThat(bar.area()).isCloseTo(Math.PI * 0.0004, within(1e-15));
        assertThat(Tube.solid(Length.ofInches(1.7)).bore().toMeters()).isNotNegative();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3 in x -0.083 in  | 7 | its wall must be greater than zero",
                "3 in x 0 in       | 7 | its wall must be greater than zero",
                "3 in x 1.6 in     | 7 | its wall is more than the radius of the tube",
                "3 in x 2.1 in     | 7 | its wall is more than the radius of the tube",
                "3 mm x 0.083 mm   | 0 | its diameter cannot be that of a shaft: is the unit the right one?",
                "76.2 in x 2.1 mm  | 0 | its diameter cannot be that of a shaft: is the unit the right one?",
                "-3 in x 0.083 in  | 0 | its diameter cannot be that of a shaft: is the unit the right one?",
                "3 in              | 4 | has no x between outside diameter and wall",
                "3 in x            | 6 | has no wall",
                "x 0.083 in        | 0 | has no outside diameter",
                "3 in x 0.083      | 12 | its wall has no unit",
                "3 x 0.083         | 9 | its wall has no unit",
                "3 lb x 0.083 in   | 2 | its outside diameter \"lb\" is a unit of mass, not of length",
                "3,5 in x 0.083 in | 1 | its outside diameter has a comma; write the decimals after a point and no separator between thousands",
                "3 in x 0.083 in x 48 in | 16 | has a second x; the length is a word of its own"
            })
    void refusesAnImpossibleTubeAndPointsAtTheFault(String text, int position, String problem) {
        Refusal refusal = refusalOf(text);

        assertThat(refusal.problem()).isEqualTo(problem);
        assertThat(refusal.position()).hasValue(position);
        assertThat(refusal.given()).isEqualTo(text);
        assertThat(refusal.subject()).isEqualTo("tube");
        assertThat(refusal.allowed()).isNotEmpty();
    }

    @Test
    void refusesEndlessText() {
        assertThat(refusalOf("3 in x 0.083 in".repeat(20)).problem()).isEqualTo("is too long");
    }
}
