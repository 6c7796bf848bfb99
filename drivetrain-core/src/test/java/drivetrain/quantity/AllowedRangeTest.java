package drivetrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AllowedRangeTest {

    /** Inches by definition, 25.4 mm: 50 mm = 1.9685 in, 5000 mm = 196.8504 in. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "50 to 5000 mm; shaft 900 in 5 deg down; 1.969 to 196.8 in",
                "0.001 m3 to 1.0 m3; 2000 US gal, usable 3 L; 0.2642 to 264.1 US gal",
                "-40 degC to 90 degC; fuel at 300 degF; -40 to 194 degF",
                "0.2 to 1.5 lb/(hp-h); burns 9 lb/(hp-h), 40 degC; 0.2 to 1.5 lb/(hp\u00B7h)",
                "at most 5000 mm; 900 in; at most 196.8 in",
                "up to 38.1 mm; 3 in x 2 in of steel; up to 1.5 in",
                "more than 0 mm; -50 in; more than 0 in",
                "-1640 to 19680 ft; altitude 9000 m; -499.8 to 5998 m",
                "50 to 5000 mm; 3-1/2 in; 1.969 to 196.8 in"
            })
    void wordsARangeInTheUnitThatWasTyped(String allowed, String typed, String reworded) {
        assertThat(AllowedRange.inUnitOf(allowed, typed)).contains(reworded);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a length such as 5 mm",
                "1 to 40",
                "0 % to 100 %",
                "20 to 700 GPa; see which unit the data sheet means",
                "1 m to 3 ft",
                "US gal or imp gal, which are 20 % apart",
                ""
            })
    void leavesWhatIsNoRange(String allowed) {
        assertThat(AllowedRange.inUnitOf(allowed, "900 in, 3 psi, 4 %")).isEmpty();
    }

    @Test
    void leavesARangeOfWhatWasNotTyped() {
        assertThat(AllowedRange.inUnitOf("50 to 5000 mm", "900 psi")).isEmpty();
        assertThat(AllowedRange.inUnitOf("50 to 5000 mm", "")).isEmpty();
    }

    @Test
    void roundsInwardSoThatWhatIsNamedIsAllowed() {
        Length least = Length.ofMillimeters(50.0);
        Length most = Length.ofMillimeters(5000.0);

        assertThat(AllowedRange.between(least, most, Length.INCH)).isEqualTo("1.969 to 196.8 in");
        assertThat(Length.parse("1.969 in")).isGreaterThan(least);
        assertThat(Length.parse("196.8 in")).isLessThan(most);
        assertThat(AllowedRange.atMost(most, Length.METER)).isEqualTo("at most 5 m");
    }
}
