package drivetrain.engine;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Power;
import drivetrain.quantity.Torque;
import drivetrain.quantity.Volume;
import java.util.ArrayList;
import java.util.List;

/** Writes an engine as the literal text that {@link EngineLiteral} reads back. */
final class EngineText {

    private EngineText() {}

    static String of(Engine engine) {
        List<String> parts = new ArrayList<>();
        if (!engine.torque().text().isEmpty()) {
            parts.add(engine.torque().text());
        }
        engine.statedPower().ifPresent(stated -> parts.add(power(stated)));
        engine.idle().ifPresent(idle -> parts.add("idle " + speed(idle)));
        parts.add("max " + speed(engine.maximumSpeed()));
        engine.displacement().ifPresent(volume -> parts.add(volume(volume)));
        if (engine.aspiration() != Aspiration.NATURAL) {
            parts.add(engine.aspiration().word());
        }
        if (engine.ignition() != Ignition.SPARK) {
            parts.add("diesel");
        }
        if (engine.rating() != Rating.NET) {
            parts.add(engine.rating().word());
        }
        if (engine.measuredAt() != MeasuredAt.CRANK) {
            parts.add(engine.measuredAt().word());
        }
        return String.join(", ", parts);
    }

    static String speed(AngularSpeed speed) {
        return ShownText.exact(speed, List.of(AngularSpeed.RPM));
    }

    static String torque(Torque torque) {
        return ShownText.exact(torque, List.of(Torque.POUND_FOOT, Torque.NEWTON_METER));
    }

    static String power(Power power) {
        return ShownText.exact(power, List.of(Power.HORSEPOWER, Power.KILOWATT, Power.METRIC_HORSEPOWER));
    }

    private static String volume(Volume volume) {
        return ShownText.exact(volume, List.of(Volume.LITER, Volume.CUBIC_INCH, Volume.CUBIC_CENTIMETER));
    }
}
