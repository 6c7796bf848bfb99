package drivetrain.comparison;

import drivetrain.driveshaft.Driveshaft;
import drivetrain.driveshaft.ShaftPiece;
import drivetrain.driveshaft.StockTubes;
import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The tubes that a driveshaft could be made of instead of its own, its yokes, joints and length staying as they are. */
final class ShaftTubes {

    private static final Assumption KEPT = Assumption.of(
            "tube of the solution",
            "walls, material, yokes, joints and length stay as they are; two pieces have the same tube. A stock tube has a wall of its own",
            Source.derived("one figure is changed, and nothing else"));

    private ShaftTubes() {}

    /**
     * A shaft made of a stock tube.
     *
     * @param name what the trade calls the tube
     * @param shaft the shaft
     */
    record Stocked(String name, Driveshaft shaft) {}

    static List<Assumption> assumptions() {
        return List.of(KEPT);
    }

    /** Every stock tube of the shaft's own metal, or of any metal where there is none of its own. */
    static List<Stocked> stocked(Driveshaft shaft) {
        List<StockTubes.StockTube> own = StockTubes.all().stream()
                .filter(stock -> isOf(shaft.pieces(), stock))
                .toList();
        List<Stocked> shafts = new ArrayList<>();
        for (StockTubes.StockTube stock : own.isEmpty() ? StockTubes.all() : own) {
            made(shaft, stock).ifPresent(shafts::add);
        }
        return shafts;
    }

    private static Optional<Stocked> made(Driveshaft shaft, StockTubes.StockTube stock) {
        try {
            return Optional.of(new Stocked(stock.name(), shaft.withTube(stock.tube(), stock.metal())));
        } catch (RefusedException impossible) {
            return Optional.empty();
        }
    }

    private static boolean isOf(List<ShaftPiece> pieces, StockTubes.StockTube stock) {
        return pieces.stream().allMatch(piece -> piece.material().equals(stock.metal()));
    }
}
