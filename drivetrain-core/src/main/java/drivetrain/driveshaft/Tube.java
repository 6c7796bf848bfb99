package drivetrain.driveshaft;

import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;

/**
 * A round tube or bar.
 *
 * @param diameter the outside diameter, 5 to 500 mm
 * @param wall the wall thickness, more than 0, at most the radius, at which the tube is a solid bar
 */
public record Tube(Length diameter, Length wall) {

    private static final Length LEAST = Length.ofMillimeters(5.0);
    private static final Length MOST = Length.ofMillimeters(500.0);

    /**
     * Checks the dimensions.
     *
     * @throws drivetrain.refusal.RefusedException if they are impossible
     */
    public Tube {
        if (!(diameter.compareTo(LEAST) >= 0 && diameter.compareTo(MOST) <= 0)) {
            throw Refusal.of(
                            "tube diameter",
                            diameter.toString(),
                            "cannot be that of a shaft: is the unit the right one?")
                    .allowing("5 to 500 mm, 0.2 to 19.7 in")
                    .asException();
        }
        wall.requirePositive("tube wall");
        if (wall.toMeters() > diameter.toMeters() / 2.0) {
            throw Refusal.of("tube wall", wall.toString(), "is more than the radius of the tube")
                    .allowing("up to " + diameter.dividedBy(2.0).format(Length.MILLIMETER, 2))
                    .asException();
        }
    }

    /**
     * Makes a tube.
     *
     * @param diameter the outside diameter
     * @param wall the wall thickness
     * @return the tube
     * @throws drivetrain.refusal.RefusedException if the dimensions are impossible
     */
    public static Tube of(Length diameter, Length wall) {
        return new Tube(diameter, wall);
    }

    /**
     * Makes a solid bar.
     *
     * @param diameter the diameter
     * @return the bar, as a tube whose wall is its radius
     * @throws drivetrain.refusal.RefusedException if the diameter is impossible
     */
    public static Tube solid(Length diameter) {
        return new Tube(diameter, diameter.dividedBy(2.0));
    }

    /**
     * Reads outside diameter, an x, and the wall.
     *
     * @param text the text, such as {@code 3 in x 0.083 in}, {@code 3 1/2 x 0.083 in} or {@code 76.2 x 2.1 mm}; a diameter without a unit has that of
     *     the wall
     * @return the tube
     * @throws drivetrain.refusal.RefusedException if the text is not a possible tube, with the index of the fault
     */
    public static Tube parse(String text) {
        return TubeText.read(text);
    }

    /**
     * Writes the tube.
     *
     * @return the text that {@link #parse} reads back as an equal tube
     */
    public String text() {
        return diameter + " x " + wall;
    }

    /**
     * Returns the inside diameter.
     *
     * @return zero for a solid bar
     */
    public Length bore() {
        double inside = diameter.toMeters() - 2.0 * wall.toMeters();
        return Length.ofMeters(Math.max(0.0, inside));
    }

    /**
     * Returns the area of the section in square meters.
     *
     * @return pi/4 (D^2 - d^2)
     */
    public double area() {
        double outside = diameter.toMeters();
        double inside = bore().toMeters();
        return Math.PI / 4.0 * (outside - inside) * (outside + inside);
    }

    /**
     * Returns the second moment of area about a diameter, in m^4.
     *
     * @return pi/64 (D^4 - d^4)
     */
    public double secondMoment() {
        double outside = diameter.toMeters();
        double inside = bore().toMeters();
        return area() / 16.0 * (outside * outside + inside * inside);
    }

    /**
     * Returns the polar moment of area, in m^4.
     *
     * @return pi/32 (D^4 - d^4)
     */
    public double polarMoment() {
        return 2.0 * secondMoment();
    }
}
