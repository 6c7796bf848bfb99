package drivetrain.comparison;

import drivetrain.assessment.SupplyAnswer;
import drivetrain.combination.Combination;
import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.fuel.Pump;
import drivetrain.fuel.SupplyPoint;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.quantity.VolumeFlow;
import java.util.List;

/** The flow of a fuel pump where it works in its supply: through these lines, against this regulator, at the low voltage. */
final class PumpFlow {

    private static final Source SCALED = Source.derived("every flow of the measured curve by the same factor");

    private PumpFlow() {}

    static Outcome<Double> of(Combination combination) {
        return SupplyAnswer.capacity(combination).map(SupplyPoint::flow).map(VolumeFlow::si);
    }

    static Pump times(Pump pump, double factor) {
        return pump.withFlowTimes(factor);
    }

    /** Where the pump of a solution has that flow, and what it has from the pump that is chosen now. */
    static List<Assumption> assumptions(Combination solved) {
        return SupplyAnswer.capacity(solved)
                .value()
                .map(point -> List.of(Assumption.flagged(
                        "pump of the solution",
                        "its flow holds where it adds "
                                + Figure.of(point.added(), Display.GAUGE_PRESSURE)
                                        .text(UnitSystem.BOTH)
                                + " at "
                                + Figure.of(point.voltage(), Display.VOLTAGE).text(UnitSystem.BOTH)
                                + " at its terminals; the shape of its curve and its current are those of the pump that is chosen, "
                                + "and a larger one draws more, which lowers its voltage",
                        SCALED)))
                .orElse(List.of());
    }
}
