package drivetrain.repl.command.ask;

import drivetrain.assessment.CruiseAnswer;
import drivetrain.assessment.GearChoice;
import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Speed;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.CruiseReport;
import drivetrain.report.Report;
import java.util.List;
import java.util.Locale;

/** {@code cruise}: engine speed at a road speed. */
public final class CruiseCommand implements QuestionCommand<CruiseAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.ROAD,
                    "cruise [SPEED] [in GEAR] [low]",
                    "engine speed at a road speed, in top gear unless one is named")
            .alias("rpm", "cruising")
            .example("cruise 65 mph", "cruise 105 km/h in 5th", "cruise 5 mph in 2nd low");

    /** Makes the command. */
    public CruiseCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<CruiseAnswer> ask(Session session, Arguments arguments) {
        int gearStart = GearWords.start(arguments);
        GearChoice gear = GearWords.read(arguments.from(gearStart));
        Combination combination = session.combination();
        Speed speed = RoadSpeedWords.speed(combination, arguments, arguments.until(gearStart), "cruise 65 mph");
        return arguments.read(text -> CruiseAnswer.at(combination, speed, gear));
    }

    @Override
    public Report report(CruiseAnswer answer, UnitSystem units) {
        return CruiseReport.of(answer, units);
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        if (before.isEmpty()) {
            return List.of();
        }
        String last = before.get(before.size() - 1).toLowerCase(Locale.ROOT);
        if (last.equals("in")) {
            return GearOffers.of(session);
        }
        if (last.equals("low") || last.equals("high")) {
            return List.of();
        }
        if (before.contains("in")) {
            return Offer.of("low", "high");
        }
        boolean lacksUnit = last.chars().allMatch(c -> (c >= '0' && c <= '9') || c == '.');
        return lacksUnit ? Offer.of("mph", "km/h") : Offer.of("in", "low");
    }
}
