package drivetrain.fuel;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Density;
import drivetrain.quantity.KinematicViscosity;
import drivetrain.quantity.Pressure;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the literal text of a fuel; {@link Fuel#parse} says what it may hold. */
final class FuelText {

    private static final String ALLOWED =
            "gasoline, E10, E85 or diesel, then measured values such as 745 kg/m3, ethanol 70 %, viscosity 0.6 mm2/s, reid 9 psi";
    static final List<String> KEYWORDS = List.of("ethanol", "viscosity", "reid");

    private static final class Table {
        static final List<TableRow> ROWS = ReferenceTable.load("fuel/fuels.csv").rows();
    }

    private final FuelWords words;
    private Optional<Density> density = Optional.empty();
    private Optional<Double> ethanol = Optional.empty();
    private Optional<KinematicViscosity> viscosity = Optional.empty();
    private Optional<Pressure> reid = Optional.empty();

    private FuelText(String text) {
        words = FuelWords.of("fuel", text, ALLOWED, KEYWORDS);
    }

    static Fuel read(String text) {
        FuelText reader = new FuelText(text);
        TableRow row = reader.base(text);
        while (reader.words.nextClause()) {
            reader.readOne();
        }
        return reader.words.located(0, () -> reader.fuel(text.strip(), row));
    }

    private TableRow base(String text) {
        int start = words.position();
        String base = words.word("fuel");
        List<String> names = Table.ROWS.stream().map(row -> row.text("fuel")).toList();
        return Table.ROWS.stream()
                .filter(row -> row.text("fuel").equalsIgnoreCase(base))
                .findFirst()
                .orElseThrow(() -> Refusal.of("fuel", text, "\"" + base + "\" is not a fuel that is known")
                        .allowing(ALLOWED)
                        .at(start)
                        .suggesting(NearNames.of(base, names))
                        .asException());
    }

    private void readOne() {
        int start = words.position();
        if (words.takes("ethanol")) {
            ethanol = words.once(ethanol, words.percent("share of ethanol", 0.0, 100.0), start, "the ethanol");
        } else if (words.takes("viscosity")) {
            KinematicViscosity value = words.take(
                    KinematicViscosity.KIND, "kinematic viscosity", Fuel.LEAST_VISCOSITY, Fuel.MOST_VISCOSITY);
            viscosity = words.once(viscosity, value, start, "the viscosity");
        } else if (words.takes("reid")) {
            Pressure value = words.take(Pressure.KIND, "Reid vapor pressure", Fuel.LEAST_REID, Fuel.MOST_REID);
            reid = words.once(reid, value, start, "the Reid vapor pressure");
        } else if (words.atNumber()) {
            Density value = words.take(Density.KIND, "density", Fuel.LEAST_DENSITY, Fuel.MOST_DENSITY);
            density = words.once(density, value, start, "the density");
        } else {
            throw words.notUnderstood();
        }
    }

    private Fuel fuel(String name, TableRow row) {
        List<Assumption> assumptions = new ArrayList<>();
        String fuel = row.text("fuel");
        double share = ethanol.orElse(row.number("ethanolMost") / 100.0);
        if (ethanol.isEmpty() && row.number("ethanolMost") > row.number("ethanolLeast")) {
            assumptions.add(Assumption.flagged(
                    "ethanol in the fuel",
                    fuel + " may hold " + row.text("ethanolLeast") + " to " + row.text("ethanolMost")
                            + " % ethanol; reckoned with the most, which needs the most fuel",
                    row.source()));
        }
        Density made = density.orElseGet(() -> middle(row));
        if (density.isEmpty()) {
            assumptions.add(Assumption.flagged(
                    "density of the fuel",
                    fuel + " may have " + row.text("densityLeast") + " to " + row.text("densityMost")
                            + " kg/m3 at 15 degC; reckoned with "
                            + DecimalText.fixed(made.toKilogramsPerCubicMeter(), 1),
                    row.source()));
        }
        if (viscosity.isEmpty()) {
            assumptions.add(Assumption.flagged(
                    "viscosity of the fuel",
                    "the viscosity is that of " + fuel + " at 20 degC, " + row.text("viscosity")
                            + " mm2/s, whatever the temperature; cold fuel is thicker",
                    row.source()));
        }
        Optional<Pressure> evaporation = reid.or(() -> packedReid(row));
        if (reid.isEmpty() && evaporation.isPresent()) {
            assumptions.add(Assumption.flagged(
                    "vapor pressure of the fuel",
                    "the Reid vapor pressure is taken as " + row.text("reid")
                            + " psi, a summer fuel; winter fuel boils earlier",
                    Source.commonPractice("a common summer limit of the Reid vapor pressure")));
        }
        FuelFamily family =
                row.text("family").equals(FuelFamily.DIESEL.word()) ? FuelFamily.DIESEL : FuelFamily.GASOLINE;
        return new Fuel(
                name,
                family,
                share,
                made,
                viscosity.orElseGet(() -> KinematicViscosity.ofSquareMillimetersPerSecond(row.number("viscosity"))),
                evaporation,
                assumptions);
    }

    private static Density middle(TableRow row) {
        return Density.ofKilogramsPerCubicMeter((row.number("densityLeast") + row.number("densityMost")) / 2.0);
    }

    private static Optional<Pressure> packedReid(TableRow row) {
        OptionalDouble packed = DecimalText.parse(row.text("reid"));
        return packed.isPresent() ? Optional.of(Pressure.ofPsi(packed.getAsDouble())) : Optional.empty();
    }
}
