package drivetrain.repl.command.ask;

import drivetrain.assessment.TankAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.TankReport;

/** {@code range}: how far the tank goes, how much its fuel expands, and how much vapor it makes. */
public final class RangeCommand implements QuestionCommand<TankAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.FUEL,
                    "range",
                    "how far the tank goes at the order's cruise speed, how its fuel expands, and the vapor of a day")
            .alias("vapor", "vapour", "fuel range")
            .example("range");

    /** Makes the command. */
    public RangeCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<TankAnswer> ask(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        return TankAnswer.of(session.combination());
    }

    @Override
    public Report report(TankAnswer answer, UnitSystem units) {
        return TankReport.of(answer, units);
    }
}
