package drivetrain.document;

import drivetrain.combination.PartKind;
import java.util.ArrayList;
import java.util.List;

/**
 * How the parts of one kind are read: which fields they have besides name and description, and what is made of them.
 *
 * @param kind the kind of part
 * @param fields the names of the fields, name and description first
 * @param maker makes the part
 * @param <T> the type of the part
 */
record PartReader<T>(PartKind<T> kind, List<String> fields, Maker<T> maker) {

    static final String NAME = "name";
    static final String DESCRIPTION = "description";

    /** All readers, in the order in which a catalog lists the kinds. */
    static final List<PartReader<?>> ALL = List.of(
            VehicleFields.READER,
            EngineFields.READER,
            TransmissionFields.READER,
            TransferCaseFields.READER,
            RatioFields.OVERDRIVE,
            RatioFields.AXLE,
            RatioFields.HUB_REDUCTION,
            TireFields.READER,
            DriveshaftFields.SHAFT,
            DriveshaftFields.LINE,
            DriveshaftFields.SUSPENSION,
            FuelFields.FUEL,
            PumpFields.READER,
            FuelFields.INJECTORS,
            FuelFields.HOSE,
            FuelFields.FILTER,
            FuelFields.LINE,
            FuelFields.SYSTEM,
            FuelFields.TANK);

    /** Makes a part. */
    @FunctionalInterface
    interface Maker<T> {
        /** Makes a part from its name, its fields and the files beside the catalog. */
        T make(String name, Fields fields, CurveFiles files);
    }

    /** Returns the reader of the parts that a catalog lists under a key. */
    static PartReader<?> of(String key) {
        for (PartReader<?> reader : ALL) {
            if (reader.kind().key().equals(key)) {
                return reader;
            }
        }
        throw new IllegalArgumentException(key);
    }

    /** Makes a reader for fields that follow name and description. */
    static <T> PartReader<T> of(PartKind<T> kind, List<String> own, Maker<T> maker) {
        List<String> fields = new ArrayList<>(List.of(NAME, DESCRIPTION));
        fields.addAll(own);
        return new PartReader<>(kind, List.copyOf(fields), maker);
    }
}
