package drivetrain.repl.shell;

import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A refusal in at most four lines, of which the first is complete by itself. */
final class Complaint {

    private static final int LONGEST_VALUE = 120;
    private static final int MOST_ROWS = 4;

    private Complaint() {}

    /**
     * Writes a refusal of a line of a script, of the input or of the call.
     *
     * @param refusal the refusal
     * @param source the source as the user knows it
     * @param line the number of the line
     */
    static List<String> located(Refusal refusal, String source, int line) {
        Place place = new Place(source, line, column(refusal).orElse(1));
        boolean inAnotherFile = refusal.place().isPresent() && column(refusal).isEmpty();
        String sentence = inAnotherFile ? sentence(refusal) : sentence(unplaced(refusal));
        List<String> lines = new ArrayList<>();
        lines.add(place + ": " + sentence);
        suggestion(refusal).ifPresent(lines::add);
        return lines;
    }

    /** Writes a refusal of the words that the program was called with. */
    static List<String> plain(Refusal refusal) {
        List<String> lines = new ArrayList<>();
        lines.add(sentence(refusal));
        suggestion(refusal).ifPresent(lines::add);
        return lines;
    }

    /**
     * Writes a refusal of a line that somebody has just typed, with a caret below the fault. On a narrow screen what helps least is left
     * out, so that no more than four rows are taken: the near names first, then the end of what is allowed, then the caret.
     *
     * @param refusal the refusal
     * @param typed the line
     * @param width the columns of the screen
     */
    static List<String> underlined(Refusal refusal, String typed, int width) {
        Optional<Integer> column = column(refusal);
        Refusal shown = column.isPresent() ? unplaced(refusal) : refusal;
        List<String> caret = column.map(at -> caret(typed, at, width)).orElse(List.of());
        List<String> near = suggestion(refusal).stream().toList();
        List<String> whole = List.of(sentence(shown));
        List<String> bare = List.of(sentence(withAllowed(shown, "")));
        List<List<List<String>>> fromFullToBare = new ArrayList<>();
        fromFullToBare.add(List.of(whole, caret, near));
        fromFullToBare.add(List.of(whole, caret));
        if (!near.isEmpty()) {
            fromFullToBare.add(List.of(bare, caret, near));
        }
        fromFullToBare.addAll(withLessAndLessAllowed(shown, caret));
        fromFullToBare.add(List.of(bare, caret));
        fromFullToBare.add(List.of(bare));
        return fromFullToBare.stream()
                .map(parts -> parts.stream().flatMap(List::stream).toList())
                .filter(lines -> rows(lines, width) <= MOST_ROWS)
                .findFirst()
                .orElseGet(() -> cut(bare.get(0), width));
    }

    /** The sentence with what is allowed cut further and further from its end, each cut marked. */
    private static List<List<List<String>>> withLessAndLessAllowed(Refusal refusal, List<String> caret) {
        List<List<List<String>>> shorter = new ArrayList<>();
        String allowed = withoutLast(refusal.allowed());
        while (!allowed.isEmpty()) {
            shorter.add(List.of(List.of(sentence(withAllowed(refusal, allowed + " ..."))), caret));
            allowed = withoutLast(allowed);
        }
        return shorter;
    }

    /** A list without its last piece: what stands behind the last comma, or the last word where there is none. */
    private static String withoutLast(String list) {
        int comma = list.lastIndexOf(", ", list.length() - 2);
        int end = comma > 0 ? comma + 1 : list.lastIndexOf(' ');
        return end > 0 ? list.substring(0, end) : "";
    }

    private static List<String> caret(String typed, int column, int width) {
        if (typed.length() + 2 > width || column + 2 > width || !isPlain(typed)) {
            return List.of();
        }
        return List.of("  " + typed.replace('\t', ' '), " ".repeat(column + 1) + "^");
    }

    private static int rows(List<String> lines, int width) {
        return lines.stream().mapToInt(line -> Wrapping.of(line, width).size()).sum();
    }

    /** The rows that fit, the last one marked as cut. */
    private static List<String> cut(String sentence, int width) {
        List<String> rows = new ArrayList<>(Wrapping.of(sentence, width).subList(0, MOST_ROWS));
        String last = rows.get(MOST_ROWS - 1);
        rows.set(MOST_ROWS - 1, last.substring(0, Math.min(last.length(), Math.max(0, width - 3))) + "...");
        return rows;
    }

    /** The column in the line itself; empty where the fault lies in another file. */
    private static Optional<Integer> column(Refusal refusal) {
        return refusal.place()
                .filter(place -> place.source().equals(Line.SOURCE))
                .map(Place::column);
    }

    private static Refusal unplaced(Refusal refusal) {
        return new Refusal(
                refusal.subject(),
                refusal.given(),
                refusal.problem(),
                refusal.allowed(),
                refusal.position(),
                refusal.suggestions(),
                Optional.empty());
    }

    private static Refusal withAllowed(Refusal refusal, String allowed) {
        return new Refusal(
                refusal.subject(),
                refusal.given(),
                refusal.problem(),
                allowed,
                refusal.position(),
                refusal.suggestions(),
                refusal.place());
    }

    private static String sentence(Refusal refusal) {
        String given = refusal.given();
        if (given.length() <= LONGEST_VALUE) {
            return refusal.sentence();
        }
        return new Refusal(
                        refusal.subject(),
                        given.substring(0, LONGEST_VALUE) + "...",
                        refusal.problem(),
                        refusal.allowed(),
                        refusal.position(),
                        refusal.suggestions(),
                        refusal.place())
                .sentence();
    }

    private static Optional<String> suggestion(Refusal refusal) {
        if (refusal.suggestions().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of("  near: " + String.join(", ", refusal.suggestions()));
    }

    private static boolean isPlain(String typed) {
        return typed.chars().allMatch(sign -> sign == '\t' || (sign >= ' ' && sign < 0x300 && sign != 0x7F));
    }
}
