package drivetrain.road;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.DecimalText;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What the wheels run on. The values stand in {@code reference-tables/road/rolling-resistance.csv} and {@code reference-tables/road/friction.csv}, each with
 * its source.
 *
 * @param name the name, such as {@code wet-asphalt}
 * @param description what it is
 * @param rolling rolling resistance at low speed over the load on the tires
 * @param leastRolling the least usual value of it
 * @param mostRolling the greatest usual value of it
 * @param hard true if rolling resistance rises with speed by the tire alone
 * @param rollingSource where the rolling resistance comes from
 * @param sliding friction of a tire that slides, over the load on it
 * @param peak friction of a tire just before it slides
 * @param frictionSource where the sliding friction comes from
 */
public record Surface(
        String name,
        String description,
        double rolling,
        double leastRolling,
        double mostRolling,
        boolean hard,
        Source rollingSource,
        double sliding,
        double peak,
        Source frictionSource) {

    /** Where the peak values come from. */
    static final Source PEAK_SOURCE =
            Source.fromMemory("Wong, Theory of Ground Vehicles: average peak and sliding values of tire friction");

    private static final double MOST_FRICTION = 1.5;

    /** Loads the tables when the first surface is asked for. */
    private static final class Known {
        static final Map<String, Surface> BY_NAME = load();
    }

    /**
     * Checks the values.
     *
     * @throws drivetrain.refusal.RefusedException if the rolling resistance is not from 0 to 0.5, or a friction not above 0 and up to 1.5
     */
    public Surface {
        if (!(rolling >= 0.0 && rolling <= 0.5)) {
            throw Refusal.of("rolling resistance", DecimalText.shortest(rolling), "is out of range")
                    .allowing("0 to 0.5 of the load")
                    .asException();
        }
        requireFriction(sliding);
        requireFriction(peak);
    }

    /**
     * Returns a friction that is possible and refuses any other.
     *
     * @param friction friction force over load
     * @return the friction
     * @throws drivetrain.refusal.RefusedException if it is not above 0 and up to 1.5
     */
    public static double requireFriction(double friction) {
        if (!(friction > 0.0 && friction <= MOST_FRICTION)) {
            throw Refusal.of("friction", Double.toString(friction), "is out of range")
                    .allowing("more than 0, up to 1.5")
                    .asException();
        }
        return friction;
    }

    /**
     * Finds a surface by its name; {@code dry asphalt}, {@code asphalt} and {@code wet asphalt} are understood as well as {@code wet-asphalt}.
     *
     * @param text the name, upper and lower case alike
     * @return the surface
     * @throws drivetrain.refusal.RefusedException if there is no such surface, with the near names
     */
    public static Surface parse(String text) {
        String wanted = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-");
        String name = wanted.startsWith("dry-") ? wanted.substring(4) : wanted;
        Surface known = Known.BY_NAME.get(name);
        if (known == null) {
            throw Refusal.of("surface", text, "is not a surface that is known here")
                    .allowing(String.join(", ", names()))
                    .suggesting(NearNames.of(name, names()))
                    .at(0)
                    .asException();
        }
        return known;
    }

    /**
     * Lists the names.
     *
     * @return the names, paved surfaces first
     */
    public static List<String> names() {
        return List.copyOf(Known.BY_NAME.keySet());
    }

    private static Map<String, Surface> load() {
        Map<String, TableRow> friction = new LinkedHashMap<>();
        ReferenceTable.load("road/friction.csv").rows().forEach(row -> friction.put(row.text("surface"), row));
        Map<String, Surface> surfaces = new LinkedHashMap<>();
        for (TableRow row : ReferenceTable.load("road/rolling-resistance.csv").rows()) {
            TableRow grip = friction.get(row.text("surface"));
            if (grip == null) {
                throw Refusal.of("surface", row.text("surface"), "has no row in road/friction.csv")
                        .asException();
            }
            surfaces.put(row.text("surface"), of(row, grip));
        }
        return java.util.Collections.unmodifiableMap(surfaces);
    }

    private static Surface of(TableRow row, TableRow grip) {
        return new Surface(
                row.text("surface"),
                row.text("description"),
                row.number("coefficient"),
                row.number("from"),
                row.number("to"),
                row.text("hard").equals("yes"),
                row.source(),
                grip.number("sliding"),
                grip.number("peak"),
                grip.source());
    }

    /**
     * Returns what rolling resistance on it rests on.
     *
     * @return the assumptions: the table's value, and on a hard surface how it rises with speed
     */
    public List<Assumption> rollingAssumptions() {
        Assumption value = Assumption.flagged(
                "rolling resistance",
                "rolling resistance on " + description + ": " + DecimalText.shortest(rolling)
                        + " of the weight at low speed ("
                        + DecimalText.shortest(leastRolling) + " to " + DecimalText.shortest(mostRolling)
                        + "), a table value and not measured on these tires",
                rollingSource);
        return hard ? List.of(value, RollingResistance.SPEED_ASSUMPTION) : List.of(value);
    }

    /**
     * Returns what grip on it rests on.
     *
     * @return the assumption about the sliding friction
     */
    public Assumption slidingAssumption() {
        return Assumption.flagged(
                "friction",
                "friction on " + description + ": " + DecimalText.shortest(sliding)
                        + " sliding, a table value; tires differ",
                frictionSource);
    }

    /**
     * Returns what the greatest torque that the ground can send back rests on.
     *
     * @return the assumption about the peak friction
     */
    public Assumption peakAssumption() {
        return Assumption.flagged(
                "peak friction",
                "peak friction on " + description + ": " + DecimalText.shortest(peak)
                        + ", a table value; sticky tires or rocks hold more and load the parts more",
                PEAK_SOURCE);
    }
}
