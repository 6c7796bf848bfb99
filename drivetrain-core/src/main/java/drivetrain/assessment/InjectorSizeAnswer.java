package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.FuelParts;
import drivetrain.combination.Part;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.fuel.FuelCautions;
import drivetrain.fuel.FuelDemand;
import drivetrain.fuel.FuelSizing;
import drivetrain.fuel.Injector;
import drivetrain.fuel.InjectorUse;
import drivetrain.fuel.Injectors;
import drivetrain.fuel.Regulator;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.MassFlow;
import drivetrain.quantity.Pressure;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * How much each injector has to flow, and which injectors on the shelf do.
 *
 * @param demand what the engine burns at its greatest power
 * @param number how many injectors share it
 * @param duty how long they may be open
 * @param difference the pressure in the rail above that in the manifold
 * @param each what each has to flow there when held open
 * @param ratedPressure the pressure at which makers name the flow
 * @param rated what a maker would name at that pressure with the usual test fluid
 * @param rows the injectors on the shelf
 * @param assumptions what the answer rests on
 */
public record InjectorSizeAnswer(
        FuelDemand demand,
        int number,
        double duty,
        Pressure difference,
        MassFlow each,
        Pressure ratedPressure,
        MassFlow rated,
        List<Row> rows,
        List<Assumption> assumptions)
        implements Answer {

    /** The pressure at which most makers name the flow of an injector, 3 bar; common practice. */
    private static final Pressure USUAL_RATING = Pressure.ofBar(3.0);

    private static final Assumption RATING = Assumption.of(
            "rating of injectors",
            "makers name the flow at 3 bar (43.5 psi) and with a fluid of 720 kg/m3",
            Source.commonPractice("rating pressure of port injectors"));

    /**
     * One injector in this engine.
     *
     * @param name its name
     * @param duty the share of the time that it would be open
     * @param fits true if that is within the limit
     */
    public record Row(String name, double duty, boolean fits) {}

    /** Copies the lists. */
    public InjectorSizeAnswer {
        rows = List.copyOf(rows);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @param asked how many injectors; empty for as many as the order has
     * @param shelf the injectors to try
     * @return the answer, or what is missing and what to type
     */
    public static Outcome<InjectorSizeAnswer> of(
            Combination combination, OptionalInt asked, List<Part<Injectors>> shelf) {
        FuelParts parts = combination.fuelParts();
        OptionalInt number = asked.isPresent()
                ? asked
                : parts.injectors().map(part -> part.item().number()).orElse(OptionalInt.empty());
        if (number.isEmpty()) {
            return Outcome.notEvaluated("the number of injectors is not known; type it, such as size injectors 8");
        }
        return SupplyGround.of(combination)
                .then(ground -> ground.regulator()
                        .then(regulator -> difference(ground, parts, regulator)
                                .map(difference -> answer(ground, number.getAsInt(), difference, shelf))));
    }

    /** The rail above the manifold: as the supply holds it where it is known, else as the regulator is set. */
    private static Outcome<Pressure> difference(SupplyGround ground, FuelParts parts, Regulator regulator) {
        Pressure set = regulator.held(ground.boost()).minus(ground.boost());
        Outcome<Pressure> railed = ground.voltage()
                .then(voltage -> ground.supply(parts, voltage))
                .then(supply -> supply.at(ground.peakDemand().volume()))
                .map(point -> point.rail().minus(ground.boost()));
        Pressure difference = railed.value().orElse(set);
        return difference.si() > 0.0
                ? Outcome.of(difference)
                : Outcome.notEvaluated(
                        "no pressure is left in the rail above the manifold's; the supply does not keep up");
    }

    private static InjectorSizeAnswer answer(
            SupplyGround ground, int number, Pressure difference, List<Part<Injectors>> shelf) {
        FuelDemand demand = ground.peakDemand();
        MassFlow each = FuelSizing.injector(demand.mass(), number, ground.duty());
        MassFlow rated =
                FuelSizing.rated(each, difference, ground.fuel().density(), USUAL_RATING, Injector.usualTestDensity());
        List<Row> rows = new ArrayList<>();
        for (Part<Injectors> part : shelf) {
            Injectors fitted = new Injectors(
                    part.name(), OptionalInt.of(number), part.item().each());
            double share = new InjectorUse(
                            fitted, demand.mass(), difference, ground.fuel().density())
                    .duty()
                    .orThrow();
            rows.add(new Row(part.name(), share, share <= ground.duty()));
        }
        List<Assumption> assumptions = new ArrayList<>(ground.without("margin"));
        assumptions.addAll(ground.fuel().fuel().assumptions());
        assumptions.add(RATING);
        return new InjectorSizeAnswer(
                demand,
                number,
                ground.duty(),
                difference,
                each,
                USUAL_RATING,
                rated,
                rows,
                assumptions.stream().distinct().toList());
    }

    @Override
    public List<Finding> findings() {
        return List.of();
    }

    @Override
    public List<Caution> cautions() {
        return FuelCautions.all();
    }

    @Override
    public Working working() {
        return Working.of("flow that each injector needs")
                .from(demand.working())
                .input("number of injectors", "N", Figure.plain(number, 0), "given")
                .input(
                        "share of the time that they may be open",
                        "D",
                        Figure.percent(duty, 0),
                        "fuel system or house limit")
                .input(
                        "pressure in the rail above the manifold",
                        "p_d",
                        Figure.of(difference, Display.GAUGE_PRESSURE),
                        "supply")
                .step("flow of each, held open", "m_1 = m / (N D)", Figure.of(each, Display.MASS_FLOW))
                .step(
                        "the same at the rating",
                        "m_r = m_1 sqrt(p_r rho_r / (p_d rho))",
                        Figure.of(rated, Display.MASS_FLOW))
                .build();
    }
}
