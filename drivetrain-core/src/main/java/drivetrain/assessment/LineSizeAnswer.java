package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.FuelParts;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.fuel.FuelCautions;
import drivetrain.fuel.FuelHouse;
import drivetrain.fuel.FuelSizing;
import drivetrain.fuel.PipeFlow;
import drivetrain.fuel.Regulator;
import drivetrain.fuel.SupplyPoint;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Speed;
import drivetrain.quantity.VolumeFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How wide a fuel line has to be.
 *
 * @param flow the flow that it carries
 * @param ofPump true if that is the whole flow of the pump, as in a return system
 * @param length the length of the line
 * @param mostSpeed how fast the fuel may flow in a pressure line
 * @param mostSuctionSpeed how fast it may flow in a suction line
 * @param feed the bores tried for the feed line
 * @param suction the bores tried for a line ahead of the pump
 * @param speedSource who set the speed in the pressure line
 * @param assumptions what the answer rests on
 */
public record LineSizeAnswer(
        VolumeFlow flow,
        boolean ofPump,
        Length length,
        Speed mostSpeed,
        Speed mostSuctionSpeed,
        List<FuelSizing.Bore> feed,
        List<FuelSizing.Bore> suction,
        Source speedSource,
        List<Assumption> assumptions)
        implements Answer {

    /** Copies the lists. */
    public LineSizeAnswer {
        feed = List.copyOf(feed);
        suction = List.copyOf(suction);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @param asked the length of the line; empty for that of the feed line
     * @return the answer, or what is missing and what to type
     */
    public static Outcome<LineSizeAnswer> of(Combination combination, Optional<Length> asked) {
        FuelParts parts = combination.fuelParts();
        Outcome<Length> length = Outcome.of(
                asked.or(() -> parts.feedLine().map(part -> part.item().length())),
                "no feed line is chosen; name a length, such as size line 5 m");
        return SupplyGround.of(combination).then(ground -> length.map(known -> answer(parts, ground, known)));
    }

    private static LineSizeAnswer answer(FuelParts parts, SupplyGround ground, Length length) {
        FuelHouse house = ground.house();
        boolean returns = ground.regulator()
                .value()
                .filter(regulator -> regulator.layout() == Regulator.Layout.RETURN)
                .isPresent();
        Optional<VolumeFlow> pumped = ground.voltage()
                .then(voltage -> ground.supply(parts, ground.system().voltage().orElse(voltage)))
                .then(supply -> supply.capacity().map(SupplyPoint::flow))
                .value()
                .filter(flow -> flow.si() > 0.0);
        boolean ofPump = returns && pumped.isPresent();
        VolumeFlow flow =
                ofPump ? pumped.orElseThrow() : ground.peakDemand().volume().times(1.0 + ground.margin());
        List<Assumption> assumptions = new ArrayList<>(ground.without("injector duty"));
        assumptions.addAll(ground.fuel().fuel().assumptions());
        assumptions.add(speed("feed line", house.speed(false), house.source(FuelHouse.Rule.FEED_SPEED)));
        assumptions.add(Assumption.of(
                "loss in the feed line",
                "the feed line may cost " + house.feedLoss().format(Pressure.PSI, 1) + " over its length",
                house.source(FuelHouse.Rule.FEED_LOSS)));
        assumptions.add(speed("line ahead of the pump", house.speed(true), house.source(FuelHouse.Rule.SUCTION_SPEED)));
        return new LineSizeAnswer(
                flow,
                ofPump,
                length,
                house.speed(false),
                house.speed(true),
                FuelSizing.bores(flow, length, ground.fuel(), false, house),
                FuelSizing.bores(flow, length, ground.fuel(), true, house),
                house.source(FuelHouse.Rule.FEED_SPEED),
                assumptions.stream().distinct().toList());
    }

    private static Assumption speed(String where, Speed most, Source source) {
        return Assumption.of(
                "speed in the " + where,
                "the fuel may flow at " + most.format(Speed.METER_PER_SECOND, 1) + " in the " + where,
                source);
    }

    /**
     * Returns the narrowest bore that is wide enough.
     *
     * @param bores the bores tried
     * @return the bore; empty if none is
     */
    public static Optional<FuelSizing.Bore> narrowest(List<FuelSizing.Bore> bores) {
        return bores.stream()
                .filter(FuelSizing.Bore::wideEnough)
                .min((one, other) ->
                        one.conduit().bore().compareTo(other.conduit().bore()));
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
        Working.Builder working = Working.of("bore of a fuel line")
                .input(
                        "flow in the line",
                        "Q",
                        Figure.of(flow, Display.VOLUME_FLOW),
                        ofPump ? "pump" : "demand and margin")
                .input("length", "l", Figure.of(length, Display.DIMENSION), "given or feed line");
        for (FuelSizing.Bore bore : feed) {
            working.step(
                            "speed in a " + bore.conduit().name(),
                            "v = 4 Q / (pi d2)",
                            Figure.of(bore.speed(), Display.FLOW_SPEED))
                    .step(
                            "loss in a " + bore.conduit().name(),
                            "f (l/d) rho v2/2",
                            Figure.of(bore.loss(), Display.GAUGE_PRESSURE));
        }
        return working.source(PipeFlow.SOURCE)
                .source(FuelSizing.boreSource())
                .source(speedSource)
                .build();
    }
}
