package drivetrain.repl.command.ask;

import drivetrain.assessment.SupplyAnswer;
import drivetrain.fuel.SupplyCurves;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.SupplyPlot;

/** What {@code plot supply} draws. */
final class FuelPlot {

    private FuelPlot() {}

    static Report of(Session session, Arguments arguments) {
        SupplyAnswer answer = new SupplyCommand().answer(session, arguments);
        return Drawn.of(SupplyPlot.of(answer, SupplyCurves.of(answer.supply())));
    }
}
