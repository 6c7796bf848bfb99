package drivetrain.document;

import drivetrain.combination.PartKind;
import drivetrain.combination.RoadData;
import drivetrain.combination.Vehicle;
import drivetrain.gearing.Ratio;
import drivetrain.gearing.Speedometer;
import drivetrain.gearing.SpeedometerDrive;
import drivetrain.quantity.Area;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.MomentOfInertia;
import drivetrain.tire.Tire;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Reads vehicles. */
final class VehicleFields {

    /** The fields of a speedometer. */
    static final List<String> SPEEDOMETER = List.of(
            "drive", "calibratedCircumference", "calibratedTire", "calibratedAxle", "drivenTeeth", "drivingTeeth");

    static final PartReader<Vehicle> READER = PartReader.of(
            PartKind.VEHICLE,
            List.of(
                    "mass",
                    "frontAxleLoad",
                    "rearAxleLoad",
                    "rearWheels",
                    "speedometer",
                    "dragArea",
                    "wheelbase",
                    "centerOfGravity",
                    "frontShare",
                    "engineInertia",
                    "wheelInertia"),
            VehicleFields::vehicle);

    private VehicleFields() {}

    /** How many wheels the rear axle has a side. */
    private enum RearWheels {
        SINGLE("single"),
        DUAL("dual");

        private final String word;

        RearWheels(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    private static Vehicle vehicle(String name, Fields fields, CurveFiles files) {
        return new Vehicle(
                name,
                fields.optional("mass", value -> value.quantity(Mass.KIND)),
                fields.optional("frontAxleLoad", value -> value.quantity(Mass.KIND)),
                fields.optional("rearAxleLoad", value -> value.quantity(Mass.KIND)),
                fields.required("rearWheels", value -> value.choice(RearWheels.class, RearWheels::word))
                        == RearWheels.DUAL,
                fields.optional("speedometer", VehicleFields::speedometer),
                roadData(fields));
    }

    private static RoadData roadData(Fields fields) {
        Optional<Double> share = fields.optional("frontShare", Value::number);
        return new RoadData(
                fields.optional("dragArea", value -> value.quantity(Area.KIND)),
                fields.optional("wheelbase", value -> value.quantity(Length.KIND)),
                fields.optional("centerOfGravity", value -> value.quantity(Length.KIND)),
                share.isPresent() ? OptionalDouble.of(share.get()) : OptionalDouble.empty(),
                fields.optional("engineInertia", value -> value.quantity(MomentOfInertia.KIND)),
                fields.optional("wheelInertia", value -> value.quantity(MomentOfInertia.KIND)));
    }

    private static Speedometer speedometer(Value value) {
        Fields fields = value.fields("speedometer", SPEEDOMETER);
        fields.requireAtMostOneOf("calibratedCircumference", "calibratedTire");
        Length circumference = fields.optional("calibratedCircumference", length -> length.quantity(Length.KIND))
                .or(() -> fields.optional("calibratedTire", VehicleFields::circumference))
                .orElseThrow(() -> fields.refusal("has neither calibratedCircumference nor calibratedTire"));
        SpeedometerDrive drive =
                fields.required("drive", word -> word.choice(SpeedometerDrive.class, SpeedometerDrive::label));
        Optional<Ratio> axle = fields.optional("calibratedAxle", ratio -> ratio.literalOrNumber(Ratio::parse));
        OptionalInt driven = teeth(fields, "drivenTeeth");
        OptionalInt driving = teeth(fields, "drivingTeeth");
        return fields.made(() -> new Speedometer(drive, circumference, axle, driven, driving));
    }

    private static Length circumference(Value size) {
        Tire tire = size.literal(Tire::parse);
        return size.made(() -> tire.rolling().orThrow().circumference());
    }

    private static OptionalInt teeth(Fields fields, String field) {
        Optional<Integer> teeth = fields.optional(field, Value::wholeNumber);
        return teeth.isPresent() ? OptionalInt.of(teeth.get()) : OptionalInt.empty();
    }
}
