package drivetrain.road;

import drivetrain.quantity.Angle;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Figure;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How steep a road is. In percent it is 100 times the tangent of the slope angle: 100 % is 45 degrees. The force that a grade costs goes with the sine, the
 * load on the tires with the cosine.
 *
 * @param tangent rise over horizontal run, finite; negative downhill
 */
public record Grade(double tangent) {

    /** The steepest grade that can be asked about, 100 % or 45 degrees; a vehicle's own limits are lower. */
    public static final double STEEPEST_ASKED = 1.0;

    private static final Pattern PERCENT = Pattern.compile("([+-]?[0-9.]+)\\s*(?:%|percent)");
    private static final Pattern DEGREES = Pattern.compile("([+-]?[0-9.]+)\\s*(?:deg|degrees|\u00B0)");
    private static final Pattern ONE_IN = Pattern.compile("1\\s*(?:in|:)\\s*([0-9.]+)");
    private static final String ALLOWED = "a grade such as 6 %, 3.4 deg or 1 in 17, up to 100 % (45 deg) either way";
    private static final Grade LEVEL = new Grade(0.0);

    /**
     * Checks the number.
     *
     * @throws RefusedException if it is not finite
     */
    public Grade {
        if (!Double.isFinite(tangent)) {
            throw Refusal.of("grade", Double.toString(tangent), "is vertical or not a number")
                    .allowing(ALLOWED)
                    .asException();
        }
        tangent += 0.0;
    }

    /**
     * Returns the level road.
     *
     * @return a grade of zero
     */
    public static Grade level() {
        return LEVEL;
    }

    /**
     * Makes a grade from its percentage.
     *
     * @param percent 100 times rise over run
     * @return the grade
     * @throws RefusedException if the number is not finite
     */
    public static Grade ofPercent(double percent) {
        return new Grade(percent / 100.0);
    }

    /**
     * Makes a grade from its slope angle.
     *
     * @param slope the angle above the horizontal
     * @return the grade
     * @throws RefusedException if the grade is vertical
     */
    public static Grade ofAngle(Angle slope) {
        if (!(Math.abs(slope.toDegrees()) < 90.0)) {
            throw Refusal.of("grade", slope.format(Angle.DEGREE, 1), "is vertical or steeper")
                    .allowing(ALLOWED)
                    .asException();
        }
        return new Grade(Math.tan(slope.si()));
    }

    /**
     * Reads {@code 6 %}, {@code 3.4 deg}, {@code 1 in 17} or {@code level}.
     *
     * @param text the text
     * @return the grade, at most 100 % either way
     * @throws RefusedException if the text is something else or steeper, with the index of the fault
     */
    public static Grade parse(String text) {
        String given = text.strip().toLowerCase(Locale.ROOT);
        if (given.equals("level") || given.equals("flat")) {
            return LEVEL;
        }
        OptionalDouble percent = number(PERCENT, given);
        if (percent.isPresent()) {
            return asked(text, percent.getAsDouble() / 100.0);
        }
        OptionalDouble degrees = number(DEGREES, given);
        if (degrees.isPresent()) {
            double slope = Math.toRadians(degrees.getAsDouble());
            return asked(text, Math.abs(slope) < Math.PI / 4.0 + 1e-9 ? Math.tan(slope) : 2.0);
        }
        OptionalDouble run = number(ONE_IN, given);
        if (run.isPresent()) {
            return asked(text, 1.0 / run.getAsDouble());
        }
        OptionalDouble bare = DecimalText.parse(given);
        Refusal refusal = bare.isPresent()
                ? Refusal.of("grade", text, "has no unit").at(text.length())
                : Refusal.of("grade", text, "is not a grade").at(0);
        throw refusal.allowing(ALLOWED).asException();
    }

    private static OptionalDouble number(Pattern form, String given) {
        Matcher matcher = form.matcher(given);
        return matcher.matches() ? DecimalText.parse(matcher.group(1)) : OptionalDouble.empty();
    }

    private static Grade asked(String text, double tangent) {
        if (!(Math.abs(tangent) <= STEEPEST_ASKED + 1e-9)) {
            throw Refusal.of("grade", text, "is out of range")
                    .allowing(ALLOWED)
                    .at(0)
                    .asException();
        }
        return new Grade(tangent);
    }

    /**
     * Returns the slope angle.
     *
     * @return the arc tangent of the grade
     */
    public Angle angle() {
        return Angle.ofRadians(Math.atan(tangent));
    }

    /**
     * Returns the share of the weight that pulls downhill.
     *
     * @return the sine of the slope angle
     */
    public double sine() {
        return tangent / Math.hypot(1.0, tangent);
    }

    /**
     * Returns the share of the weight that presses on the ground.
     *
     * @return the cosine of the slope angle
     */
    public double cosine() {
        return 1.0 / Math.hypot(1.0, tangent);
    }

    /**
     * Returns the grade for showing.
     *
     * @return the percentage to one decimal
     */
    public Figure figure() {
        return Figure.percent(tangent, 1);
    }
}
