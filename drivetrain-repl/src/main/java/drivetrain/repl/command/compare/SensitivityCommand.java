package drivetrain.repl.command.compare;

import drivetrain.combination.Combination;
import drivetrain.comparison.Measures;
import drivetrain.comparison.Sensitivity;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.SpreadReport;

/** {@code sensitivity}: what one percent more of a part's figure does. */
public final class SensitivityCommand implements Command {

    private static final Manual MANUAL = Manual.of(
                    Topic.COMPARE, "sensitivity", "how much each figure moves with one percent more of a part's figure")
            .alias("sensitive")
            .example("sensitivity");

    /** Makes the command. */
    public SensitivityCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        Combination combination = session.combination();
        return Result.answer(
                session, SpreadReport.of(Sensitivity.of(combination, Measures.all(combination)), combination));
    }
}
