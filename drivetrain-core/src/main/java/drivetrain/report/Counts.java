package drivetrain.report;

/** Large counts as people read them. */
final class Counts {

    private static final int GROUP = 3;

    private Counts() {}

    /** Writes a count with commas between thousands. */
    static String text(long count) {
        StringBuilder digits = new StringBuilder(Long.toString(count));
        for (int i = digits.length() - GROUP; i > 0; i -= GROUP) {
            digits.insert(i, ',');
        }
        return digits.toString();
    }

    /** Writes a count with its noun. */
    static String text(long count, String one, String many) {
        return count == 1 ? "one " + one : (count == 0 ? "no" : text(count)) + " " + many;
    }
}
