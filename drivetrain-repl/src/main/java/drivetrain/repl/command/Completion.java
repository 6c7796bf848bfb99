package drivetrain.repl.command;

import drivetrain.repl.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What could stand at a place in a line. */
public final class Completion {

    private final Vocabulary vocabulary;

    /**
     * Makes a completion.
     *
     * @param vocabulary the commands
     */
    public Completion(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /**
     * Offers words that start with what has been typed of a word, upper and lower case alike.
     *
     * @param session the present state
     * @param before the whole words before it
     * @param start what has been typed of it; may be empty
     * @return the offers in the order in which they are to be shown
     */
    public List<Offer> offers(Session session, List<String> before, String start) {
        List<Offer> fitting = new ArrayList<>();
        for (Offer offer : all(session, before)) {
            if (offer.value().regionMatches(true, 0, start, 0, start.length())) {
                fitting.add(offer);
            }
        }
        return fitting;
    }

    private List<Offer> all(Session session, List<String> before) {
        if (before.isEmpty()) {
            List<Offer> words = new ArrayList<>();
            for (Command command : vocabulary.commands()) {
                words.add(new Offer(command.manual().word(), command.manual().summary()));
            }
            return words;
        }
        if (before.size() > 1) {
            Optional<Command> two = vocabulary.named(before.get(0) + " " + before.get(1));
            if (two.isPresent()) {
                return two.get().offers(session, before.subList(2, before.size()));
            }
        }
        return vocabulary
                .named(before.get(0))
                .map(command -> command.offers(session, before.subList(1, before.size())))
                .orElse(List.of());
    }
}
