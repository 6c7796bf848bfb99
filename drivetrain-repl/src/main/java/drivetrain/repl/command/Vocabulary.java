package drivetrain.repl.command;

import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The commands of the language and the words that run them. */
public final class Vocabulary {

    private final List<Command> commands;
    private final Map<String, Command> byName;

    /**
     * Makes a vocabulary.
     *
     * @param commands the commands in the order of the help
     * @throws IllegalArgumentException if two commands have a word in common
     */
    public Vocabulary(List<Command> commands) {
        this.commands = List.copyOf(commands);
        this.byName = new LinkedHashMap<>();
        for (Command command : commands) {
            for (String name : command.manual().names()) {
                if (byName.put(name, command) != null) {
                    throw new IllegalArgumentException("two commands answer to " + name);
                }
            }
        }
    }

    /**
     * A command that a line names.
     *
     * @param command the command
     * @param arguments the words behind its name
     */
    public record Called(Command command, Arguments arguments) {}

    /**
     * Lists the commands.
     *
     * @return the commands in the order of the help
     */
    public List<Command> commands() {
        return commands;
    }

    /**
     * Finds the command that a line names by its first word or its first two words.
     *
     * @param line a line that is not empty
     * @return the command and its arguments
     * @throws drivetrain.refusal.RefusedException if the word is unknown, with at most three near words
     */
    public Called find(Line line) {
        List<Word> words = line.words();
        if (words.size() > 1) {
            Optional<Command> two =
                    named(words.get(0).text() + " " + words.get(1).text());
            if (two.isPresent()) {
                return new Called(two.get(), Arguments.of(line, 2));
            }
        }
        Word first = words.get(0);
        Command command = named(first.text())
                .orElseThrow(() -> Refusal.of("word", shortened(first.text()), "is not known here")
                        .allowing("the words that \"help\" lists")
                        .suggesting(near(first.text()))
                        .in(Line.place(first.textStart()))
                        .asException());
        return new Called(command, Arguments.of(line, 1));
    }

    /**
     * Finds a command by one of its names.
     *
     * @param name the name, upper and lower case alike
     * @return the command, or empty
     */
    public Optional<Command> named(String name) {
        return Optional.ofNullable(byName.get(name.toLowerCase(Locale.ROOT)));
    }

    /**
     * Finds the words that come near to an unknown one.
     *
     * @param word the word as typed
     * @return at most three words
     */
    public List<String> near(String word) {
        return NearNames.of(word, new ArrayList<>(byName.keySet())).stream()
                .map(this::asWritten)
                .distinct()
                .toList();
    }

    /** A word of several words that was understood without its blanks is named with them. */
    private String asWritten(String name) {
        String word = named(name).map(Command::manual).map(Manual::word).orElse(name);
        return word.replace(" ", "").equals(name.replace("-", "")) ? word : name;
    }

    private static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, 60) + "...";
    }
}
