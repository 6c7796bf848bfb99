package drivetrain.driveshaft;

import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Density;
import drivetrain.quantity.Kind;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Quantity;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a material that is written out: words, each followed by its figure. */
final class ShaftMaterialText {

    private static final String SUBJECT = "shaft material";
    private static final int LONGEST_TEXT = 200;
    private static final Pattern WORD = Pattern.compile(
            "(?i)(?<![\\p{Alnum}])(laminate|modulus|poisson|shear|density|yield|strength)(?![\\p{Alnum}])");
    private static final String METAL =
            "modulus 205 GPa poisson 0.29 density 7850 kg/m3, and yield 350 MPa where strength is asked";
    private static final String LAMINATE =
            "laminate modulus 110 GPa shear 14 GPa density 1580 kg/m3, and strength 120 MPa where strength is asked";

    private final String given;
    private final Map<String, Slice> slices = new LinkedHashMap<>();

    /** The text behind a word and the index at which it starts. */
    private record Slice(String text, int start) {}

    private ShaftMaterialText(String given) {
        this.given = given;
    }

    static ShaftMaterial read(String text) {
        if (text.length() > LONGEST_TEXT) {
            throw Refusal.of(SUBJECT, text.substring(0, LONGEST_TEXT) + "...", "is too long")
                    .allowing(allowed())
                    .asException();
        }
        ShaftMaterialText reader = new ShaftMaterialText(text);
        reader.cut();
        return reader.slices.containsKey("laminate") ? reader.laminate() : reader.metal();
    }

    private static String allowed() {
        return String.join(", ", StockMaterials.names()) + "; or written out: " + METAL;
    }

    private void cut() {
        Matcher words = WORD.matcher(given);
        int from = 0;
        String word = "";
        while (words.find()) {
            keep(word, from, words.start());
            word = words.group(1).toLowerCase(Locale.ROOT);
            from = words.end();
        }
        keep(word, from, given.length());
    }

    private void keep(String word, int from, int to) {
        String text = given.substring(from, to);
        String figure = text.strip();
        int figureStart = figure.isEmpty() ? from : from + text.indexOf(figure.charAt(0));
        if (word.isEmpty()) {
            if (!figure.isEmpty()) {
                throw unknown(figure, figureStart);
            }
            return;
        }
        if (slices.put(word, new Slice(figure, figureStart)) != null) {
            throw refusal("has " + word + " twice", from);
        }
    }

    private RefusedException unknown(String figure, int at) {
        String lower = figure.toLowerCase(Locale.ROOT);
        if (lower.startsWith("carbon") || lower.startsWith("composite") || lower.startsWith("fiber")) {
            return Refusal.of(SUBJECT, given, "has no usual figures: the plies make them, so ask the maker of the tube")
                    .allowing(LAMINATE)
                    .at(at)
                    .asException();
        }
        return Refusal.of(SUBJECT, given, "is not a material that is known here")
                .allowing(allowed())
                .at(at)
                .suggesting(NearNames.of(figure, StockMaterials.names()))
                .asException();
    }

    private ShaftMaterial metal() {
        requireOnly(List.of("modulus", "poisson", "density", "yield"), METAL);
        Pressure modulus = figure("modulus", Pressure.KIND, METAL, SolidLimits::requireModulus);
        double poisson = poisson();
        ShaftMetal metal =
                ShaftMetal.of(modulus, poisson, figure("density", Density.KIND, METAL, SolidLimits::requireDensity));
        return slices.containsKey("yield")
                ? metal.withYield(figure("yield", Pressure.KIND, METAL, SolidLimits::requireYield))
                : metal;
    }

    private double poisson() {
        Slice typed = slice("poisson", METAL);
        double ratio = DecimalText.parse(typed.text())
                .orElseThrow(() -> refusal("has a Poisson's ratio that is not a plain number", typed.start()));
        try {
            SolidLimits.requirePoisson(ratio);
        } catch (RefusedException impossible) {
            throw placed("poisson", typed, impossible);
        }
        return ratio;
    }

    private ShaftMaterial laminate() {
        requireOnly(List.of("laminate", "modulus", "shear", "density", "strength"), LAMINATE);
        Slice laminate = slice("laminate", LAMINATE);
        if (!laminate.text().isEmpty()) {
            throw refusal("has \"" + laminate.text() + "\" where modulus is wanted", laminate.start());
        }
        ShaftLaminate plies = ShaftLaminate.of(
                figure("modulus", Pressure.KIND, LAMINATE, SolidLimits::requireLaminateModulus),
                figure("shear", Pressure.KIND, LAMINATE, SolidLimits::requireLaminateShear),
                figure("density", Density.KIND, LAMINATE, SolidLimits::requireLaminateDensity));
        return slices.containsKey("strength")
                ? plies.withShearStrength(
                        figure("strength", Pressure.KIND, LAMINATE, SolidLimits::requireLaminateStrength))
                : plies;
    }

    private void requireOnly(List<String> words, String form) {
        for (Map.Entry<String, Slice> entry : slices.entrySet()) {
            if (!words.contains(entry.getKey())) {
                throw Refusal.of(SUBJECT, given, "has " + entry.getKey() + ", which does not belong here")
                        .allowing(form)
                        .at(Math.max(
                                0, entry.getValue().start() - entry.getKey().length() - 1))
                        .asException();
            }
        }
    }

    private Slice slice(String word, String form) {
        Slice slice = slices.get(word);
        if (slice == null) {
            throw Refusal.of(SUBJECT, given, "does not tell its " + word)
                    .allowing(form)
                    .at(given.length())
                    .asException();
        }
        return slice;
    }

    private <Q extends Quantity<Q>> Q figure(String word, Kind<Q> kind, String form, Consumer<Q> check) {
        Slice typed = slice(word, form);
        try {
            Q figure = kind.parse(typed.text());
            check.accept(figure);
            return figure;
        } catch (RefusedException wrong) {
            throw placed(word, typed, wrong);
        }
    }

    private RefusedException placed(String word, Slice typed, RefusedException wrong) {
        Refusal why = wrong.refusal();
        return Refusal.of(SUBJECT, given, word + " " + why.problem())
                .allowing(why.allowed())
                .at(typed.start() + why.position().orElse(0))
                .suggesting(why.suggestions())
                .asException();
    }

    private RefusedException refusal(String problem, int position) {
        return Refusal.of(SUBJECT, given, problem)
                .allowing(allowed())
                .at(position)
                .asException();
    }
}
