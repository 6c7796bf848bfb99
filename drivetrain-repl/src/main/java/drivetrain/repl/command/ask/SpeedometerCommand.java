package drivetrain.repl.command.ask;

import drivetrain.assessment.SpeedometerAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.SpeedometerReport;

/** {@code speedometer}: what the speedometer shows, and the driven gear to fit. */
public final class SpeedometerCommand implements QuestionCommand<SpeedometerAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.ROAD, "speedometer", "what the speedometer shows, and the driven gear to fit")
            .alias("speedo")
            .example("speedometer");

    /** Makes the command. */
    public SpeedometerCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<SpeedometerAnswer> ask(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        return SpeedometerAnswer.of(session.combination());
    }

    @Override
    public Report report(SpeedometerAnswer answer, UnitSystem units) {
        return SpeedometerReport.of(answer, units);
    }
}
