package drivetrain.combination;

import drivetrain.quantity.Mass;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Reads the literal of a vehicle. */
final class VehicleText {

    private static final Pattern WORD = Pattern.compile("\\S+");
    private static final List<String> KEYS = List.of("mass", "front", "rear", "dual");
    private static final String ALLOWED = "mass, front and rear, each with a mass such as 1700 kg, and dual";

    private final String text;
    private final List<MatchResult> words;
    private final Map<String, Mass> masses = new LinkedHashMap<>();
    private boolean dual;

    VehicleText(String text) {
        this.text = text;
        this.words = WORD.matcher(text).results().toList();
    }

    Vehicle read() {
        if (words.isEmpty()) {
            throw fault("describes no vehicle", 0, List.of());
        }
        int at = 0;
        while (at < words.size()) {
            at = readEntry(at);
        }
        return new Vehicle(
                text,
                Optional.ofNullable(masses.get("mass")),
                Optional.ofNullable(masses.get("front")),
                Optional.ofNullable(masses.get("rear")),
                dual,
                Optional.empty());
    }

    private int readEntry(int at) {
        MatchResult word = words.get(at);
        String key = word.group().toLowerCase(Locale.ROOT);
        if (!KEYS.contains(key)) {
            throw fault("\"" + word.group() + "\" does not describe a vehicle", word.start(), NearNames.of(key, KEYS));
        }
        if (masses.containsKey(key) || (dual && key.equals("dual"))) {
            throw fault("\"" + key + "\" stands there twice", word.start(), List.of());
        }
        if (key.equals("dual")) {
            dual = true;
            return at + 1;
        }
        int end = at + 1;
        while (end < words.size() && !KEYS.contains(words.get(end).group().toLowerCase(Locale.ROOT))) {
            end++;
        }
        if (end == at + 1) {
            throw fault("\"" + key + "\" has no mass behind it", word.end(), List.of());
        }
        masses.put(
                key, massBetween(words.get(at + 1).start(), words.get(end - 1).end()));
        return end;
    }

    private Mass massBetween(int start, int end) {
        try {
            return Vehicle.requirePlausible("mass", Mass.parse(text.substring(start, end)));
        } catch (RefusedException refused) {
            Refusal why = refused.refusal();
            RefusedException located =
                    fault(why.problem(), start + why.position().orElse(0), why.suggestions());
            throw why.allowed().isEmpty()
                    ? located
                    : located.refusal().allowing(why.allowed()).asException();
        }
    }

    private RefusedException fault(String problem, int position, List<String> near) {
        return Refusal.of("vehicle", text, problem)
                .allowing(ALLOWED)
                .at(position)
                .suggesting(near)
                .asException();
    }
}
