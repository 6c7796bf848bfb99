package drivetrain.repl.shell;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The words by which packages are kept, compared, solved for and swept, on an order of the demo; {@link ToleranceLineFuzz} has those of tolerances. */
class ComparisonLineFuzz {

    private static final List<String> LINES = List.of(
            "keep stock",
            "keep",
            "compare",
            "compare stock in-hand differences",
            "what if axle 41/10",
            "what if tire 285/75R16 and axle 43/11",
            "solve axle for cruise 2000 rpm at 65 mph",
            "solve transfer low for crawl 60",
            "solve tire for speedometer exact",
            "solve shaft diameter for share of critical speed 65 %",
            "solve pump flow for fuel margin 15 %",
            "solve axle for crawl speed 1.2 mph",
            "sweep axle 3.73 or 4.10 and tire all where rpm at 65 mph between 1700 and 2200 rpm and crawl ratio at least 40 best 3 by highest crawl ratio and lowest rpm at 65 mph weight 2",
            "sweep axle 3.07..5.38 step 0.01 where crawl ratio at least 40",
            "sweep transmission manual by highest wheel torque",
            "sweep axle all where load margin at least 0 % best 2 by load margin",
            "front lowest rpm at 65 mph against highest crawl ratio over axle all and transmission all",
            "front lowest crawl speed against lowest rpm at 60 mph over axle 3.73 or 4.10 where crawl ratio at least 20",
            "sensitivity",
            "axle 41/11",
            "open demo ranch-crawler",
            "tire 285/75R16 rollout 2510 mm",
            "undo");

    @Test
    void answersOrRefusesWhateverIsTyped() {
        new MutatedLines(LINES).run("comparison line fuzz", MutatedLines::demo);
    }
}
