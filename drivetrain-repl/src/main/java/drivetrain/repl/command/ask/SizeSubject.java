package drivetrain.repl.command.ask;

import drivetrain.assessment.Answer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import java.util.List;
import java.util.function.BiFunction;

/**
 * One thing that {@code size} can size: the word behind it, and the question that it asks.
 *
 * @param word the word, such as {@code pump}
 * @param synonyms other words for it
 * @param usage the whole usage, such as {@code size injectors [NUMBER]}
 * @param summary what it finds
 * @param examples lines to type
 * @param asked asks the question with the words behind it
 * @param shown shows the answer
 * @param <A> the type of the answer
 */
record SizeSubject<A extends Answer>(
        String word,
        List<String> synonyms,
        String usage,
        String summary,
        List<String> examples,
        BiFunction<Session, Arguments, Outcome<A>> asked,
        BiFunction<A, UnitSystem, Report> shown)
        implements QuestionCommand<A> {

    boolean isNamed(String typed) {
        return word.equalsIgnoreCase(typed) || synonyms.stream().anyMatch(typed::equalsIgnoreCase);
    }

    @Override
    public Manual manual() {
        return new Manual(Topic.FUEL, "size " + word, List.of(), usage, summary, examples);
    }

    @Override
    public Outcome<A> ask(Session session, Arguments arguments) {
        return asked.apply(session, arguments);
    }

    @Override
    public Report report(A answer, UnitSystem units) {
        return shown.apply(answer, units);
    }
}
