package drivetrain.gearing;

import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;

/** How a speedometer reading is worked out, as text; made only when asked for. */
final class SpeedometerWorkings {

    private static final Source COUNTING = Source.derived(
            "a speedometer counts turns of a shaft or a wheel and shows the distance that they meant on the calibrated tire and axle");

    private SpeedometerWorkings() {}

    static Working reading(
            Speedometer speedometer, SpeedometerReading reading, Length circumference, Ratio axle, HubReduction hubs) {
        Working.Builder working = Working.of("speedometer reading")
                .input("true speed", "v", GearWorkings.road(reading.actual()), "given")
                .input("calibrated circumference", "C_0", dimension(speedometer.calibratedCircumference()), "vehicle")
                .input("rolling circumference", "C", dimension(circumference), "tire");
        String formula = "v_s = v x C_0 / C";
        if (speedometer.drive() == SpeedometerDrive.DRIVESHAFT) {
            working.input(
                            "calibrated axle ratio",
                            "i_0",
                            speedometer.calibratedAxle().orElseThrow().figure(),
                            "vehicle")
                    .input("axle ratio", "i_x", axle.figure(), "axle " + axle.text());
            formula += " x i_x / i_0";
            if (hubs.isFitted()) {
                working.input("hub reduction", "i_h", hubs.ratio().figure(), "hubs " + hubs.name());
                formula = "v_s = v x C_0 / C x i_x x i_h / i_0";
            }
        }
        return working.step("speed shown", formula, GearWorkings.road(reading.shown()))
                .step("error", "(v_s - v) / v", Figure.percent(reading.errorFraction(), 2))
                .source(COUNTING)
                .source(SpeedometerRules.UN_R39)
                .build();
    }

    private static Figure dimension(Length length) {
        return Figure.of(length, Display.DIMENSION);
    }
}
