package drivetrain.repl.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import org.junit.jupiter.api.Test;

class ArgumentsTest {

    private static Arguments of(String line) {
        return Arguments.of(Line.parse(line), 1);
    }

    private static Place place(RefusedException refused) {
        return refused.refusal().place().orElseThrow();
    }

    private static RefusedException refuseAt(Arguments arguments, String given, int index) {
        return catchThrowableOfType(
                RefusedException.class,
                () -> arguments.read(text -> {
                    throw Refusal.of("size", given, "is wrong").at(index).asException();
                }));
    }

    @Test
    void givesTheTextAsTyped() {
        assertThat(of("engine 420 hp  at 5700 rpm # x").text()).isEqualTo("420 hp  at 5700 rpm");
        assertThat(of("save \"a b\"  c").text()).isEqualTo("a b c");
        assertThat(of("engine").text()).isEmpty();
    }

    @Test
    void placesAFaultInTheLine() {
        assertThat(place(refuseAt(of("tire  285/75Q16"), "285/75Q16", 6))).isEqualTo(new Place("line", 1, 13));
    }

    @Test
    void placesAFaultOfAPartOfTheText() {
        assertThat(place(refuseAt(of("cruise at 65 furlongs"), "65 furlongs", 3))
                        .column())
                .isEqualTo(14);
    }

    @Test
    void placesAFaultBehindQuotes() {
        assertThat(place(refuseAt(of("tire \"285/75 Q16\" x"), "285/75 Q16 x", 7))
                        .column())
                .isEqualTo(14);
        assertThat(place(refuseAt(of("tire \"285\" x"), "285 x", 4)).column()).isEqualTo(12);
    }

    @Test
    void leavesTheFaultOfAnotherFileInItsPlace() {
        Place elsewhere = new Place("order.yaml", 3, 4);
        RefusedException refused = catchThrowableOfType(
                RefusedException.class,
                () -> of("open x").read(text -> {
                    throw Refusal.of("tire", "x", "is wrong").in(elsewhere).asException();
                }));
        assertThat(place(refused)).isEqualTo(elsewhere);
    }

    @Test
    void refusesWordsThatAreTooMany() {
        Arguments arguments = of("undo twice");
        RefusedException refused =
                catchThrowableOfType(RefusedException.class, () -> arguments.requireAtMost(0, "undo"));
        assertThat(refused).hasMessageContaining("\"twice\": this is one word too many; allowed: undo");
        assertThat(place(refused).column()).isEqualTo(6);
        arguments.requireAtMost(1, "undo");
    }

    @Test
    void placesWhatIsMissingAtTheEndOfTheLine() {
        Refusal refusal = of("save").refuse(0, "no file is named");
        assertThat(refusal.place().orElseThrow().column()).isEqualTo(5);
    }

    @Test
    void splits() {
        Arguments arguments = of("cruise 65 mph in 5");
        assertThat(arguments.until(2).text()).isEqualTo("65 mph");
        assertThat(arguments.from(2).text()).isEqualTo("in 5");
        assertThat(arguments.first()).contains(new Word("65", 7, 9, false));
        assertThat(of("show").first()).isEmpty();
    }
}
