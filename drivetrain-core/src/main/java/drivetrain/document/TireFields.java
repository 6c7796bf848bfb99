package drivetrain.document;

import drivetrain.combination.PartKind;
import drivetrain.quantity.Length;
import drivetrain.quantity.RevolutionsPerDistance;
import drivetrain.tire.Tire;
import drivetrain.tire.TireDesignation;
import java.util.List;

/** Reads tires. */
final class TireFields {

    static final PartReader<Tire> READER =
            PartReader.of(PartKind.TIRE, List.of("size", "rollout", "revolutions", "diameter"), TireFields::tire);

    private TireFields() {}

    private static Tire tire(String name, Fields fields, CurveFiles files) {
        return new Tire(
                name,
                fields.required("size", value -> value.literal(TireDesignation::parse)),
                fields.optional("rollout", value -> value.quantity(Length.KIND)),
                fields.optional("revolutions", value -> value.quantity(RevolutionsPerDistance.KIND)),
                fields.optional("diameter", value -> value.quantity(Length.KIND)));
    }
}
