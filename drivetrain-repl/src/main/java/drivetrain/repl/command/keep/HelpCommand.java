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
import drivetrain.report.Block;
import drivetrain.report.Cell;
import drivetrain.report.Column;
import drivetrain.report.Facts;
import drivetrain.report.Grid;
import drivetrain.report.Report;
import drivetrain.report.Sentence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** {@code help}: the words of the language, or one of them. */
public final class HelpCommand implements Command {

    private static final Manual MANUAL = Manual.of(
                    Topic.KEEP,
                    "help [GROUP|WORD]",
                    "list the words in their groups, say what each word of a group does, or explain one word")
            .alias("?")
            .example("help", "help driving", "help cruise");

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
        if (arguments.isEmpty()) {
            return Result.answer(session, groups());
        }
        return Result.answer(
                session,
                Arrays.stream(Topic.values())
                        .filter(topic -> topic.word().equalsIgnoreCase(arguments.text()))
                        .findFirst()
                        .map(this::group)
                        .orElseGet(() -> one(arguments)));
    }

    private Stream<Manual> manuals(Topic topic) {
        return vocabulary.get().commands().stream().map(Command::manual).filter(manual -> manual.topic() == topic);
    }

    /** Every word in few rows, so that one screen holds them. */
    private Report groups() {
        List<Block> blocks = new ArrayList<>();
        List<List<Cell>> rows = new ArrayList<>();
        for (Topic topic : Topic.values()) {
            rows.add(List.of(
                    Cell.of(topic.word()),
                    Cell.of(manuals(topic).map(Manual::word).collect(Collectors.joining(", ")))));
        }
        blocks.add(new Grid(
                "groups", "", List.of(Column.ofText("group", "group"), Column.ofText("words", "words")), rows));
        blocks.add(
                new Sentence(
                        "next",
                        "\"help GROUP\" says what the words of a group do, \"help WORD\" shows one with examples, \"tour\" what to type first."));
        return new Report("help", blocks);
    }

    private Report group(Topic topic) {
        List<List<Cell>> rows = manuals(topic)
                .map(manual -> List.of(Cell.of(manual.usage()), Cell.of(manual.summary())))
                .toList();
        List<Column> columns = List.of(Column.ofText("usage", "type"), Column.ofText("summary", "to"));
        return Report.of(
                "help",
                new Grid(topic.name().toLowerCase(Locale.ROOT), topic.heading(), columns, rows),
                new Sentence(
                        "next",
                        "\"help WORD\" shows examples; a part is a name that \"parts\" lists, or typed as in the examples."));
    }

    /** A command whose name is several words is known by the first of them too. */
    private Optional<Command> named(String asked) {
        return vocabulary
                .get()
                .named(asked)
                .or(() -> vocabulary.get().commands().stream()
                        .filter(command -> command.manual().word().startsWith(asked.toLowerCase(Locale.ROOT) + " "))
                        .findFirst());
    }

    private Report one(Arguments arguments) {
        String asked = arguments.text();
        Manual manual = named(asked)
                .map(Command::manual)
                .orElseThrow(() -> Refusal.of("word", asked, "is not known here")
                        .allowing("a group or a word that \"help\" lists")
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
        Stream<Offer> groups = Arrays.stream(Topic.values()).map(topic -> new Offer(topic.word(), topic.heading()));
        return Stream.concat(
                        groups,
                        vocabulary.get().commands().stream()
                                .map(command -> new Offer(
                                        command.manual().word(),
                                        command.manual().summary())))
                .toList();
    }
}
