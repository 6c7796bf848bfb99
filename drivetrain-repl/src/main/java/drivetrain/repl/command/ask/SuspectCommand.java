package drivetrain.repl.command.ask;

import drivetrain.assessment.GearChoice;
import drivetrain.assessment.SuspectAnswer;
import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Frequency;
import drivetrain.quantity.Speed;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.SuspectReport;
import java.util.List;

/** {@code suspect}: which part makes a vibration that was measured. */
public final class SuspectCommand implements QuestionCommand<SuspectAnswer> {

    private static final Frequency MOST = Frequency.ofHertz(20_000.0);

    private static final Manual MANUAL = Manual.of(
                    Topic.SHAFTS,
                    "suspect FREQUENCY at SPEED [in GEAR] [low] [with N cylinders] [within N %]",
                    "which part makes a vibration of a measured frequency")
            .alias("vibration")
            .example("suspect 22 Hz at 40 mph", "suspect 58 Hz at 65 mph in 4th with 8 cylinders within 4 %");

    /** Makes the command. */
    public SuspectCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<SuspectAnswer> ask(Session session, Arguments arguments) {
        OrderWords words = OrderWords.read(arguments, true);
        int at = at(words.before());
        if (at == 0) {
            throw arguments
                    .refuse(0, "no frequency is named")
                    .allowing(MANUAL.usage())
                    .asException();
        }
        Frequency measured =
                AskedQuantity.read(Frequency.KIND, MOST, words.before().until(at), "Hz", "cpm");
        Arguments road = words.before().from(Math.min(at + 1, words.before().size()));
        int gearStart = GearWords.start(road);
        GearChoice gear = GearWords.read(road.from(gearStart));
        Combination combination = session.combination();
        Speed speed = RoadSpeedWords.speed(combination, arguments, road.until(gearStart), "suspect 22 Hz at 40 mph");
        return arguments.read(
                text -> SuspectAnswer.of(combination, measured, speed, gear, words.cylinders(), words.tolerance()));
    }

    private static int at(Arguments arguments) {
        for (int i = 0; i < arguments.size(); i++) {
            if (arguments.get(i).isAny("at")) {
                return i;
            }
        }
        return GearWords.start(arguments);
    }

    @Override
    public Report report(SuspectAnswer answer, UnitSystem units) {
        return SuspectReport.of(answer, units);
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        int at = before.indexOf("at");
        if (at < 0) {
            return before.isEmpty() ? List.of() : before.size() == 1 ? Offer.of("Hz", "at") : Offer.of("at");
        }
        List<String> road = before.subList(at + 1, before.size());
        return road.isEmpty() ? List.of() : RoadSpeedWords.offers(session, road, OrderWords.offers(road, true));
    }
}
