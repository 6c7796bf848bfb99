package drivetrain.repl.command.ask;

import drivetrain.assessment.SupplyAnswer;
import drivetrain.finding.Outcome;
import drivetrain.fuel.SupplyCurves;
import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Line;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.SupplyPlot;

/** What {@code plot supply} draws. */
final class FuelPlot {

    private FuelPlot() {}

    static Report of(Session session, Arguments arguments) {
        SupplyAnswer answer = new SupplyCommand().answer(session, arguments);
        Outcome<Report> report = SupplyPlot.of(answer, SupplyCurves.of(answer.supply()));
        return report.value()
                .orElseThrow(() -> Refusal.of(
                                "plot",
                                "",
                                "not evaluated because " + report.reason().orElse("something is missing"))
                        .in(Line.place(0))
                        .asException());
    }
}
