package drivetrain.refusal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RefusalTest {

    private static final Refusal REFUSAL = Refusal.of("axle ratio", "4,10", "has a comma");

    @Test
    void startsWithNothingButTheProblem() {
        assertThat(REFUSAL.allowed()).isEmpty();
        assertThat(REFUSAL.position()).isEmpty();
        assertThat(REFUSAL.suggestions()).isEmpty();
        assertThat(REFUSAL.place()).isEmpty();
    }

    @Test
    void saysSubjectValueProblemAndWhatIsAllowedInOneLine() {
        assertThat(REFUSAL.sentence()).isEqualTo("axle ratio \"4,10\": has a comma");
        assertThat(REFUSAL.allowing("1 to 10").in(new Place("demo.yaml", 12, 3)).sentence())
                .isEqualTo("demo.yaml:12:3: axle ratio \"4,10\": has a comma; allowed: 1 to 10");
    }

    @Test
    void leavesOutAValueThatWasNotGiven() {
        assertThat(Refusal.of("answer", "", "needs a tire").sentence()).isEqualTo("answer: needs a tire");
    }

    @Test
    void addsPositionAndSuggestions() {
        Refusal refusal = REFUSAL.at(1).suggesting(List.of("4.10"));

        assertThat(refusal.position()).hasValue(1);
        assertThat(refusal.suggestions()).containsExactly("4.10");
    }

    @Test
    void keepsThreeSuggestionsAndCopiesThem() {
        List<String> near = new ArrayList<>(List.of("a", "b", "c", "d"));
        Refusal refusal = REFUSAL.suggesting(near);
        near.set(0, "z");

        assertThat(refusal.suggestions()).containsExactly("a", "b", "c");
    }

    @Test
    void keepsTheValueAsTypedButShowsControlCharactersAsEscapes() {
        String hostile = "4.10\u001B[2J\n";
        Refusal refusal = Refusal.of("axle ratio", hostile, "is not a ratio").in(new Place("a\u0007.yaml", 1, 0));

        assertThat(refusal.given()).isEqualTo(hostile);
        assertThat(refusal.sentence())
                .isEqualTo("a\\u0007.yaml:1: axle ratio \"4.10\\u001B[2J\\u000A\": is not a ratio");
        assertThat(refusal.asException()).hasMessage(refusal.sentence());
    }

    @Test
    void cutsAVeryLongValueWithAMark() {
        Refusal refusal = Refusal.of("axle ratio", "4".repeat(1_000_000), "is too long");

        assertThat(refusal.sentence()).isEqualTo("axle ratio \"" + "4".repeat(120) + "...\": is too long");
        assertThat(refusal.given()).hasSize(1_000_000);
    }

    @Test
    void anExceptionCarriesTheRefusalAndGainsAPlace() {
        RefusedException bare = REFUSAL.asException();
        RefusedException placed = bare.in(new Place("demo.yaml", 7, 0));

        assertThat(bare.refusal()).isEqualTo(REFUSAL);
        assertThat(placed.refusal()).isEqualTo(REFUSAL.in(new Place("demo.yaml", 7, 0)));
        assertThat(placed).hasMessageStartingWith("demo.yaml:7: axle ratio").hasCause(bare);
    }

    @Test
    void aPlaceLeavesOutWhatIsNotKnown() {
        assertThat(new Place("demo.yaml", 0, 0)).hasToString("demo.yaml");
        assertThat(new Place("demo.yaml", 7, 0)).hasToString("demo.yaml:7");
        assertThat(new Place("demo.yaml", 7, 3)).hasToString("demo.yaml:7:3");
    }

    @Test
    void aPlaceCountsFromOne() {
        assertThatThrownBy(() -> new Place("demo.yaml", -1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Place("demo.yaml", 1, -1)).isInstanceOf(IllegalArgumentException.class);
    }
}
