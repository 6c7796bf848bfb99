package drivetrain.repl.command.ask;

import drivetrain.assessment.Answer;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.RefusedException;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.ExplainReport;
import drivetrain.report.Report;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** {@code explain}: how an answer is worked out, and where its formulas come from. */
public final class ExplainCommand implements Command {

    private static final Manual MANUAL = Manual.of(
                    Topic.WHOLE, "explain QUESTION", "formula, inputs, steps and sources of an answer")
            .alias("why", "working")
            .example("explain cruise 65 mph", "explain crawl", "explain tire");

    private final List<QuestionCommand<?>> questions;
    private final Map<String, QuestionCommand<?>> byName = new LinkedHashMap<>();

    /**
     * Makes the command.
     *
     * @param questions what can be explained
     */
    public ExplainCommand(List<QuestionCommand<?>> questions) {
        this.questions = List.copyOf(questions);
        for (QuestionCommand<?> question : questions) {
            question.manual().names().forEach(name -> byName.put(name, question));
        }
    }

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        if (arguments.isEmpty()) {
            throw arguments
                    .refuse(0, "no question is named to be explained")
                    .allowing(words())
                    .asException();
        }
        boolean two = arguments.size() > 1 && byName.containsKey(twoWords(arguments));
        return Result.answer(session, explain(session, question(arguments, two), arguments.from(two ? 2 : 1)));
    }

    private static <A extends Answer> Report explain(
            Session session, QuestionCommand<A> question, Arguments arguments) {
        return ExplainReport.of(question.answer(session, arguments));
    }

    /** Some questions have a name of two words, such as {@code size pump}. */
    private static String twoWords(Arguments arguments) {
        return (arguments.get(0).text() + " " + arguments.get(1).text()).toLowerCase(Locale.ROOT);
    }

    private QuestionCommand<?> question(Arguments arguments, boolean two) {
        String word = two ? twoWords(arguments) : arguments.get(0).text().toLowerCase(Locale.ROOT);
        QuestionCommand<?> known = byName.get(word);
        if (known == null) {
            throw unknown(arguments, word);
        }
        return known;
    }

    private RefusedException unknown(Arguments arguments, String word) {
        return arguments
                .refuse(0, "is not a question that can be explained")
                .allowing(words())
                .suggesting(NearNames.of(word, byName.keySet()))
                .asException();
    }

    private String words() {
        return String.join(
                ", ",
                questions.stream().map(question -> question.manual().word()).toList());
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        if (before.isEmpty()) {
            List<Offer> offers = new ArrayList<>();
            for (QuestionCommand<?> question : questions) {
                offers.add(new Offer(question.manual().word(), question.manual().summary()));
            }
            return offers;
        }
        QuestionCommand<?> known = byName.get(before.get(0).toLowerCase(Locale.ROOT));
        return known == null ? List.of() : known.offers(session, before.subList(1, before.size()));
    }
}
