package drivetrain.repl.command.compare;

import drivetrain.comparison.Aim;
import drivetrain.comparison.PartList;
import drivetrain.comparison.Sweep;
import drivetrain.comparison.Wish;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Word;
import drivetrain.repl.session.Session;
import java.util.ArrayList;
import java.util.List;

/**
 * The sentence of a sweep: lists, then {@code where} and the wishes, then {@code best}, a count, {@code by} and the aims.
 *
 * @param sweep the sweep
 * @param isConfirmed true if it is to run however long it takes
 */
record SweepWords(Sweep sweep, boolean isConfirmed) {

    private static final String CONFIRMED = "--yes";
    private static final int USUAL_ROWS = 10;

    /** Reads the sentence. */
    static SweepWords read(Session session, Arguments given) {
        Arguments words = withoutConfirmation(given);
        int where = Clauses.indexOf(words, 0, "where");
        int best = Clauses.indexOf(words, 0, "best");
        int by = Clauses.indexOf(words, 0, "by");
        requireOrder(words, where, best, by);
        int afterLists = Math.min(where, Math.min(best, by));
        List<PartList> lists = Clauses.lists(session, words.until(afterLists));
        int afterWishes = Math.min(best, by);
        List<Wish> wishes = where < afterWishes
                ? FigureWords.wishes(session, words.until(afterWishes).from(where + 1))
                : List.of();
        int rows = best < words.size() ? rows(words, best, by) : USUAL_ROWS;
        List<Aim> aims = by < words.size() ? FigureWords.aims(session, words.from(by + 1), "and", ",") : List.of();
        return new SweepWords(sweep(session, given, lists, wishes, aims, rows), given.size() > words.size());
    }

    /** Each part of the sentence ends where the next one begins, so that they stand in one order. */
    private static void requireOrder(Arguments words, int where, int best, int by) {
        boolean isEarly = best < words.size() && by < best;
        boolean isLate = where < words.size() && Math.min(best, by) < where;
        if (isEarly || isLate) {
            throw words.refuse(isLate ? where : best, "stands too late in the sentence")
                    .allowing("the lists, then where and the wishes, then best and a count, then by and the aims")
                    .asException();
        }
    }

    /** Reads the sentence of a front: the aims with {@code against} between them, {@code over} and the lists, {@code where} and the wishes. */
    static SweepWords readFront(Session session, Arguments given) {
        Arguments words = withoutConfirmation(given);
        int over = Clauses.indexOf(words, 0, "over", "of");
        int where = Clauses.indexOf(words, 0, "where");
        if (over >= Math.min(where, words.size())) {
            throw words.refuse(words.size(), "no lists of parts are named")
                    .allowing("over, then a place and its parts, such as over axle 3.73 or 4.10 and tire all")
                    .asException();
        }
        List<Aim> aims = FigureWords.aims(session, words.until(over), "against", "and");
        if (aims.size() < 2 || aims.size() > 3) {
            throw words.refuse(0, "a front has two or three figures, and " + aims.size() + " is named")
                    .allowing("two or three figures with against between them")
                    .asException();
        }
        List<PartList> lists = Clauses.lists(session, words.until(where).from(over + 1));
        List<Wish> wishes = where < words.size() ? FigureWords.wishes(session, words.from(where + 1)) : List.of();
        return new SweepWords(sweep(session, given, lists, wishes, aims, 1), given.size() > words.size());
    }

    private static Sweep sweep(
            Session session, Arguments given, List<PartList> lists, List<Wish> wishes, List<Aim> aims, int rows) {
        return given.read(text ->
                new Sweep(session.specification(), session.setup().shelf().catalog(), lists, wishes, aims, rows));
    }

    private static int rows(Arguments words, int best, int by) {
        Arguments count = words.until(by).from(best + 1);
        boolean isCount = count.size() == 1 && count.get(0).text().matches("[0-9]{1,4}");
        int rows = isCount ? Integer.parseInt(count.get(0).text()) : 0;
        if (rows < 1 || rows > Sweep.MOST_ROWS) {
            throw words.refuse(best + 1, "is no count of rows")
                    .allowing("1 to " + Sweep.MOST_ROWS)
                    .asException();
        }
        return rows;
    }

    private static Arguments withoutConfirmation(Arguments given) {
        List<Word> words = new ArrayList<>(given.words());
        words.removeIf(word -> word.isAny(CONFIRMED));
        return new Arguments(given.line(), words);
    }
}
