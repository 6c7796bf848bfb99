package drivetrain.fuel;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Density;
import drivetrain.quantity.MassFlow;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.VolumeFlow;
import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * The injectors of an engine, all alike.
 *
 * @param name the literal text, or the name of one injector in a catalog
 * @param number how many, 1 to 32; empty where only the injector is named
 * @param each one of them
 */
public record Injectors(String name, OptionalInt number, Injector each) {

    private static final int MOST = 32;
    private static final String ALLOWED = "such as 8 x 42 lb/h at 43.5 psi, tested at 0.72 kg/L; or 8 x NAME";
    private static final Source SQUARE_ROOT =
            Source.derived("flow through an orifice: square root of pressure difference times density");

    /**
     * Checks the number.
     *
     * @throws drivetrain.refusal.RefusedException if it is out of range
     */
    public Injectors {
        if (number.isPresent() && (number.getAsInt() < 1 || number.getAsInt() > MOST)) {
            throw Refusal.of("number of injectors", Integer.toString(number.getAsInt()), "is out of range")
                    .allowing("1 to " + MOST)
                    .asException();
        }
    }

    /**
     * Reads injectors from their literal text: {@code 8 x 42 lb/h at 43.5 psi} or {@code 8 x 440 cc/min at 3 bar}, then {@code tested at 0.72 kg/L} where it is known; or {@code 8 x NAME}.
     *
     * @param text the text
     * @param shelf finds one injector by its name
     * @return the injectors, named by the text
     * @throws drivetrain.refusal.RefusedException if the text cannot be read, with the index of the fault
     */
    public static Injectors parse(String text, Function<String, Optional<Injectors>> shelf) {
        FuelWords words = FuelWords.of("injectors", text, ALLOWED, List.of("at", "tested"));
        Optional<Integer> counted = words.count(MOST, "injectors");
        OptionalInt number = counted.isPresent() ? OptionalInt.of(counted.get()) : OptionalInt.empty();
        Optional<Injectors> known = shelf.apply(words.peekClause());
        if (known.isPresent()) {
            words.clauseRest();
            if (words.nextClause()) {
                throw words.notUnderstood();
            }
            return new Injectors(text.strip(), number, known.get().each());
        }
        return new Injectors(text.strip(), number, injector(words, text.strip(), text));
    }

    private static Injector injector(FuelWords words, String name, String text) {
        int start = words.position();
        if (!words.atNumber()) {
            throw Refusal.of("injectors", text, "\"" + words.peekClause() + "\" is not an injector on the shelf")
                    .allowing("a name that \"parts injectors\" lists, or " + ALLOWED)
                    .at(start)
                    .asException();
        }
        Optional<MassFlow> byMass = words.find(MassFlow.KIND)
                .map(flow -> words.requireTyped(
                        MassFlow.KIND, flow, "flow of the injector", Injector.LEAST_FLOW, Injector.MOST_FLOW));
        Optional<VolumeFlow> byVolume = byMass.isPresent()
                ? Optional.empty()
                : Optional.of(words.take(VolumeFlow.KIND, "flow of the injector"));
        if (!words.takes("at")) {
            throw words.refusal("says not at which pressure the injector flows this", words.position());
        }
        Pressure pressure =
                words.take(Pressure.KIND, "pressure of the injector", Injector.LEAST_PRESSURE, PumpPoint.MOST_PRESSURE);
        Optional<Density> tested = Optional.empty();
        while (words.nextClause()) {
            int clause = words.position();
            if (!words.takes("tested")) {
                throw words.notUnderstood();
            }
            words.takes("at");
            Density density =
                    words.take(Density.KIND, "density of the test fluid", Fuel.LEAST_DENSITY, Fuel.MOST_DENSITY);
            tested = words.once(tested, density, clause, "the density of the test fluid");
        }
        Density density = tested.orElseGet(Injector::usualTestDensity);
        boolean given = tested.isPresent();
        return words.located(
                start,
                () -> new Injector(
                        name,
                        byMass.orElseGet(() -> FuelDemand.massFlow(byVolume.orElseThrow(), density)),
                        pressure,
                        density,
                        given));
    }

    /**
     * Returns the flow of all injectors held open.
     *
     * @param difference the pressure in the rail above that in the manifold
     * @param density the density of the fuel
     * @return the flow by mass; not evaluated where their number is not known
     */
    public Outcome<MassFlow> flowAt(Pressure difference, Density density) {
        if (number.isEmpty()) {
            return Outcome.notEvaluated(
                    "the number of the injectors is not given; type it ahead of them, such as injectors 8 x " + name);
        }
        return Outcome.of(each.flowAt(difference, density).times(number.getAsInt()));
    }

    /**
     * Returns what the flow rests on.
     *
     * @return the assumptions
     */
    public List<Assumption> assumptions() {
        String statement = "the injectors were measured with a fluid of "
                + DecimalText.fixed(each.testDensity().toKilogramsPerCubicMeter(), 0) + " kg/m3";
        Assumption law = Assumption.of(
                "injector flow", "the flow follows the square root of pressure difference times density", SQUARE_ROOT);
        Assumption density = each.testDensityGiven()
                ? Assumption.of("injector test fluid", statement, Source.given("the injectors' data"))
                : Assumption.flagged(
                        "injector test fluid",
                        statement + ", which their data does not say",
                        FuelConstant.of("injector-test-density").source());
        return List.of(law, density);
    }
}
