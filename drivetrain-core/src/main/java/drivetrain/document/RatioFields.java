package drivetrain.document;

import drivetrain.combination.PartKind;
import drivetrain.gearing.AxleRatings;
import drivetrain.gearing.AxleRatio;
import drivetrain.gearing.Efficiency;
import drivetrain.gearing.HubReduction;
import drivetrain.gearing.Overdrive;
import drivetrain.gearing.Ratio;
import java.util.List;
import java.util.Optional;

/** Reads the parts that are one ratio: axles, overdrives, hub reductions. */
final class RatioFields {

    private static final List<String> FIELDS = List.of("ratio", "efficiency");

    static final PartReader<AxleRatio> AXLE = PartReader.of(
            PartKind.AXLE,
            List.of("ratio", "efficiency", "ringAndPinionRating", "halfShaftRating", "jointRating"),
            (name, fields, files) -> new AxleRatio(name, ratio(fields), efficiency(fields), ratings(fields)));

    static final PartReader<Overdrive> OVERDRIVE = PartReader.of(
            PartKind.OVERDRIVE,
            FIELDS,
            (name, fields, files) -> new Overdrive(name, ratio(fields), efficiency(fields)));

    static final PartReader<HubReduction> HUB_REDUCTION = PartReader.of(
            PartKind.HUB_REDUCTION,
            FIELDS,
            (name, fields, files) -> new HubReduction(name, ratio(fields), efficiency(fields)));

    private RatioFields() {}

    private static Ratio ratio(Fields fields) {
        return fields.required("ratio", value -> value.literalOrNumber(Ratio::parse));
    }

    private static AxleRatings ratings(Fields fields) {
        return new AxleRatings(
                TransmissionFields.rating(fields, "ringAndPinionRating"),
                TransmissionFields.rating(fields, "halfShaftRating"),
                TransmissionFields.rating(fields, "jointRating"));
    }

    private static Optional<Efficiency> efficiency(Fields fields) {
        return fields.optional("efficiency", TransmissionFields::efficiency);
    }
}
