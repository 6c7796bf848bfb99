package drivetrain.repl.command.ask;

import drivetrain.assessment.RoadSpeedsAnswer;
import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import drivetrain.report.Report;
import drivetrain.report.RoadSpeedsReport;

/** {@code speeds}: road speed in every gear. */
public final class SpeedsCommand implements EngineSpeedQuestion<RoadSpeedsAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.ROAD,
                    "speeds [RPM]",
                    "road speed in every gear, at the engine's maximum speed unless one is named")
            .alias("speed")
            .example("speeds", "speeds 3000 rpm");

    /** Makes the command. */
    public SpeedsCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<RoadSpeedsAnswer> atMaximum(Combination combination) {
        return RoadSpeedsAnswer.atMaximum(combination);
    }

    @Override
    public Outcome<RoadSpeedsAnswer> at(Combination combination, AngularSpeed engineSpeed) {
        return RoadSpeedsAnswer.at(combination, engineSpeed);
    }

    @Override
    public Report report(RoadSpeedsAnswer answer, UnitSystem units) {
        return RoadSpeedsReport.of(answer, units);
    }
}
