package drivetrain.report;

/** The letter or digit that marks a gear in a drawing. */
final class GearMark {

    private static final String MARKS = "0123456789abcdefghi";

    private GearMark() {}

    /** Gears 1 to 9 are marked by their digits, those above by letters. */
    static char of(int number) {
        return MARKS.charAt(number);
    }
}
