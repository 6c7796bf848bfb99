package drivetrain.repl.command.ask;

import drivetrain.combination.PartKind;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.repl.session.Shelf;
import drivetrain.report.PartsReport;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** {@code parts}: what is on the shelf. */
public final class PartsCommand implements Command {

    private static final Manual MANUAL = Manual.of(
                    Topic.WHOLE, "parts [KIND] [TEXT]", "the parts on the shelf, of one kind or with some text in them")
            .alias("part", "shelf", "list")
            .example("parts", "parts tire", "parts engine diesel");

    /** Makes the command. */
    public PartsCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        KindWords kind = KindWords.at(arguments);
        List<PartKind<?>> kinds = kind.kind().<List<PartKind<?>>>map(List::of).orElseGet(PartKind::all);
        String text = arguments.from(kind.words()).text();
        Shelf shelf = session.setup().shelf();
        return Result.answer(session, PartsReport.of(shelf.name(), shelf.catalog(), kinds, text));
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        if (!before.isEmpty()) {
            return List.of();
        }
        List<Offer> offers = new ArrayList<>();
        for (PartKind<?> kind : PartKind.all()) {
            offers.add(new Offer(kind.word(), ""));
        }
        return offers;
    }

    /**
     * The kind that the first words name.
     *
     * @param kind the kind, or empty if they name none
     * @param words how many words name it
     */
    private record KindWords(Optional<PartKind<?>> kind, int words) {

        static KindWords at(Arguments arguments) {
            for (int words = Math.min(2, arguments.size()); words > 0; words--) {
                String text = arguments.until(words).text();
                Optional<PartKind<?>> kind = named(text);
                if (kind.isPresent()) {
                    return new KindWords(kind, words);
                }
            }
            return new KindWords(Optional.empty(), 0);
        }

        private static Optional<PartKind<?>> named(String text) {
            for (PartKind<?> kind : PartKind.all()) {
                boolean first = kind.word().startsWith(text.toLowerCase(Locale.ROOT) + " ");
                if (kind.word().equalsIgnoreCase(text) || kind.key().equalsIgnoreCase(text) || first) {
                    return Optional.of(kind);
                }
            }
            return Optional.empty();
        }
    }
}
