package drivetrain.comparison;

import drivetrain.quantity.Speed;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads the words of a measure: {@code crawl ratio}, {@code rpm at 65 mph}. */
public final class MeasureWords {

    private static final String RPM = "rpm";
    private static final Map<String, String> SYNONYMS = Map.ofEntries(
            Map.entry("engine speed", RPM),
            Map.entry("cruise rpm", RPM),
            Map.entry("cruise", RPM),
            Map.entry("crawl", "crawl ratio"),
            Map.entry("creep speed", "crawl speed"),
            Map.entry("torque", "wheel torque"),
            Map.entry("driveshaft speed", "shaft speed"),
            Map.entry("shaft rpm", "shaft speed"),
            Map.entry("shaft speed of critical", "share of critical speed"),
            Map.entry("share of critical", "share of critical speed"),
            Map.entry("critical speed share", "share of critical speed"),
            Map.entry("critical fraction", "share of critical speed"),
            Map.entry("critical", "critical speed"),
            Map.entry("margin", "load margin"),
            Map.entry("rating margin", "load margin"),
            Map.entry("weakest link", "load margin"),
            Map.entry("residual", "residual angle"),
            Map.entry("operating angle", "joint angle"),
            Map.entry("pump margin", "fuel margin"),
            Map.entry("supply margin", "fuel margin"),
            Map.entry("power supported", "supported power"),
            Map.entry("fuel power", "supported power"),
            Map.entry("speedo", "speedometer"),
            Map.entry("power", "peak power"),
            Map.entry("fuel", "fuel flow"),
            Map.entry("fuel demand", "fuel flow"),
            Map.entry("tyre diameter", "tire diameter"));

    private MeasureWords() {}

    /**
     * Reads a measure.
     *
     * @param text the words
     * @param cruise the road speed for an engine speed that names none
     * @return the measure
     * @throws RefusedException if the words are no measure, with near words, or if a road speed is missing
     */
    public static Measure parse(String text, Optional<Speed> cruise) {
        String words = text.strip();
        int at = words.toLowerCase(Locale.ROOT).indexOf(" at ");
        String name = (at < 0 ? words : words.substring(0, at)).strip().toLowerCase(Locale.ROOT);
        String known = SYNONYMS.getOrDefault(name, name);
        if (known.equals(RPM)) {
            return Measures.engineSpeedAt(at < 0 ? cruise.orElseThrow(() -> noSpeed(text)) : speed(words, at + 4));
        }
        Optional<Measure> measure = Measures.fixed().stream()
                .filter(one -> one.word().equals(known))
                .findFirst();
        if (measure.isPresent() && at >= 0) {
            throw Refusal.of("figure", text, "is not asked at a speed")
                    .allowing("\"" + known + "\" alone")
                    .at(at)
                    .asException();
        }
        return measure.orElseThrow(() -> unknown(text, name));
    }

    private static Speed speed(String words, int from) {
        try {
            Speed speed = Speed.parse(words.substring(from));
            if (!(speed.si() > 0.0)) {
                throw Refusal.of("road speed", words.substring(from), "must be greater than zero")
                        .allowing("a speed above zero, such as 65 mph")
                        .at(0)
                        .asException();
            }
            return speed;
        } catch (RefusedException refused) {
            Refusal why = refused.refusal();
            throw Refusal.of(why.subject(), words, why.problem())
                    .allowing(why.allowed())
                    .at(from + why.position().orElse(0))
                    .suggesting(why.suggestions())
                    .asException();
        }
    }

    private static RefusedException noSpeed(String text) {
        return Refusal.of("figure", text, "needs a road speed, and the order names none")
                .allowing("a speed behind it, such as rpm at 65 mph")
                .asException();
    }

    private static RefusedException unknown(String text, String name) {
        return Refusal.of("figure", text, "is not a figure that can be compared")
                .allowing(String.join(", ", words().keySet()))
                .suggesting(NearNames.of(name, names()))
                .at(0)
                .asException();
    }

    private static List<String> names() {
        List<String> names = new ArrayList<>(words().keySet());
        names.addAll(SYNONYMS.keySet());
        return names;
    }

    /**
     * Lists the words by which measures are asked for, each with its units.
     *
     * @return the words, engine speed with a speed as an example, and the symbols of the units
     */
    public static Map<String, List<String>> words() {
        Map<String, List<String>> words = new LinkedHashMap<>();
        words.put(RPM, List.of("rpm", "rad/s"));
        for (Measure measure : Measures.fixed()) {
            words.put(measure.word(), measure.scale().units());
        }
        return words;
    }
}
