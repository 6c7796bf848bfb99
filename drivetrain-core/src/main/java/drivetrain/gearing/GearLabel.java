package drivetrain.gearing;

/** How a driver calls a gear. */
final class GearLabel {

    private GearLabel() {}

    static String ordinal(int number) {
        int tens = number % 100;
        if (tens >= 11 && tens <= 13) {
            return number + "th";
        }
        return switch (number % 10) {
            case 1 -> number + "st";
            case 2 -> number + "nd";
            case 3 -> number + "rd";
            default -> number + "th";
        };
    }

    /** The range is named where there are two; the auxiliary unit is named where it is engaged. */
    static String of(int number, boolean twoRanges, Range range, String auxiliary) {
        String gear = number == 0 ? "reverse" : ordinal(number);
        return gear + (twoRanges ? " " + range.label() : "") + auxiliary;
    }
}
