package drivetrain.repl.command.choose;

import drivetrain.combination.Specification;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Facts;
import drivetrain.report.Report;
import drivetrain.road.Surface;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;

/** A word that says what the package is driven on, in or under: {@code surface}, {@code air}, {@code limiter}. */
public final class ConditionCommand implements Command {

    private final Manual manual;
    private final String unnamed;
    private final Function<Specification, Optional<String>> present;
    private final BiFunction<Specification, String, Specification> change;
    private final Supplier<List<Offer>> offers;

    private ConditionCommand(
            Manual manual,
            String unnamed,
            Function<Specification, Optional<String>> present,
            BiFunction<Specification, String, Specification> change,
            Supplier<List<Offer>> offers) {
        this.manual = manual;
        this.unnamed = unnamed;
        this.present = present;
        this.change = change;
        this.offers = offers;
    }

    /**
     * Lists the commands of this kind.
     *
     * @return the commands
     */
    public static List<Command> all() {
        return List.of(
                new ConditionCommand(
                        Manual.of(Topic.CHOOSE, "surface [NAME]", "say what the package is driven on")
                                .alias("ground", "road surface")
                                .example("surface wet asphalt", "surface gravel"),
                        "none named, dry asphalt is taken",
                        Specification::surface,
                        Specification::drivenOn,
                        () -> Offer.of(Surface.names().toArray(String[]::new))),
                new ConditionCommand(
                        Manual.of(
                                        Topic.CHOOSE,
                                        "air [altitude HEIGHT] [temperature DEGREES]",
                                        "say which air the package is driven in; it changes drag and the engine's torque")
                                .alias("weather")
                                .example("air altitude 5000 ft temperature 90 degF", "air standard"),
                        "none named, standard air at sea level is taken",
                        Specification::air,
                        Specification::drivenIn,
                        () -> Offer.of("altitude", "temperature", "standard")),
                new ConditionCommand(
                        Manual.of(
                                        Topic.CHOOSE,
                                        "limiter [SPEED]",
                                        "say at which road speed a speed limiter holds the vehicle")
                                .alias("speed limiter")
                                .example("limiter 105 mph", "limiter none"),
                        "none",
                        Specification::limiter,
                        (order, text) -> text.equalsIgnoreCase("none") ? order.unlimited() : order.limitedTo(text),
                        () -> Offer.of("none")));
    }

    @Override
    public Manual manual() {
        return manual;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        String word = manual.word();
        if (arguments.isEmpty()) {
            Facts.Fact now = Facts.Fact.of(
                    word, word, present.apply(session.specification()).orElse(unnamed));
            return Result.answer(session, Report.of(word, new Facts("conditions", "", List.of(now))));
        }
        String text = arguments.text();
        Specification changed = change.apply(session.specification(), text);
        Session next = arguments.read(typed -> session.change(arguments.line().strip(), changed));
        return Result.changed(next, word + ": " + text);
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return before.isEmpty() ? offers.get() : List.of();
    }
}
