package drivetrain.repl.shell;

import drivetrain.repl.session.Demo;
import drivetrain.repl.session.Session;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The words by which parts are chosen and gears are asked about. */
class LineFuzz {

    private static final List<String> LINES = List.of(
            "engine v8-6.2",
            "engine 420 hp at 5700 rpm, 460 lb-ft at 4100 rpm, idle 650 rpm, max 6600 rpm",
            "transmission auto-6-hd",
            "transmission 4.03 2.36 1.53 1.15 0.85 0.67 reverse 3.06",
            "transfer 1.00 2.72",
            "axle 41/11",
            "axle front 4.11",
            "tire 285/75R16 rollout 2510 mm",
            "tire front mud-35-r17",
            "vehicle wagon-long",
            "overdrive 0.78",
            "hubs 24/16",
            "cruise 65 mph in 4 low",
            "speeds 3000 rpm",
            "crawl",
            "torque",
            "shifts 5500 rpm",
            "speedometer",
            "check",
            "show",
            "explain cruise",
            "plot speeds low",
            "parts tire 285",
            "title A 'quoted' name",
            "open demo ranch-crawler",
            "units both",
            "output table",
            "undo",
            "redo",
            "help cruise",
            "tour");

    @Test
    void answersOrRefusesWhateverIsTyped() {
        new MutatedLines(LINES).run("line fuzz", () -> Session.on(Demo.shelf()));
    }
}
