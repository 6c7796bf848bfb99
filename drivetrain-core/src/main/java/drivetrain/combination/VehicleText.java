package drivetrain.combination;

import drivetrain.quantity.Area;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Kind;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.MomentOfInertia;
import drivetrain.quantity.Quantity;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import drivetrain.road.AxleBalance;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Reads the literal of a vehicle: words, each with what it measures behind it. */
final class VehicleText {

    private static final String DUAL = "dual";
    private static final String SPLIT = "split";
    private static final Map<String, Kind<?>> MEASURED = measured();
    private static final List<String> KEYS =
            List.of("mass", "front", "rear", DUAL, "drag", "wheelbase", "cg", SPLIT, "engine-inertia", "wheel-inertia");
    private static final Pattern WORD = Pattern.compile("\\S+");
    private static final String ALLOWED =
            "mass, front and rear, each with a mass such as 1700 kg; dual; drag with an area such as 1.4 m2; "
                    + "wheelbase and cg with a length; split with the front axle's share such as 54 %; engine-inertia and wheel-inertia in kg m2";

    private final String text;
    private final List<MatchResult> words;
    private final Map<String, Quantity<?>> values = new LinkedHashMap<>();
    private OptionalDouble split = OptionalDouble.empty();
    private boolean dual;

    VehicleText(String text) {
        this.text = text;
        this.words = WORD.matcher(text).results().toList();
    }

    private static Map<String, Kind<?>> measured() {
        Map<String, Kind<?>> kinds = new LinkedHashMap<>();
        kinds.put("mass", Mass.KIND);
        kinds.put("front", Mass.KIND);
        kinds.put("rear", Mass.KIND);
        kinds.put("drag", Area.KIND);
        kinds.put("wheelbase", Length.KIND);
        kinds.put("cg", Length.KIND);
        kinds.put("engine-inertia", MomentOfInertia.KIND);
        kinds.put("wheel-inertia", MomentOfInertia.KIND);
        return kinds;
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
                value("mass", Mass.class),
                value("front", Mass.class),
                value("rear", Mass.class),
                dual,
                Optional.empty(),
                roadData());
    }

    private RoadData roadData() {
        return new RoadData(
                value("drag", Area.class),
                value("wheelbase", Length.class),
                value("cg", Length.class),
                split,
                value("engine-inertia", MomentOfInertia.class),
                value("wheel-inertia", MomentOfInertia.class));
    }

    private <Q extends Quantity<Q>> Optional<Q> value(String key, Class<Q> type) {
        return Optional.ofNullable(values.get(key)).map(type::cast);
    }

    private int readEntry(int at) {
        MatchResult word = words.get(at);
        String key = word.group().toLowerCase(Locale.ROOT);
        if (!KEYS.contains(key)) {
            throw fault("\"" + word.group() + "\" does not describe a vehicle", word.start(), NearNames.of(key, KEYS));
        }
        if (values.containsKey(key) || (dual && key.equals(DUAL)) || (split.isPresent() && key.equals(SPLIT))) {
            throw fault("\"" + key + "\" stands there twice", word.start(), List.of());
        }
        if (key.equals(DUAL)) {
            dual = true;
            return at + 1;
        }
        int end = at + 1;
        while (end < words.size() && !KEYS.contains(words.get(end).group().toLowerCase(Locale.ROOT))) {
            end++;
        }
        if (end == at + 1) {
            throw fault("\"" + key + "\" has nothing behind it", word.end(), List.of());
        }
        int start = words.get(at + 1).start();
        String given = text.substring(start, words.get(end - 1).end());
        located(start, () -> {
            readValue(key, given);
            return roadData();
        });
        return end;
    }

    private void readValue(String key, String given) {
        if (key.equals(SPLIT)) {
            split = OptionalDouble.of(AxleBalance.requireShare(percent(given)));
            return;
        }
        Kind<?> kind = MEASURED.get(key);
        if (kind == null) {
            throw new IllegalStateException("nothing reads " + key);
        }
        Quantity<?> value = kind.parse(given);
        values.put(key, value instanceof Mass mass ? Vehicle.requirePlausible("mass", mass) : value);
    }

    private double percent(String given) {
        String number =
                given.endsWith("%") ? given.substring(0, given.length() - 1).strip() : "";
        return DecimalText.parse(number)
                        .orElseThrow(() -> Refusal.of("load split", given, "is not a percentage")
                                .allowing("the front axle's share of the weight, such as 54 %")
                                .asException())
                / 100.0;
    }

    private <T> T located(int start, Supplier<T> reader) {
        try {
            return reader.get();
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
