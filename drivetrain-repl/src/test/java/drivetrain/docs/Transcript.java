package drivetrain.docs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The runs of the program that a text shows: each {@code $ drivetrain ...} line begins one, {@code > ...} lines are fed
 * to its input, and the other lines are what it prints. A run of another program is passed over with its output. Lines
 * before the first {@code $} that begin with {@code #} are remarks.
 *
 * @param runs in the order of the text
 */
record Transcript(List<Run> runs) {

    private static final String SHELL_PROMPT = "$ ";
    private static final String PROMPT = "> ";

    static Transcript parse(String source, int firstLine, String text) {
        List<String> lines = text.lines().toList();
        List<Run> runs = new ArrayList<>();
        int at = 0;
        while (at < lines.size() && !lines.get(at).startsWith(SHELL_PROMPT)) {
            if (!lines.get(at).startsWith("#") && !lines.get(at).isBlank()) {
                throw new IllegalArgumentException(
                        source + ":" + (firstLine + at) + ": neither a remark nor a command: " + lines.get(at));
            }
            at++;
        }
        while (at < lines.size()) {
            int next = at + 1;
            while (next < lines.size() && !lines.get(next).startsWith(SHELL_PROMPT)) {
                next++;
            }
            run(source + ":" + (firstLine + at), lines.subList(at, next)).ifPresent(runs::add);
            at = next;
        }
        return new Transcript(List.copyOf(runs));
    }

    private static Optional<Run> run(String where, List<String> lines) {
        StringBuilder command = new StringBuilder(lines.get(0).substring(SHELL_PROMPT.length()));
        int at = 1;
        while (command.toString().endsWith("\\") && at < lines.size()) {
            command.setLength(command.length() - 1);
            command.append(lines.get(at++).strip());
        }
        List<String> answer = lines.subList(at, lines.size());
        return CommandLine.parse(command.toString())
                .map(line -> new Run(where, command.toString(), line, typed(answer), printed(answer)));
    }

    private static String typed(List<String> lines) {
        return lines.stream()
                .filter(line -> line.startsWith(PROMPT))
                .map(line -> line.substring(PROMPT.length()) + "\n")
                .collect(Collectors.joining());
    }

    private static List<String> printed(List<String> lines) {
        return lines.stream().filter(line -> !line.startsWith(PROMPT)).toList();
    }
}
