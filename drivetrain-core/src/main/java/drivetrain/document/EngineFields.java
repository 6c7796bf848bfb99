package drivetrain.document;

import drivetrain.combination.PartKind;
import drivetrain.engine.Aspiration;
import drivetrain.engine.Engine;
import drivetrain.engine.Ignition;
import drivetrain.engine.MeasuredAt;
import drivetrain.engine.NoTorque;
import drivetrain.engine.OperatingPoint;
import drivetrain.engine.PeakEstimate;
import drivetrain.engine.Rating;
import drivetrain.engine.TorqueCurve;
import drivetrain.engine.TorqueSource;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Power;
import drivetrain.quantity.Torque;
import drivetrain.quantity.Volume;
import java.util.List;
import java.util.Optional;

/** Reads engines. */
final class EngineFields {

    /** The fields of one point of a torque curve. */
    static final List<String> POINT = List.of("speed", "torque");

    /** The two peaks. */
    static final List<String> PEAKS = List.of("power", "torque");

    /** The fields of the peak power. */
    static final List<String> PEAK_POWER = List.of("power", "speed");

    /** The fields of the peak torque. */
    static final List<String> PEAK_TORQUE = List.of("torque", "speed");

    static final PartReader<Engine> READER = PartReader.of(
            PartKind.ENGINE,
            List.of(
                    "aspiration",
                    "ignition",
                    "displacement",
                    "rating",
                    "measuredAt",
                    "idle",
                    "maximumSpeed",
                    "statedPower",
                    "torqueCurve",
                    "torqueCurveFile",
                    "peaks"),
            EngineFields::engine);

    private EngineFields() {}

    private static Engine engine(String name, Fields fields, CurveFiles files) {
        return new Engine(
                name,
                fields.required("aspiration", value -> value.choice(Aspiration.class, Aspiration::word)),
                fields.required("ignition", value -> value.choice(Ignition.class, Ignition::word)),
                fields.optional("displacement", value -> value.quantity(Volume.KIND)),
                fields.required("rating", value -> value.choice(Rating.class, Rating::word)),
                fields.required("measuredAt", value -> value.choice(MeasuredAt.class, MeasuredAt::word)),
                fields.optional("idle", value -> value.quantity(AngularSpeed.KIND)),
                fields.required("maximumSpeed", value -> value.quantity(AngularSpeed.KIND)),
                fields.optional("statedPower", value -> value.quantity(Power.KIND)),
                torque(fields, files));
    }

    private static TorqueSource torque(Fields fields, CurveFiles files) {
        fields.requireAtMostOneOf("torqueCurve", "torqueCurveFile", "peaks");
        Optional<TorqueSource> curve = fields.optional("torqueCurve", EngineFields::curve);
        Optional<TorqueSource> file =
                fields.optional("torqueCurveFile", value -> TorqueCurveCsv.read(files.named(value)));
        Optional<TorqueSource> peaks = fields.optional("peaks", EngineFields::peaks);
        return curve.or(() -> file).or(() -> peaks).orElseGet(NoTorque::new);
    }

    private static TorqueSource curve(Value value) {
        List<OperatingPoint> points = value.items(TorqueCurve.MOST_POINTS).stream()
                .map(item -> item.fields("torque curve point", POINT))
                .map(EngineFields::point)
                .toList();
        return value.made(() -> TorqueCurve.of(points));
    }

    private static OperatingPoint point(Fields fields) {
        AngularSpeed speed = fields.required("speed", value -> value.quantity(AngularSpeed.KIND));
        Torque torque = fields.required("torque", value -> value.quantity(Torque.KIND));
        return fields.made(() -> OperatingPoint.of(speed, torque));
    }

    private static TorqueSource peaks(Value value) {
        Fields peaks = value.fields("engine's peaks", PEAKS);
        Fields power = peaks.required("power", peak -> peak.fields("peak power", PEAK_POWER));
        Fields torque = peaks.required("torque", peak -> peak.fields("peak torque", PEAK_TORQUE));
        Power mostPower = power.required("power", number -> number.quantity(Power.KIND));
        AngularSpeed powerSpeed = power.required("speed", number -> number.quantity(AngularSpeed.KIND));
        Torque mostTorque = torque.required("torque", number -> number.quantity(Torque.KIND));
        AngularSpeed torqueSpeed = torque.required("speed", number -> number.quantity(AngularSpeed.KIND));
        return peaks.made(() -> PeakEstimate.of(mostPower, powerSpeed, mostTorque, torqueSpeed));
    }
}
