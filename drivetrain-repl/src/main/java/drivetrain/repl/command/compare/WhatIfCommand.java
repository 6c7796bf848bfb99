package drivetrain.repl.command.compare;

import drivetrain.combination.Combination;
import drivetrain.combination.Specification;
import drivetrain.comparison.PartList;
import drivetrain.comparison.SideBySide;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.ComparisonReport;
import java.util.List;

/** {@code what if}: what one change would move, without making it. */
public final class WhatIfCommand implements Command {

    private static final Manual MANUAL = new Manual(
            Topic.COMPARE,
            "what if",
            List.of("what-if", "whatif"),
            "what if PLACE PART [and PLACE PART ...]",
            "what another part would change, without choosing it",
            List.of("what if axle 41/10", "what if tire 285/75R16 and axle 43/11"));

    /** Makes the command. */
    public WhatIfCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        Specification changed = session.specification();
        List<PartList> lists = Clauses.lists(session, arguments);
        if (lists.isEmpty()) {
            throw arguments
                    .refuse(0, "no part is named")
                    .allowing(MANUAL.usage())
                    .asException();
        }
        for (PartList list : lists) {
            if (list.choices().size() > 1) {
                int named = Clauses.indexOf(arguments, 0, list.place().word());
                throw arguments
                        .refuse(
                                named < arguments.size() ? named : 0,
                                "has " + list.choices().size() + " parts behind it, from "
                                        + list.choices().get(0) + " on")
                        .allowing("one part for each place; sweep takes lists")
                        .asException();
            }
            changed = list.place().put(changed, list.choices().get(0));
        }
        Combination then = Combination.resolve(changed, session.setup().shelf().catalogFor(changed));
        SideBySide comparison = SideBySide.of(List.of(
                SideBySide.Order.of("as it stands", session.combination()), SideBySide.Order.of("what if", then)));
        return Result.answer(session, ComparisonReport.of("whatIf", comparison, true));
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return SentenceOffers.ofLists(session, before, List.of());
    }
}
