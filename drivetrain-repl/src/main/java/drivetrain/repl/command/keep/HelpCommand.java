package drivetrain.repl.command.keep;

import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Line;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.command.Vocabulary;
import drivetrain.repl.session.Session;
import drivetrain.report.Cell;
import drivetrain.report.Column;
import drivetrain.report.Facts;
import drivetrain.report.Grid;
import drivetrain.report.Report;
import drivetrain.report.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/** {@code help}: the words of the language, or one of them. */
public final class HelpCommand implements Command {

    private static final Manual MANUAL = Manual.of(Topic.KEEP, "help [WORD]", "list the words, or explain one of them")
            .alias("?")
            .example("help", "help cruise");

    private final Supplier<Vocabulary> vocabulary;

    /**
     * Makes the command.
     *
     * @param vocabulary the words, which this command is one of
     */
    public HelpCommand(Supplier<Vocabulary> vocabulary) {
        this.vocabulary = vocabulary;
    }

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        return Result.answer(session, arguments.isEmpty() ? all() : one(arguments));
    }

    private Report all() {
        List<drivetrain.report.Block> blocks = new ArrayList<>();
        for (Topic topic : Topic.values()) {
            List<List<Cell>> rows = new ArrayList<>();
            for (Command command : vocabulary.get().commands()) {
                Manual manual = command.manual();
                if (manual.topic() == topic) {
                    rows.add(List.of(Cell.of(manual.usage()), Cell.of(manual.summary())));
                }
            }
            List<Column> columns = List.of(Column.ofText("usage", "type"), Column.ofText("summary", "to"));
            blocks.add(new Grid(topic.name().toLowerCase(Locale.ROOT), topic.heading(), columns, rows));
        }
        blocks.add(new Sentence(
                "next",
                "\"help WORD\" shows examples; a part is a name that \"parts\" lists, or typed as in the examples."));
        return new Report("help", blocks);
    }

    private Report one(Arguments arguments) {
        String asked = arguments.text();
        Manual manual = vocabulary
                .get()
                .named(asked)
                .map(Command::manual)
                .orElseThrow(() -> Refusal.of("word", asked, "is not known here")
                        .allowing("the words that \"help\" lists")
                        .suggesting(vocabulary.get().near(asked))
                        .in(Line.place(arguments.get(0).textStart()))
                        .asException());
        List<Facts.Fact> facts = new ArrayList<>();
        facts.add(Facts.Fact.of("usage", "usage", manual.usage()));
        facts.add(Facts.Fact.of("summary", "to", manual.summary()));
        if (!manual.synonyms().isEmpty()) {
            facts.add(Facts.Fact.of("synonyms", "also", String.join(", ", manual.synonyms())));
        }
        int number = 0;
        for (String example : manual.examples()) {
            number++;
            facts.add(Facts.Fact.of("example" + number, number == 1 ? "such as" : "or", example));
        }
        return Report.of("help", new Facts("word", "", facts));
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        if (!before.isEmpty()) {
            return List.of();
        }
        return vocabulary.get().commands().stream()
                .map(command ->
                        new Offer(command.manual().word(), command.manual().summary()))
                .toList();
    }
}
