package drivetrain.refusal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearNamesTest {

    private static final List<String> WORDS =
            List.of("transmission", "transfer", "tire", "torque", "axle", "engine", "speedometer");

    @ParameterizedTest
    @CsvSource({
        "transmision,transmission",
        "tranfser,transfer",
        "TIRE,tire",
        "tyre,tire",
        "torqe,torque",
        "axel,axle",
        "speedomter,speedometer"
    })
    void findsTheMisspeltName(String typed, String meant) {
        assertThat(NearNames.of(typed, WORDS)).first().isEqualTo(meant);
    }

    @ParameterizedTest
    @CsvSource({"xyzzy", "q", "qwertyuiop", "' '", "''"})
    void findsNothingForNonsense(String typed) {
        assertThat(NearNames.of(typed, WORDS)).isEmpty();
    }

    @Test
    void givesAtMostThreeNearestFirstThenByAlphabet() {
        assertThat(NearNames.of("rp-4.10", List.of("rp-4.56", "rp-4.11", "rp-4.30", "rp-4.10b", "rp-4.10", "rp-4.10")))
                .containsExactly("rp-4.10", "rp-4.10b", "rp-4.11");
    }

    @Test
    void doesNotSearchForAVeryLongWord() {
        String word = "a".repeat(61);

        assertThat(NearNames.of(word, List.of(word))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'',abc,3",
        "abc,'',3",
        "abc,abc,0",
        "abc,acb,1",
        "abc,abcd,1",
        "abc,bc,1",
        "abc,xbc,1",
        "kitten,sitting,3",
        "ca,abc,3"
    })
    void countsEditsAndSwapsOfNeighbors(String a, String b, int edits) {
        assertThat(NearNames.distance(a, b)).isEqualTo(edits);
    }
}
