package drivetrain.fuel;

import drivetrain.quantity.Current;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.VolumeFlow;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the literal text of one pump or several; {@link Pump#parse} says what it may hold. */
final class PumpText {

    private static final String ALLOWED =
            "such as 13.5 V, 280 L/h at 30 psi 7 A, 210 L/h at 70 psi 11 A; 2 x NAME in parallel;"
                    + " or NAME + NAME in series";
    private static final List<String> KEYWORDS = List.of("at", "in", "parallel", "series");
    private static final Pattern SET =
            Pattern.compile("\\s*(.*\\S)\\s+in\\s+(parallel|series)\\s*", Pattern.CASE_INSENSITIVE | Pattern.DOTALL);
    private static final Pattern COUNTED = Pattern.compile("([0-9]{1,4})\\s*[xX\\u00D7]\\s+(.*)", Pattern.DOTALL);
    private static final int MOST_PUMPS = 4;

    private PumpText() {}

    static Pump read(String text, Function<String, Optional<Pump>> shelf) {
        Matcher set = SET.matcher(text);
        return text.length() <= 400 && set.matches() ? set(text, set, shelf) : one(text);
    }

    private static Pump set(String text, Matcher set, Function<String, Optional<Pump>> shelf) {
        PumpSet.Arrangement arrangement =
                set.group(2).equalsIgnoreCase("parallel") ? PumpSet.Arrangement.PARALLEL : PumpSet.Arrangement.SERIES;
        List<Pump> pumps = new ArrayList<>();
        int at = set.start(1);
        for (String piece : set.group(1).split("\\+", -1)) {
            int start = at + piece.length() - piece.stripLeading().length();
            pumps.addAll(counted(text, piece.strip(), Math.min(start, text.length()), shelf));
            at += piece.length() + 1;
        }
        if (pumps.size() < 2 || pumps.size() > MOST_PUMPS) {
            throw Refusal.of(
                            "pump",
                            text,
                            "has " + pumps.size() + (pumps.size() == 1 ? " pump " : " pumps ") + arrangement.label())
                    .allowing("2 to " + MOST_PUMPS + " pumps, such as 2 x NAME " + arrangement.label())
                    .at(set.start(1))
                    .asException();
        }
        return new PumpSet(text.strip(), pumps, arrangement);
    }

    private static List<Pump> counted(String text, String piece, int start, Function<String, Optional<Pump>> shelf) {
        Matcher counted = COUNTED.matcher(piece);
        if (!counted.matches()) {
            return List.of(part(text, piece, start, shelf));
        }
        int count = Integer.parseInt(counted.group(1));
        if (count < 1 || count > MOST_PUMPS) {
            throw Refusal.of("pump", text, "has " + count + " pumps")
                    .allowing("1 to " + MOST_PUMPS)
                    .at(start)
                    .asException();
        }
        return Collections.nCopies(count, part(text, counted.group(2), start + counted.start(2), shelf));
    }

    private static Pump part(String text, String piece, int start, Function<String, Optional<Pump>> shelf) {
        String name = piece.strip();
        Optional<Pump> known = shelf.apply(name);
        if (known.isPresent()) {
            return known.get();
        }
        if (name.isEmpty() || !Character.isDigit(name.charAt(0)) || name.indexOf(' ') < 0) {
            throw Refusal.of("pump", text, "\"" + name + "\" is not a pump on the shelf")
                    .allowing("a name that \"parts pump\" lists, or " + ALLOWED)
                    .at(start)
                    .asException();
        }
        FuelWords outer = FuelWords.of("pump", text, ALLOWED, KEYWORDS);
        return outer.located(start, () -> one(name));
    }

    private static MeasuredPump one(String text) {
        FuelWords words = FuelWords.of("pump", text, ALLOWED, KEYWORDS);
        List<PumpCurve> curves = new ArrayList<>();
        Optional<Voltage> voltage = Optional.empty();
        List<PumpPoint> points = new ArrayList<>();
        int curveStart = words.position();
        do {
            int start = words.position();
            Optional<Voltage> next = words.find(Voltage.KIND);
            if (next.isPresent()) {
                if (voltage.isPresent()) {
                    curves.add(curve(words, curveStart, voltage.get(), points));
                }
                voltage = next;
                points.clear();
                curveStart = start;
            } else if (voltage.isEmpty()) {
                throw words.refusal("says not at which voltage the pump was measured", start);
            } else {
                points.add(point(words));
            }
        } while (words.nextClause());
        if (voltage.isEmpty()) {
            throw words.refusal("says not at which voltage the pump was measured", 0);
        }
        curves.add(curve(words, curveStart, voltage.get(), points));
        return words.located(0, () -> new MeasuredPump(text.strip(), curves));
    }

    private static PumpCurve curve(FuelWords words, int start, Voltage voltage, List<PumpPoint> points) {
        return words.located(start, () -> new PumpCurve(voltage, points));
    }

    private static PumpPoint point(FuelWords words) {
        int start = words.position();
        VolumeFlow flow = words.take(VolumeFlow.KIND, "flow", PumpPoint.NO_FLOW, PumpPoint.MOST_FLOW);
        if (!words.takes("at")) {
            throw words.refusal("says not at which pressure this flow was measured", words.position());
        }
        Pressure pressure = words.take(Pressure.KIND, "pressure", PumpPoint.NO_PRESSURE, PumpPoint.MOST_PRESSURE);
        Optional<Current> current = words.find(Current.KIND);
        return words.located(start, () -> new PumpPoint(pressure, flow, current));
    }
}
