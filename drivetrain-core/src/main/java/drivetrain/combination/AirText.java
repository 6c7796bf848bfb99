package drivetrain.combination;

import drivetrain.atmosphere.Air;
import drivetrain.quantity.Length;
import drivetrain.quantity.Temperature;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Reads the air that a package is driven in: {@code altitude 1500 m temperature 30 degC}, either part of it alone, in any order. */
final class AirText {

    private static final Pattern WORD = Pattern.compile("\\S+");
    private static final String ALTITUDE = "altitude";
    private static final String TEMPERATURE = "temperature";
    private static final List<String> KEYS = List.of(ALTITUDE, TEMPERATURE);
    private static final String ALLOWED =
            "altitude with a height such as 5000 ft, temperature such as 30 degC, or both; or standard";
    private static final Length LOWEST = Length.ofMeters(-500.0);
    private static final Length HIGHEST = Length.ofMeters(6000.0);
    private static final double COLDEST = -50.0;
    private static final double HOTTEST = 60.0;

    private final String text;
    private final List<MatchResult> words;
    private Optional<Length> altitude = Optional.empty();
    private Optional<Temperature> temperature = Optional.empty();

    private AirText(String text) {
        this.text = text;
        this.words = WORD.matcher(text).results().toList();
    }

    static Air read(String text) {
        return text.strip().equalsIgnoreCase("standard") ? Air.standard() : new AirText(text).read();
    }

    /** The altitude that a text names; that of the standard air is sea level. */
    static Optional<Length> altitude(String text) {
        if (text.strip().equalsIgnoreCase("standard")) {
            return Optional.of(Length.ofMeters(0.0));
        }
        AirText reader = new AirText(text);
        reader.read();
        return reader.altitude;
    }

    /** The temperature that a text names by itself. */
    static Optional<Temperature> temperature(String text) {
        if (text.strip().equalsIgnoreCase("standard")) {
            return Optional.empty();
        }
        AirText reader = new AirText(text);
        reader.read();
        return reader.temperature;
    }

    private Air read() {
        if (words.isEmpty()) {
            throw fault("describes no air", 0, List.of());
        }
        int at = 0;
        while (at < words.size()) {
            at = readEntry(at);
        }
        Air there = altitude.map(Air::standardAt).orElseGet(Air::standard);
        return temperature.map(there::withTemperature).orElse(there);
    }

    private int readEntry(int at) {
        MatchResult word = words.get(at);
        String key = word.group().toLowerCase(Locale.ROOT);
        if (!KEYS.contains(key)) {
            throw fault("\"" + word.group() + "\" does not describe air", word.start(), NearNames.of(key, KEYS));
        }
        if (key.equals(ALTITUDE) ? altitude.isPresent() : temperature.isPresent()) {
            throw fault("\"" + key + "\" stands there twice", word.start(), List.of());
        }
        int end = at + 1;
        while (end < words.size() && !KEYS.contains(words.get(end).group().toLowerCase(Locale.ROOT))) {
            end++;
        }
        if (end == at + 1) {
            throw fault("\"" + key + "\" has nothing behind it", word.end(), List.of());
        }
        int start = words.get(at + 1).start();
        readValue(key, start, text.substring(start, words.get(end - 1).end()));
        return end;
    }

    private void readValue(String key, int start, String given) {
        try {
            if (key.equals(ALTITUDE)) {
                altitude = Optional.of(Length.parse(given).requireBetween(ALTITUDE, LOWEST, HIGHEST, Length.METER));
            } else {
                temperature = Optional.of(requirePlausible(Temperature.parse(given)));
            }
        } catch (RefusedException refused) {
            Refusal why = refused.refusal();
            RefusedException located =
                    fault(why.problem(), start + why.position().orElse(0), why.suggestions());
            throw why.allowed().isEmpty()
                    ? located
                    : located.refusal().allowing(why.allowed()).asException();
        }
    }

    private static Temperature requirePlausible(Temperature temperature) {
        double celsius = temperature.toCelsius();
        if (celsius < COLDEST || celsius > HOTTEST) {
            throw Refusal.of(TEMPERATURE, temperature.format(Temperature.CELSIUS, 1), "is out of range")
                    .allowing("-50 to 60 degC")
                    .asException();
        }
        return temperature;
    }

    private RefusedException fault(String problem, int position, List<String> near) {
        return Refusal.of("air", text, problem)
                .allowing(ALLOWED)
                .at(position)
                .suggesting(near)
                .asException();
    }
}
