package drivetrain.fuel;

import drivetrain.finding.Source;
import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.Optional;

/**
 * What a line is made of: a tube or a hose of one bore.
 *
 * @param name the name in a catalog, or the literal text
 * @param material tube or hose
 * @param bore the inside diameter, 2 to 50 mm
 * @param workingPressure the pressure that its maker allows, 0.1 to 400 bar, where it is known
 */
public record Conduit(String name, Material material, Length bore, Optional<Pressure> workingPressure) {

    static final Length LEAST_BORE = Length.ofMillimeters(2.0);
    static final Length MOST_BORE = Length.ofMillimeters(50.0);
    private static final Pressure LEAST_PRESSURE = Pressure.ofBar(0.1);
    private static final Pressure MOST_PRESSURE = Pressure.ofBar(400.0);
    private static final String ALLOWED = "a bore and its kind, such as 8 mm tube or 3/8 in hose";

    /** What the wall is made of, which decides how rough it is. */
    public enum Material {
        /** Drawn metal tube. */
        TUBE("tube"),
        /** Rubber or plastic hose. */
        HOSE("hose");

        private final String word;

        Material(String word) {
            this.word = word;
        }

        /**
         * Returns the word by which catalogs call it.
         *
         * @return the word
         */
        public String word() {
            return word;
        }
    }

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public Conduit {
        if (name.isBlank()) {
            throw Refusal.of("fuel hose", name, "has no name").asException();
        }
        bore.requireBetween("bore of the line", LEAST_BORE, MOST_BORE, Length.MILLIMETER);
        workingPressure.ifPresent(most ->
                most.requireBetween("working pressure of the line", LEAST_PRESSURE, MOST_PRESSURE, Pressure.BAR));
    }

    /**
     * Reads a tube or a hose from its literal text: a bore and {@code tube} or {@code hose}.
     *
     * @param text the text, such as {@code 3/8 in hose}
     * @return the conduit, named by the text
     * @throws drivetrain.refusal.RefusedException if the text cannot be read; a dash size is refused, because it is not a bore
     */
    public static Conduit parse(String text) {
        FuelWords words = FuelWords.of("fuel hose", text, ALLOWED, List.of("tube", "hose"));
        Conduit conduit = read(words, text.strip());
        if (words.nextClause()) {
            throw words.notUnderstood();
        }
        return conduit;
    }

    static Conduit read(FuelWords words, String name) {
        int start = words.position();
        String rest = words.clauseRest();
        if (rest.matches("(?i)(?:-|an ?-?|dash ?-?)[0-9]{1,2}\\b.*")) {
            throw words.refusal(
                    "\"" + rest
                            + "\" is a dash size, which is not a bore: -6 is 3/8 in in most hoses and 5/16 in in some",
                    start);
        }
        return words.located(start, () -> {
            FuelWords inner = FuelWords.of("fuel hose", rest, ALLOWED, List.of("tube", "hose"));
            Length bore = inner.take(Length.KIND, "bore", LEAST_BORE, MOST_BORE);
            inner.takes("bore");
            Material material;
            if (inner.takes("tube")) {
                material = Material.TUBE;
            } else if (inner.takes("hose")) {
                material = Material.HOSE;
            } else {
                throw inner.refusal("says not whether it is a tube or a hose", inner.position());
            }
            if (!inner.atEnd()) {
                throw inner.notUnderstood();
            }
            return new Conduit(name, material, bore, Optional.empty());
        });
    }

    Length roughness() {
        return Length.ofMillimeters(
                FuelConstant.of(material.word() + "-roughness").value());
    }

    Source roughnessSource() {
        return FuelConstant.of(material.word() + "-roughness").source();
    }
}
