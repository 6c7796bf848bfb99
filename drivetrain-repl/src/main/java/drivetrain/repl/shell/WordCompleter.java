package drivetrain.repl.shell;

import drivetrain.refusal.RefusedException;
import drivetrain.repl.command.Completion;
import drivetrain.repl.command.Offer;
import drivetrain.repl.session.Session;
import java.util.List;
import java.util.function.Supplier;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;

/** Shows what can stand at the cursor when the Tab key is pressed. */
final class WordCompleter implements Completer {

    private static final int LONGEST_MEANING = 60;

    private final Completion completion;
    private final Supplier<Session> session;

    WordCompleter(Completion completion, Supplier<Session> session) {
        this.completion = completion;
        this.session = session;
    }

    @Override
    public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
        try {
            List<String> before = line.words().subList(0, line.wordIndex());
            int order = 0;
            for (Offer offer : completion.offers(session.get(), before, line.word())) {
                candidates.add(candidate(offer, order++));
            }
        } catch (RefusedException unreadable) {
            // A shelf that cannot be read offers nothing; the command that needs it will say why.
        }
    }

    private static Candidate candidate(Offer offer, int order) {
        String meaning = offer.meaning();
        String shown = meaning.length() <= LONGEST_MEANING ? meaning : meaning.substring(0, LONGEST_MEANING) + "...";
        return new Candidate(
                offer.value(),
                offer.value(),
                null,
                shown.isEmpty() ? null : shown,
                null,
                null,
                !offer.value().endsWith("/"),
                order);
    }
}
