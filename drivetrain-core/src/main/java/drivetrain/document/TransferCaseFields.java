package drivetrain.document;

import drivetrain.combination.PartKind;
import drivetrain.gearing.AxleTie;
import drivetrain.gearing.Ratio;
import drivetrain.gearing.TransferCase;
import java.util.List;

/** Reads transfer cases. */
final class TransferCaseFields {

    static final PartReader<TransferCase> READER = PartReader.of(
            PartKind.TRANSFER_CASE,
            List.of("high", "low", "drive", "efficiency", "inputRating", "outputRating"),
            TransferCaseFields::transferCase);

    private TransferCaseFields() {}

    private static TransferCase transferCase(String name, Fields fields, CurveFiles files) {
        return new TransferCase(
                name,
                fields.required("high", value -> value.literalOrNumber(Ratio::parse)),
                fields.optional("low", value -> value.literalOrNumber(Ratio::parse)),
                fields.required("drive", value -> value.choice(AxleTie.class, AxleTie::label)),
                fields.optional("efficiency", TransmissionFields::efficiency),
                TransmissionFields.rating(fields, "inputRating"),
                TransmissionFields.rating(fields, "outputRating"));
    }
}
