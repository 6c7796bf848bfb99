package drivetrain.repl.shell;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The words about road, power, grip, converter and loads, on an order of the demo. */
class RoadLineFuzz {

    private static final List<String> LINES = List.of(
            "pull 6 % at 65 mph",
            "pull 20 deg",
            "pull",
            "top",
            "sprint to 60 mph",
            "sprint to 100 km/h",
            "grip wet asphalt",
            "grip gravel",
            "loads",
            "converter",
            "converter stall 2.4 stall-speed 2600 rpm",
            "converter curve 0:2.1:150 0.5:1.5:155 0.9:1:190 lockup",
            "air altitude 1500 m temperature 30 degC",
            "air standard",
            "limiter 105 mph",
            "surface loose gravel",
            "surface wet asphalt",
            "plot force",
            "plot power low",
            "explain pull",
            "explain top",
            "explain sprint",
            "explain loads",
            "vehicle mass 2240 kg front 1270 kg rear 1720 kg drag 1.45 m2 wheelbase 2870 mm cg 770 mm split 53 %",
            "vehicle wagon-long",
            "engine v8-6.2",
            "transmission 4.03 2.36 1.53 1.15 0.85 0.67 reverse 3.06 converter stall 2.0 lockup rating 900 lb-ft",
            "transfer 1.00 2.72 part-time rating 3000 lb-ft output-rating 4500 lb-ft",
            "axle 41/11 ring-rating 5200 lb-ft shaft-rating 2900 lb-ft",
            "tire 285/75R16 rollout 2510 mm",
            "open demo ranch-crawler",
            "undo");

    @Test
    void answersOrRefusesWhateverIsTyped() {
        new MutatedLines(LINES).run("road line fuzz", MutatedLines::demo);
    }
}
