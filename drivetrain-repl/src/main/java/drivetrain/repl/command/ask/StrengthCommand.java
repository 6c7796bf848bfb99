package drivetrain.repl.command.ask;

import drivetrain.assessment.StrengthAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.StrengthReport;

/** {@code torsion}: whether the driveshafts carry the greatest torque that they see. */
public final class StrengthCommand implements QuestionCommand<StrengthAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.SHAFTS, "torsion", "greatest torque of the driveshafts against tube, joints and flanges")
            .alias("twist")
            .example("torsion");

    /** Makes the command. */
    public StrengthCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<StrengthAnswer> ask(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        return StrengthAnswer.of(session.combination());
    }

    @Override
    public Report report(StrengthAnswer answer, UnitSystem units) {
        return StrengthReport.of(answer, units);
    }
}
