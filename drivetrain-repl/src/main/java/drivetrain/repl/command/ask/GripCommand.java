package drivetrain.repl.command.ask;

import drivetrain.assessment.GripAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.GripReport;
import drivetrain.report.Report;
import drivetrain.road.Surface;
import java.util.List;

/** {@code grip}: what the tires put on the ground, and how steep that climbs. */
public final class GripCommand implements QuestionCommand<GripAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.ROAD,
                    "grip [SURFACE]",
                    "what the tires put on the ground and how steep that climbs, on the order's surface unless one is named")
            .alias("traction")
            .example("grip", "grip wet grass");

    /** Makes the command. */
    public GripCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<GripAnswer> ask(Session session, Arguments arguments) {
        if (arguments.isEmpty()) {
            return GripAnswer.of(session.combination());
        }
        Arguments words = arguments.size() > 1 && arguments.get(0).isAny("on") ? arguments.from(1) : arguments;
        Surface surface = words.read(Surface::parse);
        return GripAnswer.on(session.combination(), surface);
    }

    @Override
    public Report report(GripAnswer answer, UnitSystem units) {
        return GripReport.of(answer, units);
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return before.isEmpty() ? Offer.of(Surface.names().toArray(String[]::new)) : List.of();
    }
}
