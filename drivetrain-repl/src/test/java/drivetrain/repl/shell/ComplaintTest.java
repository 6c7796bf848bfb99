package drivetrain.repl.shell;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Line;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ComplaintTest {

    private static final Refusal REFUSAL = Refusal.of("axle", "4,10", "has a comma")
            .allowing("4.10")
            .suggesting(List.of("4.10"))
            .in(Line.place(6));

    @Test
    void underlinesTheFault() {
        assertThat(Complaint.underlined(REFUSAL, "axle 4,10", 80))
                .containsExactly(
                        "axle \"4,10\": has a comma; allowed: 4.10", "  axle 4,10", "        ^", "  near: 4.10");
    }

    @Test
    void leavesTheCaretOutWhereItCannotStandRight() {
        assertThat(Complaint.underlined(REFUSAL, "axle 4,10 " + "and more ".repeat(10), 80))
                .hasSize(2);
        assertThat(Complaint.underlined(REFUSAL, "axle \u4E2D,10", 80)).hasSize(2);
    }

    @Test
    void namesThePlaceInAScript() {
        assertThat(Complaint.located(REFUSAL, "work.txt", 3))
                .containsExactly("work.txt:3:7: axle \"4,10\": has a comma; allowed: 4.10", "  near: 4.10");
    }

    @Test
    void namesBothPlacesWhereTheFaultLiesInAnotherFile() {
        Refusal elsewhere = REFUSAL.in(new Place("order.yaml", 8, 11));
        assertThat(Complaint.located(elsewhere, "<stdin>", 1).get(0))
                .isEqualTo("<stdin>:1:1: order.yaml:8:11: axle \"4,10\": has a comma; allowed: 4.10");
        assertThat(Complaint.underlined(elsewhere, "open order.yaml", 80).get(0))
                .startsWith("order.yaml:8:11: ");
    }

    @Test
    void shortensALongValue() {
        Refusal refusal = Refusal.of("tire", "9".repeat(500), "is wrong");
        assertThat(Complaint.plain(refusal)).containsExactly("tire \"" + "9".repeat(120) + "...\": is wrong");
    }

    @ParameterizedTest
    @ValueSource(ints = {20, 25, 30, 40, 60, 80, 120})
    void takesFourRowsAtMost(int width) {
        List<Refusal> refusals = List.of(
                REFUSAL,
                REFUSAL.allowing(
                        "a name that \"parts axle\" lists, or a literal such as 41/10, or a decimal number from 0.2 to 20"),
                Refusal.of("tire", "9".repeat(300), "is not a tire size")
                        .allowing("265/75R16, 35x12.50R17LT, 7.50R16".repeat(8))
                        .suggesting(List.of("265/75R16", "285/75R16", "235/85R16"))
                        .in(Line.place(5)));
        for (Refusal refusal : refusals) {
            int rows = Complaint.underlined(refusal, "axle 4,10", width).stream()
                    .mapToInt(line -> Wrapping.of(line, width).size())
                    .sum();
            assertThat(rows).as(refusal.sentence()).isBetween(1, 4);
        }
    }

    @Test
    void leavesOutWhatHelpsLeastFirst() {
        Refusal refusal = Refusal.of("axle", "4,10", "has a comma")
                .allowing("4.10 or 41/10")
                .suggesting(List.of("4.10"))
                .in(Line.place(5));
        assertThat(Complaint.underlined(refusal, "axle 4,10", 30))
                .containsExactly("axle \"4,10\": has a comma; allowed: 4.10 or 41/10", "  axle 4,10", "       ^");
        assertThat(Complaint.underlined(refusal, "axle 4,10", 24))
                .containsExactly("axle \"4,10\": has a comma", "  axle 4,10", "       ^", "  near: 4.10");
        assertThat(Complaint.underlined(refusal, "axle 4,10", 23))
                .containsExactly("axle \"4,10\": has a comma", "  axle 4,10", "       ^");
        assertThat(Complaint.underlined(refusal, "axle 4,10", 10)).containsExactly("axle \"4,10\": has a comma");
    }

    @Test
    void cutsWhatIsAllowedWithAMark() {
        Refusal refusal = Refusal.of("surface", "jam", "is not known")
                .allowing("asphalt, concrete, gravel, dirt, sand, snow, ice")
                .in(Line.place(8));
        assertThat(Complaint.underlined(refusal, "surface jam", 30))
                .containsExactly(
                        "surface \"jam\": is not known; allowed: asphalt, ...", "  surface jam", "          ^");
    }

    @Test
    void marksWhatItHadToCut() {
        Refusal refusal = Refusal.of("tire", "9".repeat(120), "is not a tire size");
        List<String> lines = Complaint.underlined(refusal, "tire 9", 20);
        assertThat(lines).hasSize(4);
        assertThat(lines.get(3)).endsWith("...").hasSizeLessThanOrEqualTo(20);
    }
}
