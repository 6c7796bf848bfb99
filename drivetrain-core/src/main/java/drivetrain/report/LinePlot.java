package drivetrain.report;

import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Several curves over one pair of axes. The units of the axes are those of the points in the unit system that is shown.
 *
 * @param title the words above the drawing; empty for none
 * @param xName what is drawn to the right, such as {@code engine speed}
 * @param yName what is drawn upwards, such as {@code road speed}
 * @param curves the curves, at least one
 */
public record LinePlot(String title, String xName, String yName, List<Curve> curves) {

    /**
     * Copies and checks.
     *
     * @throws IllegalArgumentException if there is no curve, if two curves have one mark, or if points differ in their units
     */
    public LinePlot {
        curves = List.copyOf(curves);
        if (curves.isEmpty()) {
            throw new IllegalArgumentException("a drawing needs a curve");
        }
        Set<Character> marks = new HashSet<>();
        Point first = curves.get(0).points().get(0);
        for (Curve curve : curves) {
            if (!marks.add(curve.mark())) {
                throw new IllegalArgumentException("two curves have the mark " + curve.mark());
            }
            for (Point point : curve.points()) {
                requireSameUnit(first.x(), point.x());
                requireSameUnit(first.y(), point.y());
            }
        }
    }

    private static void requireSameUnit(Figure first, Figure next) {
        for (UnitSystem system : List.of(UnitSystem.US, UnitSystem.METRIC)) {
            if (!first.unit(system).equals(next.unit(system))) {
                throw new IllegalArgumentException("points of one drawing have the units \"" + first.unit(system)
                        + "\" and \"" + next.unit(system) + "\"; allowed: one unit for each axis");
            }
        }
    }

    /**
     * One curve: straight lines from point to point.
     *
     * @param mark the letter or digit that tells it from the others without color, such as the number of the gear; printable ASCII
     * @param name the name, such as {@code 4th high}
     * @param points the points in the order in which they are joined, at least one
     */
    public record Curve(char mark, String name, List<Point> points) {

        /**
         * Copies and checks.
         *
         * @throws IllegalArgumentException if there is no point, or if the mark is no ASCII letter or digit
         */
        public Curve {
            points = List.copyOf(points);
            if (points.isEmpty()) {
                throw new IllegalArgumentException("curve " + name + " needs a point");
            }
            if (mark > 'z' || !Character.isLetterOrDigit(mark)) {
                throw new IllegalArgumentException("mark of curve " + name + "; allowed: an ASCII letter or digit");
            }
        }
    }

    /**
     * One point.
     *
     * @param x how far to the right
     * @param y how far up
     */
    public record Point(Figure x, Figure y) {}
}
