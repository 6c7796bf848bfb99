package drivetrain.repl.command.compare;

import drivetrain.comparison.SideBySide;
import drivetrain.refusal.NearNames;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.command.Word;
import drivetrain.repl.session.Kept;
import drivetrain.repl.session.Session;
import drivetrain.report.ComparisonReport;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** {@code compare}: kept packages side by side. */
public final class CompareCommand implements Command {

    /** What the package in hand is called in a comparison. */
    static final String IN_HAND = "in-hand";

    private static final String DIFFERENCES = "differences";

    private static final Manual MANUAL = Manual.of(
                    Topic.COMPARE,
                    "compare [NAME ...] [differences]",
                    "kept packages side by side with the one in hand, or those that are named")
            .alias("versus", "vs")
            .example("compare", "compare stock tall", "compare stock in-hand differences");

    /** Makes the command. */
    public CompareCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        List<SideBySide.Order> orders = new ArrayList<>();
        boolean differences = false;
        Map<String, Kept> aside = session.setup().aside();
        for (int i = 0; i < arguments.size(); i++) {
            Word word = arguments.get(i);
            if (word.isAny(DIFFERENCES, "differing", "only")) {
                differences = true;
            } else if (word.isAny(IN_HAND, "now")) {
                orders.add(inHand(session));
            } else if (aside.containsKey(word.text())) {
                orders.add(order(word.text(), aside));
            } else {
                List<String> names = names(session);
                throw arguments
                        .refuse(i, "is no kept package")
                        .allowing(String.join(", ", names))
                        .suggesting(NearNames.of(word.text(), names))
                        .asException();
            }
        }
        if (orders.size() < 2) {
            List<SideBySide.Order> all = orders.isEmpty() ? kept(aside) : orders;
            all.add(inHand(session));
            orders = all;
        }
        if (orders.size() < 2) {
            throw arguments
                    .refuse(arguments.size(), "nothing is kept to compare with")
                    .allowing("keep and a name first, then change the package, then compare")
                    .asException();
        }
        return Result.answer(session, ComparisonReport.of("compare", SideBySide.of(orders), differences));
    }

    private static List<SideBySide.Order> kept(Map<String, Kept> aside) {
        List<SideBySide.Order> orders = new ArrayList<>();
        aside.keySet().forEach(name -> orders.add(order(name, aside)));
        return orders;
    }

    private static SideBySide.Order order(String name, Map<String, Kept> aside) {
        return SideBySide.Order.of(
                name, Optional.ofNullable(aside.get(name)).orElseThrow().combination());
    }

    private static SideBySide.Order inHand(Session session) {
        return SideBySide.Order.of(IN_HAND, session.combination());
    }

    private static List<String> names(Session session) {
        List<String> names = new ArrayList<>(session.setup().aside().keySet());
        names.add(IN_HAND);
        names.add(DIFFERENCES);
        return names;
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return names(session).stream()
                .filter(name -> !before.contains(name))
                .map(name -> new Offer(name, ""))
                .toList();
    }
}
