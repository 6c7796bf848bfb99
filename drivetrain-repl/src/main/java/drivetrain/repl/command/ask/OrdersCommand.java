package drivetrain.repl.command.ask;

import drivetrain.assessment.GearChoice;
import drivetrain.assessment.OrdersAnswer;
import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Speed;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.OrdersReport;
import drivetrain.report.Report;
import java.util.List;

/** {@code orders}: how often each turning part shakes at a road speed. */
public final class OrdersCommand implements QuestionCommand<OrdersAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.SHAFTS,
                    "orders [SPEED] [in GEAR] [low] [with N cylinders]",
                    "vibration frequencies of tires, shafts, joints and engine at a road speed")
            .alias("vibrations", "frequencies")
            .example("orders 40 mph", "orders 65 mph in 5th with 8 cylinders");

    /** Makes the command. */
    public OrdersCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<OrdersAnswer> ask(Session session, Arguments arguments) {
        OrderWords words = OrderWords.read(arguments, false);
        int gearStart = GearWords.start(words.before());
        GearChoice gear = GearWords.read(words.before().from(gearStart));
        Combination combination = session.combination();
        Speed speed =
                RoadSpeedWords.speed(combination, arguments, words.before().until(gearStart), "orders 40 mph");
        return arguments.read(text -> OrdersAnswer.at(combination, speed, gear, words.cylinders()));
    }

    @Override
    public Report report(OrdersAnswer answer, UnitSystem units) {
        return OrdersReport.of(answer, units);
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        if (before.isEmpty()) {
            return List.of();
        }
        return RoadSpeedWords.offers(session, before, OrderWords.offers(before, false));
    }
}
