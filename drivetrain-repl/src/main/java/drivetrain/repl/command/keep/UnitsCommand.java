package drivetrain.repl.command.keep;

import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Facts;
import drivetrain.report.Report;
import java.util.List;
import java.util.Locale;

/** {@code units}: in which units figures are shown. */
public final class UnitsCommand implements Command {

    /** The words that are allowed, for a refusal. */
    public static final String ALLOWED = "us, metric, both";

    private static final Manual MANUAL = Manual.of(
                    Topic.KEEP, "units [us|metric|both]", "show figures in US units, metric units or both")
            .alias("unit")
            .example("units metric");

    /** Makes the command. */
    public UnitsCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    /**
     * Reads a system of units.
     *
     * @param word the word, upper and lower case alike
     * @return the system
     * @throws drivetrain.refusal.RefusedException if the word names none
     */
    public static UnitSystem system(String word) {
        for (UnitSystem system : UnitSystem.values()) {
            if (word(system).equalsIgnoreCase(word)) {
                return system;
            }
        }
        throw Refusal.of("units", word, "is not a system of units")
                .allowing(ALLOWED)
                .suggesting(NearNames.of(word, List.of("us", "metric", "both")))
                .asException();
    }

    private static String word(UnitSystem system) {
        return system.name().toLowerCase(Locale.ROOT);
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        arguments.requireAtMost(1, MANUAL.usage());
        if (arguments.isEmpty()) {
            Facts.Fact present = Facts.Fact.of("units", "units", word(session.units()));
            return Result.answer(session, Report.of("units", new Facts("settings", "", List.of(present))));
        }
        UnitSystem system = arguments.read(UnitsCommand::system);
        return Result.changed(session.with(system), "Figures are shown in " + phrase(system) + " units.");
    }

    private static String phrase(UnitSystem system) {
        return switch (system) {
            case US -> "US";
            case METRIC -> "metric";
            case BOTH -> "US and metric";
        };
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return before.isEmpty() ? Offer.of("us", "metric", "both") : List.of();
    }
}
