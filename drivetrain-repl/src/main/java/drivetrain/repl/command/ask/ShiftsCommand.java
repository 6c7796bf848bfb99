package drivetrain.repl.command.ask;

import drivetrain.assessment.ShiftAnswer;
import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import drivetrain.report.Report;
import drivetrain.report.ShiftsReport;

/** {@code shifts}: engine speed after each upshift. */
public final class ShiftsCommand implements EngineSpeedQuestion<ShiftAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.ROAD,
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
    public Outcome<ShiftAnswer> atMaximum(Combination combination) {
        return ShiftAnswer.atMaximum(combination);
    }

    @Override
    public Outcome<ShiftAnswer> at(Combination combination, AngularSpeed engineSpeed) {
        return ShiftAnswer.at(combination, engineSpeed);
    }

    @Override
    public Report report(ShiftAnswer answer, UnitSystem units) {
        return ShiftsReport.of(answer, units);
    }
}
