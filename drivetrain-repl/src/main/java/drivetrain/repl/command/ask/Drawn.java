package drivetrain.repl.command.ask;

import drivetrain.finding.Outcome;
import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Line;
import drivetrain.report.Report;

/** A drawing that may lack what it would be drawn from. */
final class Drawn {

    private Drawn() {}

    /** Returns the drawing, or refuses it with what is missing. */
    static Report of(Outcome<Report> drawing) {
        return drawing.value()
                .orElseThrow(() -> Refusal.of(
                                "plot",
                                "",
                                "not evaluated because " + drawing.reason().orElse("something is missing"))
                        .in(Line.place(0))
                        .asException());
    }
}
