package drivetrain.repl.command.ask;

import drivetrain.assessment.LoadsAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.LoadsReport;
import drivetrain.report.Report;

/** {@code loads}: the greatest torque in every part, held against its rating. */
public final class LoadsCommand implements QuestionCommand<LoadsAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.ROAD, "loads", "the greatest torque in every part, and which part is the weakest link")
            .alias("load path", "weakest link", "strength")
            .example("loads");

    /** Makes the command. */
    public LoadsCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<LoadsAnswer> ask(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        return LoadsAnswer.of(session.combination());
    }

    @Override
    public Report report(LoadsAnswer answer, UnitSystem units) {
        return LoadsReport.of(answer, units);
    }
}
