package drivetrain.fuel;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.fuzz.ChangedText;
import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.VolumeFlow;
import drivetrain.refusal.RefusedException;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * Random texts of fuels, pumps, lines, injectors, set-ups and tanks: each is refused with its place or is a part that answers; nothing else may happen.
 *
 * <p>System properties: {@code fuzz.cases}, how many texts (1 000 000), and {@code fuzz.seed}.
 */
class FuelFuzz {

    private static final String[] PIECES = {
        ",",
        ";",
        " ",
        "of",
        "at",
        "in parallel",
        "in series",
        "2 x ",
        "8 x ",
        "pump",
        "filter",
        "tube",
        "hose",
        "elbows",
        "low",
        "return",
        "lift",
        "V",
        "A",
        "psi",
        "bar",
        "L/h",
        "gph",
        "lb/h",
        "mm",
        "in",
        "%",
        "degC",
        "AWG",
        "mm2",
        "0",
        "1",
        "-1",
        "1e999",
        "NaN",
        "1,5",
        ".",
        "+",
        "/",
        "\u0000",
        "\u2028",
        "\uD83D",
        "\u001B[31m",
        "\"",
        "43.5 psi",
        "12 V",
        "E85",
        "diesel"
    };

    private static final String[] SEEDS = {
        "E85, ethanol 70 %, 780 kg/m3, viscosity 1.3 mm2/s, reid 8 psi",
        "13.5 V, 300 L/h at 0 psi 5 A, 255 L/h at 43.5 psi 8 A, 0 L/h at 95 psi 11 A",
        "2 x 13.5 V, 300 L/h at 0 psi, 200 L/h at 75 psi in parallel",
        "0.5 m of 12.7 mm hose, pump, 4.5 m of 3/8 in tube, filter 8 kPa at 200 L/h, 2 elbows",
        "8 x 42 lb/h at 43.5 psi, tested at 0.72 kg/L",
        "return 58 psi, boost-referenced, lift 0.5 m, 13.8 V, low 12.4 V, wire 5 m of AWG 12, fuel at 40 degC, margin 15 %",
        "90 L, usable 84 L, canister 80 g, fill 40 %, day 20 degC to 34 degC"
    };

    private static final List<Function<String, Object>> READERS = List.of(
            Fuel::parse,
            text -> Pump.parse(text, name -> Optional.empty()),
            text -> FuelLine.parse(text, FuelLine.Shelves.none()),
            text -> Injectors.parse(text, name -> Optional.empty()),
            FuelSystem::parse,
            Tank::parse);

    private static final FlowingFuel FUEL =
            new FlowingFuel(Fuel.parse("gasoline, 745 kg/m3"), Temperature.ofCelsius(30.0));

    @Test
    void refusesOrAnswers() {
        long cases = Long.getLong("fuzz.cases", 1_000_000L);
        Random random = new Random(Long.getLong("fuzz.seed", 20240607L));
        long read = 0;
        for (long i = 0; i < cases; i++) {
            String text = text(random);
            for (Function<String, Object> reader : READERS) {
                Object part;
                try {
                    part = reader.apply(text);
                } catch (RefusedException e) {
                    assertThat(e.refusal().position()).as(text).isPresent();
                    assertThat(e.refusal().position().getAsInt()).as(text).isBetween(0, text.length());
                    continue;
                }
                read++;
                answers(text, part);
            }
        }
        assertThat(read).as("texts that are parts").isPositive();
    }

    private static void answers(String text, Object part) {
        if (part instanceof Pump pump) {
            supply(pump, FuelLine.parse("4 m of 8 mm tube", FuelLine.Shelves.none()), text);
        } else if (part instanceof FuelLine line) {
            supply(Pump.parse(SEEDS[1], name -> Optional.empty()), line, text);
        } else if (part instanceof Fuel fuel) {
            assertThat(fuel.densityAt(Temperature.ofCelsius(60.0)).si())
                    .as(text)
                    .isPositive();
            fuel.vaporPressureAt(Temperature.ofCelsius(60.0));
        }
    }

    private static void supply(Pump pump, FuelLine line, String text) {
        FuelSupply supply = new FuelSupply(
                pump,
                line,
                new Regulator(Regulator.Layout.RETURN, Pressure.ofPsi(43.5), false),
                FUEL,
                Length.ofMeters(0.5),
                Pressure.ofPascals(0.0),
                Voltage.ofVolts(13.0),
                Optional.of(Wire.ofGauge(Length.ofMeters(5.0), 12)));
        supply.capacity()
                .value()
                .ifPresent(point -> assertThat(point.flow().si()).as(text).isNotNegative());
        supply.at(VolumeFlow.ofLitersPerHour(150.0));
        supply.pumpAlone();
    }

    private static String text(Random random) {
        String start = random.nextInt(8) == 0 ? "" : SEEDS[random.nextInt(SEEDS.length)];
        return ChangedText.byPieces(start, random, 5, PIECES);
    }
}
