package drivetrain.repl.command.ask;

import drivetrain.assessment.ShaftsAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.ShaftReadingsReport;
import drivetrain.report.ShaftsReport;
import java.util.List;

/** {@code shafts}: angles and motion of the driveshafts, or how wrong the readings may be. */
public final class ShaftsCommand implements QuestionCommand<ShaftsAnswer> {

    private static final String READINGS = "readings";

    private static final Manual MANUAL = Manual.of(
                    Topic.SHAFTS,
                    "shafts [readings]",
                    "joint angles, residual and shake of the driveshafts; or how wrong the readings may be")
            .alias("driveshafts", "u-joints")
            .example("shafts", "shafts readings");

    /** Makes the command. */
    public ShaftsCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        if (arguments.size() == 1 && arguments.get(0).isAny(READINGS, "reading")) {
            ShaftsAnswer answer = answer(session, arguments.from(1));
            return Result.answer(session, ShaftReadingsReport.of(answer, session.units()));
        }
        return QuestionCommand.super.run(session, arguments);
    }

    @Override
    public Outcome<ShaftsAnswer> ask(Session session, Arguments arguments) {
        if (!arguments.isEmpty()) {
            throw arguments
                    .refuse(0, "is not understood here")
                    .allowing(MANUAL.usage())
                    .asException();
        }
        return ShaftsAnswer.of(session.combination());
    }

    @Override
    public Report report(ShaftsAnswer answer, UnitSystem units) {
        return ShaftsReport.of(answer, units);
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return before.isEmpty() ? Offer.of(READINGS) : List.of();
    }
}
