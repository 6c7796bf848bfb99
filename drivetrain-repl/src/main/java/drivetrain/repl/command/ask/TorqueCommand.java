package drivetrain.repl.command.ask;

import drivetrain.assessment.WheelTorqueAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.WheelTorqueReport;

/** {@code torque}: what the engine can send to the wheels in each gear. */
public final class TorqueCommand implements QuestionCommand<WheelTorqueAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.ROAD, "torque", "what the engine can send to the wheels in each gear")
            .alias("wheel torque", "torques")
            .example("torque");

    /** Makes the command. */
    public TorqueCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<WheelTorqueAnswer> ask(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        return WheelTorqueAnswer.of(session.combination());
    }

    @Override
    public Report report(WheelTorqueAnswer answer, UnitSystem units) {
        return WheelTorqueReport.of(answer, units);
    }
}
