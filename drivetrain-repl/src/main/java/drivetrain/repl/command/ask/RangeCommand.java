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

/** {@code range}: how far the tank goes, how much its fuel expands, and how much vapor it makes. {@code explain tank} asks the same. */
public final class RangeCommand implements QuestionCommand<TankAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.FUEL,
                    "range",
                    "how far the tank goes at the order's cruise speed, how its fuel expands, and the vapor of a day")
            .alias("vapor", "vapour", "fuel range")
            .example("range");

    private static final Manual TANK = Manual.of(Topic.FUEL, "tank", "range, expansion and vapor of the tank")
            .example("tank");

    private final Manual manual;

    private RangeCommand(Manual manual) {
        this.manual = manual;
    }

    /** Makes the command. */
    public RangeCommand() {
        this(MANUAL);
    }

    /**
     * Makes the question by the name of the tank, which as a word chooses one.
     *
     * @return the question, for {@code explain}
     */
    public static RangeCommand ofTank() {
        return new RangeCommand(TANK);
    }

    @Override
    public Manual manual() {
        return manual;
    }

    @Override
    public Outcome<TankAnswer> ask(Session session, Arguments arguments) {
        arguments.requireAtMost(0, manual.usage());
        return TankAnswer.of(session.combination());
    }

    @Override
    public Report report(TankAnswer answer, UnitSystem units) {
        return TankReport.of(answer, units);
    }
}
