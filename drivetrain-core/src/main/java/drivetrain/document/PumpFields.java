package drivetrain.document;

import drivetrain.combination.PartKind;
import drivetrain.fuel.MeasuredPump;
import drivetrain.fuel.Pump;
import drivetrain.fuel.PumpCurve;
import drivetrain.fuel.PumpPoint;
import drivetrain.quantity.Current;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.VolumeFlow;
import java.util.List;
import java.util.Optional;

/** Reads fuel pumps. */
final class PumpFields {

    /** The fields of one curve. */
    static final List<String> CURVE = List.of("voltage", "points", "pointsFile");

    /** The fields of one point of a curve. */
    static final List<String> POINT = List.of("pressure", "flow", "current");

    static final PartReader<Pump> READER = PartReader.of(PartKind.FUEL_PUMP, List.of("curves"), PumpFields::pump);

    private PumpFields() {}

    private static Pump pump(String name, Fields fields, CurveFiles files) {
        List<PumpCurve> curves = fields.required(
                "curves",
                value -> value.items(MeasuredPump.MOST_CURVES).stream()
                        .map(item -> curve(item.fields("pump curve", CURVE), files))
                        .toList());
        return new MeasuredPump(name, curves);
    }

    private static PumpCurve curve(Fields fields, CurveFiles files) {
        fields.requireAtMostOneOf("points", "pointsFile");
        Voltage voltage = fields.required("voltage", value -> value.quantity(Voltage.KIND));
        Optional<List<PumpPoint>> file =
                fields.optional("pointsFile", value -> new PumpSheet(files.named(value)).points());
        List<PumpPoint> points = file.isPresent() ? file.get() : fields.required("points", PumpFields::points);
        return fields.made(() -> new PumpCurve(voltage, points));
    }

    private static List<PumpPoint> points(Value value) {
        return value.items(PumpCurve.MOST_POINTS).stream()
                .map(item -> item.fields("pump curve point", POINT))
                .map(PumpFields::point)
                .toList();
    }

    private static PumpPoint point(Fields fields) {
        Pressure pressure = fields.required("pressure", value -> value.quantity(Pressure.KIND));
        VolumeFlow flow = fields.required("flow", value -> value.quantity(VolumeFlow.KIND));
        Optional<Current> current = fields.optional("current", value -> value.quantity(Current.KIND));
        return fields.made(() -> new PumpPoint(pressure, flow, current));
    }
}
