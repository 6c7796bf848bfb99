package drivetrain.fuel;

import drivetrain.quantity.Length;
import drivetrain.quantity.Power;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.SpecificFuelConsumption;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.Voltage;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the literal text of a fuel system's set-up; {@link FuelSystem#parse} says what it may hold. */
final class SystemText {

    private static final String ALLOWED =
            "such as return 43.5 psi, boost-referenced, lift 0.5 m, boost 8 psi, 13.8 V, low 12.2 V,"
                    + " wire 5 m of AWG 12, fuel at 40 degC, elevation 1600 m, margin 15 %, burns 0.52 lb/(hp-h), blower 45 hp, duty 85 %";
    static final List<String> KEYWORDS = List.of(
            "return",
            "returnless",
            "boost-referenced",
            "lift",
            "suction-lift",
            "boost",
            "low",
            "wire",
            "fuel",
            "elevation",
            "margin",
            "burns",
            "blower",
            "duty");
    private static final Pattern AREA = Pattern.compile("([0-9]{1,3}(?:\\.[0-9]{0,4})?)\\s*(?:mm2|mm\u00B2|sq mm)");

    private final FuelWords words;
    private final String text;
    private Optional<Regulator.Layout> layout = Optional.empty();
    private Optional<Pressure> setting = Optional.empty();
    private Optional<Boolean> referenced = Optional.empty();
    private Optional<Length> lift = Optional.empty();
    private Optional<Length> suctionLift = Optional.empty();
    private Optional<Pressure> boost = Optional.empty();
    private Optional<Voltage> voltage = Optional.empty();
    private Optional<Voltage> low = Optional.empty();
    private Optional<Wire> wire = Optional.empty();
    private Optional<Temperature> temperature = Optional.empty();
    private Optional<Length> elevation = Optional.empty();
    private Optional<Double> margin = Optional.empty();
    private Optional<SpecificFuelConsumption> consumption = Optional.empty();
    private Optional<Power> blower = Optional.empty();
    private Optional<Double> duty = Optional.empty();

    SystemText(String text) {
        this.text = text;
        words = FuelWords.of("fuel system", text, ALLOWED, KEYWORDS);
    }

    FuelSystem read() {
        do {
            readOne();
        } while (words.nextClause());
        if (referenced.isPresent() && setting.isEmpty()) {
            throw words.refusal("references a regulator that it does not give", 0);
        }
        if (low.isPresent() && voltage.isPresent() && low.get().isGreaterThan(voltage.get())) {
            throw words.refusal("has a low voltage above the voltage", 0);
        }
        return words.located(
                0,
                () -> new FuelSystem(
                        text.strip(),
                        setting.map(pressure -> new Regulator(layout.orElseThrow(), pressure, referenced.isPresent())),
                        lift,
                        suctionLift,
                        boost,
                        voltage,
                        low,
                        wire,
                        temperature,
                        elevation,
                        optional(margin),
                        consumption,
                        blower,
                        optional(duty)));
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    private void readOne() {
        int start = words.position();
        if (words.takes("return")) {
            regulator(Regulator.Layout.RETURN, start);
        } else if (words.takes("returnless")) {
            regulator(Regulator.Layout.RETURNLESS, start);
        } else if (words.takes("boost-referenced")) {
            referenced = words.once(referenced, Boolean.TRUE, start, "the reference");
        } else if (words.takes("lift")) {
            Length value = words.take(Length.KIND, "lift", FuelSystem.LEAST_LIFT, FuelSystem.MOST_LIFT);
            lift = words.once(lift, value, start, "the lift");
        } else if (words.takes("suction-lift")) {
            Length value = words.take(Length.KIND, "suction lift", FuelSystem.LEAST_LIFT, FuelSystem.MOST_LIFT);
            suctionLift = words.once(suctionLift, value, start, "the suction lift");
        } else if (words.takes("boost")) {
            Pressure value = words.take(Pressure.KIND, "boost", FuelSystem.NONE, FuelSystem.MOST_BOOST);
            boost = words.once(boost, value, start, "the boost");
        } else if (words.takes("low")) {
            low = words.once(low, volts(), start, "the low voltage");
        } else if (words.takes("wire")) {
            wire = words.once(wire, wire(), start, "the wire");
        } else if (words.atNumber()) {
            voltage = words.once(voltage, volts(), start, "the voltage");
        } else {
            readCondition(start);
        }
    }

    private void readCondition(int start) {
        if (words.takes("fuel")) {
            words.takes("at");
            Temperature value = words.take(Temperature.KIND, "fuel temperature");
            words.located(start, () -> Fuel.requireCarried(value));
            temperature = words.once(temperature, value, start, "the fuel temperature");
        } else if (words.takes("elevation")) {
            Length value = words.take(Length.KIND, "elevation", FuelSystem.LEAST_ELEVATION, FuelSystem.MOST_ELEVATION);
            elevation = words.once(elevation, value, start, "the elevation");
        } else if (words.takes("margin")) {
            margin = words.once(margin, words.percent("margin", 0.0, 100.0), start, "the margin");
        } else if (words.takes("burns")) {
            SpecificFuelConsumption value = words.take(SpecificFuelConsumption.KIND, "specific fuel consumption");
            words.located(start, () -> Consumption.requirePlausible(value));
            consumption = words.once(consumption, value, start, "the consumption");
        } else if (words.takes("blower")) {
            Power value =
                    words.take(Power.KIND, "power of the supercharger", Power.ofWatts(0.0), FuelSystem.MOST_BLOWER);
            blower = words.once(blower, value, start, "the supercharger's power");
        } else if (words.takes("duty")) {
            duty = words.once(duty, words.percent("duty of the injectors", 1.0, 100.0), start, "the duty");
        } else {
            throw words.notUnderstood();
        }
    }

    private void regulator(Regulator.Layout kind, int start) {
        Pressure value = words.take(Pressure.KIND, "setting of the regulator", Regulator.LEAST, Regulator.MOST);
        layout = Optional.of(kind);
        setting = words.once(setting, value, start, "the regulator");
    }

    private Voltage volts() {
        return words.take(Voltage.KIND, "voltage", PumpCurve.LEAST_VOLTAGE, PumpCurve.MOST_VOLTAGE);
    }

    private Wire wire() {
        int start = words.position();
        Length length = words.take(Length.KIND, "length of the wire one way", Wire.LEAST, Wire.MOST);
        if (!words.takes("of")) {
            throw words.refusal("says not how thick the wire is", words.position());
        }
        if (words.takes("awg")) {
            int gauge = words.integer("wire gauge", 0, Wire.THINNEST_GAUGE);
            return words.located(start, () -> Wire.ofGauge(length, gauge));
        }
        int areaStart = words.position();
        Matcher area = AREA.matcher(words.clauseRest());
        if (!area.matches()) {
            throw words.refusal("has no thickness of the wire here; write AWG 12 or 4 mm2", areaStart);
        }
        return words.located(start, () -> new Wire(length, Double.parseDouble(area.group(1))));
    }
}
