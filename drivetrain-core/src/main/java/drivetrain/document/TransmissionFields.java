package drivetrain.document;

import drivetrain.combination.PartKind;
import drivetrain.gearing.Clutch;
import drivetrain.gearing.Converter;
import drivetrain.gearing.ConverterCurve;
import drivetrain.gearing.Coupling;
import drivetrain.gearing.Efficiency;
import drivetrain.gearing.Ratio;
import drivetrain.gearing.Transmission;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.CapacityFactor;
import drivetrain.quantity.Torque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads transmissions. */
final class TransmissionFields {

    /** The fields of a torque converter. */
    static final List<String> CONVERTER =
            List.of("stallTorqueRatio", "lockUp", "slip", "speedRatio", "stallSpeed", "curve");

    /** The fields of a point of a converter's curve. */
    static final List<String> CURVE_POINT = List.of("speedRatio", "torqueRatio", "capacity");

    static final PartReader<Transmission> READER = PartReader.of(
            PartKind.TRANSMISSION,
            List.of(
                    "gears",
                    "reverse",
                    "coupling",
                    "converter",
                    "efficiency",
                    "inputRating",
                    "clutchRating",
                    "outputRating"),
            TransmissionFields::transmission);

    private static final int MOST_GEARS = 100;
    private static final int MOST_POINTS = 100;

    private TransmissionFields() {}

    /** What stands between engine and transmission. */
    private enum CouplingKind {
        CLUTCH("clutch"),
        CONVERTER("converter");

        private final String word;

        CouplingKind(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    private static Transmission transmission(String name, Fields fields, CurveFiles files) {
        List<Ratio> gears = fields.required(
                "gears",
                value -> value.items(MOST_GEARS).stream()
                        .map(gear -> gear.literalOrNumber(Ratio::parse))
                        .toList());
        return new Transmission(
                name,
                gears,
                fields.optional("reverse", value -> value.literalOrNumber(Ratio::parse)),
                coupling(fields),
                fields.optional("efficiency", TransmissionFields::efficiency),
                rating(fields, "inputRating"),
                rating(fields, "outputRating"));
    }

    /** Reads a torque rating of any part. */
    static Optional<Torque> rating(Fields fields, String field) {
        return fields.optional(field, value -> value.quantity(Torque.KIND));
    }

    private static Coupling coupling(Fields fields) {
        CouplingKind kind = fields.required("coupling", value -> value.choice(CouplingKind.class, CouplingKind::word));
        Optional<Converter> converter = fields.optional("converter", TransmissionFields::converter);
        Optional<Torque> clutchRating = rating(fields, "clutchRating");
        if (kind == CouplingKind.CONVERTER) {
            if (clutchRating.isPresent()) {
                throw fields.refusal("rates a clutch and couples by a converter");
            }
            return converter.orElseGet(Converter::unknown);
        }
        if (converter.isPresent()) {
            throw fields.refusal("describes a converter and couples by a clutch");
        }
        return new Clutch(true, clutchRating);
    }

    private static Converter converter(Value value) {
        Fields fields = value.fields("converter", CONVERTER);
        fields.requireAtMostOneOf("slip", "speedRatio");
        Optional<Double> stall = fields.optional("stallTorqueRatio", Value::number);
        Optional<Double> speedRatio = fields.optional("speedRatio", Value::number)
                .or(() -> fields.optional("slip", slip -> 1.0 - slip.number()));
        boolean lockUp = fields.optional("lockUp", Value::flag).orElse(false);
        Optional<AngularSpeed> stallSpeed = fields.optional("stallSpeed", speed -> speed.quantity(AngularSpeed.KIND));
        Optional<ConverterCurve> curve = fields.optional("curve", TransmissionFields::curve);
        return fields.made(() -> new Converter(optional(stall), lockUp, optional(speedRatio), stallSpeed, curve));
    }

    private static ConverterCurve curve(Value value) {
        List<ConverterCurve.Point> points = value.items(MOST_POINTS).stream()
                .map(item -> item.fields("point of a converter curve", CURVE_POINT))
                .map(fields -> new ConverterCurve.Point(
                        fields.required("speedRatio", Value::number),
                        fields.required("torqueRatio", Value::number),
                        fields.required("capacity", capacity -> capacity.quantity(CapacityFactor.KIND))))
                .toList();
        return value.made(() -> new ConverterCurve(points));
    }

    private static OptionalDouble optional(Optional<Double> number) {
        return number.isPresent() ? OptionalDouble.of(number.get()) : OptionalDouble.empty();
    }

    /** Reads the efficiency of any part. */
    static Efficiency efficiency(Value value) {
        return value.made(() -> Efficiency.of(value.number()));
    }
}
