package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.FuelParts;
import drivetrain.combination.Part;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Verdict;
import drivetrain.finding.Working;
import drivetrain.fuel.FuelCautions;
import drivetrain.fuel.FuelChecks;
import drivetrain.fuel.FuelDemand;
import drivetrain.fuel.FuelLine;
import drivetrain.fuel.FuelSupply;
import drivetrain.fuel.Pump;
import drivetrain.fuel.Regulator;
import drivetrain.fuel.SupplyPoint;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.VolumeFlow;
import java.util.ArrayList;
import java.util.List;

/**
 * How much a pump has to flow against how much pressure, and which pumps on the shelf do.
 *
 * @param demand what the engine burns at its greatest power
 * @param margin the flow to spare
 * @param wanted the flow that the pump should have
 * @param added the pressure that it has to add at that flow
 * @param voltage the voltage of the supply at which it has to do so
 * @param rows the pumps on the shelf
 * @param assumptions what the answer rests on
 */
public record PumpSizeAnswer(
        FuelDemand demand,
        double margin,
        VolumeFlow wanted,
        Pressure added,
        Voltage voltage,
        List<Row> rows,
        List<Assumption> assumptions)
        implements Answer {

    /**
     * One pump in this supply.
     *
     * @param name its name
     * @param delivered what it delivers through these lines, or why that is not known
     * @param verdict whether that is enough
     */
    public record Row(String name, Outcome<VolumeFlow> delivered, Verdict verdict) {}

    /** Copies the lists. */
    public PumpSizeAnswer {
        rows = List.copyOf(rows);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @param shelf the pumps to try
     * @return the answer, or what is missing and what to type
     */
    public static Outcome<PumpSizeAnswer> of(Combination combination, List<Part<Pump>> shelf) {
        FuelParts parts = combination.fuelParts();
        return SupplyGround.of(combination)
                .then(ground -> ground.voltage()
                        .then(voltage -> parts.needFeedLine()
                                .then(line -> ground.regulator()
                                        .map(regulator -> answer(ground, voltage, line, regulator, shelf)))));
    }

    private static PumpSizeAnswer answer(
            SupplyGround ground, Voltage voltage, FuelLine line, Regulator regulator, List<Part<Pump>> shelf) {
        FuelDemand demand = ground.peakDemand();
        VolumeFlow wanted = demand.volume().times(1.0 + ground.margin());
        Length lift = ground.system().lift().orElse(Length.ofMeters(0.0));
        Pressure added = FuelSupply.needed(line, regulator, ground.fuel(), lift, ground.boost(), wanted);
        List<Row> rows = new ArrayList<>();
        for (Part<Pump> part : shelf) {
            Outcome<VolumeFlow> delivered = new FuelSupply(
                            part.item(),
                            line,
                            regulator,
                            ground.fuel(),
                            lift,
                            ground.boost(),
                            voltage,
                            ground.system().wire())
                    .capacity()
                    .map(SupplyPoint::flow);
            Finding finding =
                    FuelChecks.supply(voltage, delivered, demand.volume(), ground.margin(), ground.marginSource());
            rows.add(new Row(part.name(), delivered, finding.verdict()));
        }
        List<Assumption> assumptions = new ArrayList<>(ground.withLift().stream()
                .filter(assumption -> !assumption.subject().equals("injector duty"))
                .toList());
        assumptions.addAll(ground.fuel().fuel().assumptions());
        assumptions.addAll(line.assumptions(wanted, ground.fuel()));
        return new PumpSizeAnswer(
                demand,
                ground.margin(),
                wanted,
                added,
                voltage,
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
        return Working.of("flow and pressure that the pump needs")
                .from(demand.working())
                .input("margin", "s", Figure.percent(margin, 0), "fuel system or house limit")
                .step("flow of the pump", "Q_p = Q (1 + s)", Figure.of(wanted, Display.VOLUME_FLOW))
                .step(
                        "pressure that the pump adds",
                        "regulator + losses at Q_p + lift",
                        Figure.of(added, Display.GAUGE_PRESSURE))
                .build();
    }
}
