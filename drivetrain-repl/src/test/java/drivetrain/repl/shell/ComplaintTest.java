package drivetrain.repl.shell;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Line;
import java.util.List;
import org.junit.jupiter.api.Test;

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
        assertThat(Complaint.underlined(REFUSAL, "axle 4,10", 9)).hasSize(2);
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
}
