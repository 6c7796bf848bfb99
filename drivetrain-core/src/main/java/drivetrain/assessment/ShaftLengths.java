package drivetrain.assessment;

import drivetrain.combination.ShaftChoice;
import drivetrain.driveshaft.Driveshaft;
import drivetrain.driveshaft.InstalledShaft;
import drivetrain.driveshaft.ShaftPiece;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Angle;
import drivetrain.quantity.Length;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** How long the pieces of a chosen shaft are, and how far its single joints bend. */
final class ShaftLengths {

    private ShaftLengths() {}

    /** The lengths as the line has them, else as the shaft tells them. */
    static Outcome<List<Length>> of(ShaftChoice choice) {
        return choice.needShaft().then(shaft -> {
            Optional<List<Length>> measured = choice.installed().value().map(InstalledShaft::lengths);
            return Outcome.of(
                    measured.or(() -> told(shaft)),
                    "the length of the " + choice.place().label()
                            + " shaft is not known; measure its line, or add the length to the shaft, such as length 1185 mm");
        });
    }

    private static Optional<List<Length>> told(Driveshaft shaft) {
        List<Length> lengths = shaft.pieces().stream()
                .map(ShaftPiece::length)
                .flatMap(Optional::stream)
                .toList();
        return lengths.size() == shaft.pieces().size() ? Optional.of(lengths) : Optional.empty();
    }

    /** The greatest angle of the single joints, which alone shake twice a turn; empty where the line is not measured. */
    static Optional<Angle> greatestBend(ShaftChoice choice) {
        return choice.installed().value().map(ShaftLengths::greatestBend);
    }

    static Angle greatestBend(InstalledShaft installed) {
        return IntStream.range(0, installed.line().jointCount())
                .filter(joint -> !installed.shaft().joints().get(joint).isDouble())
                .mapToObj(joint -> installed.line().angle(joint))
                .max(Comparator.naturalOrder())
                .orElse(Angle.ofDegrees(0.0));
    }
}
