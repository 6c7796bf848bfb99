package drivetrain.repl.command.ask;

import drivetrain.assessment.ShiftAnswer;
import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.ShiftsReport;
import java.util.List;

/** {@code shifts}: engine speed after each upshift. */
public final class ShiftsCommand implements QuestionCommand<ShiftAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.ASK,
                    "shifts [RPM]",
                    "engine speed after each upshift, made at the maximum speed unless one is named")
            .alias("shift", "steps")
            .example("shifts", "shifts 4500 rpm");

    /** Makes the command. */
    public ShiftsCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<ShiftAnswer> ask(Session session, Arguments arguments) {
        Combination combination = session.combination();
        if (arguments.isEmpty()) {
            return ShiftAnswer.atMaximum(combination);
        }
        AngularSpeed engineSpeed = AskedQuantity.read(AngularSpeed.KIND, arguments, "rpm");
        return arguments.read(text -> ShiftAnswer.at(combination, engineSpeed));
    }

    @Override
    public Report report(ShiftAnswer answer, UnitSystem units) {
        return ShiftsReport.of(answer, units);
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return before.size() == 1 ? Offer.of("rpm") : List.of();
    }
}
