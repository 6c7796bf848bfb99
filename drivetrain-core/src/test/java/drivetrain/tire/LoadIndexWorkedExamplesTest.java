package drivetrain.tire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Load index and speed symbol against the standards' tables. */
class LoadIndexWorkedExamplesTest {

    @ParameterizedTest
    @CsvFileSource(resources = "load-index.csv", useHeadersInDisplayName = true)
    void carriesWhatTheStandardsTableSays(int index, double kilograms) {
        assertThat(new LoadIndex(index).capacity().toKilograms()).isEqualTo(kilograms);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "speed-symbol.csv", useHeadersInDisplayName = true)
    void runsAsFastAsTheStandardsTableSays(String symbol, double kilometersPerHour) {
        assertThat(new SpeedSymbol(symbol).speed().toKilometersPerHour()).isEqualTo(kilometersPerHour, within(1e-9));
    }

    /** From memory: the top of the R80 series of the table. */
    @ParameterizedTest
    @ValueSource(ints = {160, 170})
    void endsWithTheRememberedValues(int index) {
        assertThat(new LoadIndex(index).capacity().toKilograms()).isEqualTo(index == 160 ? 4500.0 : 6000.0);
    }

    /** The index is a step of the R80 series of preferred numbers; the table is rounded, by no more than 1.3 %. */
    @Test
    void keepsWithinRoundingOfTheSeriesThatItStepsThrough() {
        double worst = 0.0;
        for (int index = LoadIndex.LEAST; index <= LoadIndex.MOST; index++) {
            double series = Math.pow(10.0, (index + 132.0) / 80.0);
            worst = Math.max(worst, Math.abs(new LoadIndex(index).capacity().toKilograms() / series - 1.0));
        }
        assertThat(worst).isBetween(0.012, 0.013);
    }

    @Test
    void risesWithEveryIndex() {
        for (int index = LoadIndex.LEAST + 1; index <= LoadIndex.MOST; index++) {
            assertThat(new LoadIndex(index).capacity()).isGreaterThan(new LoadIndex(index - 1).capacity());
        }
    }
}
