package drivetrain.docs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A shell's command line as far as the documentation uses one: words, single and double quotes, {@code printf '...' |}
 * before the command and {@code ; echo $?} after it.
 *
 * @param args words after the program's name
 * @param input what {@code printf} pipes into the program, empty without one
 * @param echoesStatus whether the exit status is printed after the output
 */
record CommandLine(List<String> args, String input, boolean echoesStatus) {

    private static final Pattern SHAPE = Pattern.compile("(?:printf (?<input>'[^']*'|\"[^\"]*\") \\| )?"
            + "(?:drivetrain-repl/bin/)?drivetrain(?<rest>(?: .*?)?)(?<status>; echo \\$\\?)?");
    private static final Pattern WORD_PART =
            Pattern.compile("'([^']*)'|\"([^\"$`\\\\]*)\"|([^'\"\\s|;&<>$`\\\\]+)|(\\s+)");

    /** Reads a line; empty if it runs another program. */
    static Optional<CommandLine> parse(String line) {
        Matcher shape = SHAPE.matcher(line);
        if (!shape.matches()) {
            return Optional.empty();
        }
        String quoted = shape.group("input");
        String input = quoted == null
                ? ""
                : quoted.substring(1, quoted.length() - 1).replace("\\n", "\n").replace("\\t", "\t");
        return Optional.of(new CommandLine(words(shape.group("rest")), input, shape.group("status") != null));
    }

    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        StringBuilder word = null;
        Matcher part = WORD_PART.matcher(text);
        int end = 0;
        while (part.lookingAt()) {
            if (part.group(4) != null) {
                if (word != null) {
                    words.add(word.toString());
                    word = null;
                }
            } else {
                word = word == null ? new StringBuilder() : word;
                for (int group = 1; group <= 3; group++) {
                    word.append(part.group(group) == null ? "" : part.group(group));
                }
            }
            end = part.end();
            part.region(end, text.length());
        }
        if (end != text.length()) {
            throw new IllegalArgumentException("cannot replay: " + text.substring(end));
        }
        if (word != null) {
            words.add(word.toString());
        }
        return words;
    }
}
