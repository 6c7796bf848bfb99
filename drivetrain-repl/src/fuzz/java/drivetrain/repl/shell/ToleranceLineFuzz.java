package drivetrain.repl.shell;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The words of tolerances, on an order of the demo. Each line that is answered assesses some 2000 packages: fewer cases will do. */
class ToleranceLineFuzz {

    private static final List<String> LINES = List.of(
            "tolerance tire 1.5 % and idle 5 %",
            "tolerance torque curve 3 % and angles 0.5 deg",
            "tolerance axle 0.3 %",
            "tire 285/75R16 rollout 2510 mm",
            "open demo ranch-crawler",
            "undo");

    @Test
    void answersOrRefusesWhateverIsTyped() {
        new MutatedLines(LINES).run("tolerance line fuzz", MutatedLines::demo);
    }
}
