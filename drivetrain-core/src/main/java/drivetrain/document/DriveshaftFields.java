package drivetrain.document;

import drivetrain.combination.PartKind;
import drivetrain.driveshaft.Driveshaft;
import drivetrain.driveshaft.LineSurvey;
import drivetrain.driveshaft.Suspension;
import java.util.List;

/** Reads driveshafts, their lines and suspensions, each of which a catalog writes out as the shell takes it. */
final class DriveshaftFields {

    static final PartReader<Driveshaft> SHAFT = PartReader.of(
            PartKind.DRIVESHAFT,
            List.of("shaft"),
            (name, fields, files) -> fields.required("shaft", value -> value.literal(Driveshaft::parse))
                    .withName(name));

    static final PartReader<LineSurvey> LINE = PartReader.of(
            PartKind.SHAFT_LINE,
            List.of("line"),
            (name, fields, files) -> fields.required("line", value -> value.literal(LineSurvey::parse)));

    static final PartReader<Suspension> SUSPENSION = PartReader.of(
            PartKind.SUSPENSION,
            List.of("suspension"),
            (name, fields, files) -> fields.required("suspension", value -> value.literal(Suspension::parse)));

    private DriveshaftFields() {}
}
