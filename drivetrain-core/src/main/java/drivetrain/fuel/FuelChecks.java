package drivetrain.fuel;

import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.VolumeFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The checks of a fuel supply against its demand and against the house limits. */
public final class FuelChecks {

    private static final String SUPPLY = "pump flow against the engine's demand";
    private static final String DUTY = "injector duty";
    private static final String SUCTION = "pressure left before the fuel boils at the pump";
    private static final Source CAPACITY_RULE =
            Source.derived("a canister holds its working capacity and no more until it is purged");
    private static final Source PRESSURE_RULE = Source.given("the working pressure in the hose's data");

    private FuelChecks() {}

    /**
     * Checks the pump's flow through its lines against the demand and the margin.
     *
     * @param voltage the voltage of the supply, for the words
     * @param delivered what the supply delivers, or why that is not known
     * @param demand what the engine burns
     * @param margin the flow to spare, as a fraction
     * @param rule where the margin comes from
     * @return the finding
     */
    public static Finding supply(
            Voltage voltage, Outcome<VolumeFlow> delivered, VolumeFlow demand, double margin, Source rule) {
        String checked = SUPPLY + " at " + voltage.format(Voltage.VOLT, 1);
        return delivered.fold(
                flow -> {
                    VolumeFlow wanted = demand.times(1.0 + margin);
                    Verdict verdict = flow.isLessThan(demand)
                            ? Verdict.EXCEEDED
                            : flow.isLessThan(wanted) ? Verdict.MARGINAL : Verdict.MET;
                    return Finding.of(
                            checked,
                            Figure.of(flow, Display.VOLUME_FLOW),
                            Figure.of(wanted, Display.VOLUME_FLOW),
                            Figure.percent(flow.ratioTo(wanted) - 1.0, 0),
                            verdict,
                            supplyWords(verdict),
                            rule);
                },
                reason -> Finding.notEvaluated(checked, reason, rule));
    }

    private static String supplyWords(Verdict verdict) {
        return switch (verdict) {
            case EXCEEDED -> "the pump cannot keep up: the engine runs lean at full power, which can destroy it";
            case MARGINAL -> "the pump keeps up, but with less to spare than the margin asks for";
            default -> "the pump keeps up with flow to spare";
        };
    }

    /**
     * Checks how long the injectors stand open.
     *
     * @param duty the share of the time, or why it is not known
     * @param most how long they may
     * @param rule where the limit comes from
     * @return the finding
     */
    public static Finding duty(Outcome<Double> duty, double most, Source rule) {
        return duty.fold(
                share -> {
                    Verdict verdict = share > 1.0 ? Verdict.EXCEEDED : share > most ? Verdict.MARGINAL : Verdict.MET;
                    String statement = verdict == Verdict.EXCEEDED
                            ? "the injectors cannot pass the fuel even held open: the engine runs lean at full power"
                            : verdict == Verdict.MARGINAL
                                    ? "the injectors are open for longer than they can be controlled well"
                                    : "the injectors have time to close";
                    return Finding.of(
                            DUTY,
                            Figure.percent(share, 0),
                            Figure.percent(most, 0),
                            Figure.percent(most - share, 0),
                            verdict,
                            statement,
                            rule);
                },
                reason -> Finding.notEvaluated(DUTY, reason, rule));
    }

    /**
     * Checks what the feed line costs, what its hoses are made for, and what the wires cost.
     *
     * @param supply the supply
     * @param point the supply at work
     * @param house the limits of the shop
     * @return the findings
     */
    public static List<Finding> lines(FuelSupply supply, SupplyPoint point, FuelHouse house) {
        List<Finding> findings = new ArrayList<>();
        Pressure most = house.feedLoss();
        boolean kept = !point.feedLoss().isGreaterThan(most);
        findings.add(Finding.of(
                "loss in the feed line",
                Figure.of(point.feedLoss(), Display.GAUGE_PRESSURE),
                Figure.of(most, Display.GAUGE_PRESSURE),
                Figure.of(most.minus(point.feedLoss()), Display.GAUGE_PRESSURE),
                kept ? Verdict.MET : Verdict.MARGINAL,
                kept
                        ? "the feed line costs little"
                        : "the feed line costs more than it should; a wider bore spares the pump",
                house.source(FuelHouse.Rule.FEED_LOSS)));
        workingPressure(supply, point).ifPresent(findings::add);
        if (supply.wire().isPresent() && point.current().isPresent()) {
            Voltage wires = house.wireLoss();
            Voltage lost = supply.voltage().minus(point.voltage());
            boolean thick = !lost.isGreaterThan(wires);
            findings.add(Finding.of(
                    "voltage lost in the pump's wires",
                    Figure.of(lost, Display.VOLTAGE),
                    Figure.of(wires, Display.VOLTAGE),
                    Figure.of(wires.minus(lost), Display.VOLTAGE),
                    thick ? Verdict.MET : Verdict.MARGINAL,
                    thick
                            ? "the pump's wires are thick enough"
                            : "the pump's wires cost voltage, and with it flow; thicker wires or a relay near the pump help",
                    house.source(FuelHouse.Rule.WIRE_LOSS)));
        }
        return List.copyOf(findings);
    }

    private static Optional<Finding> workingPressure(FuelSupply supply, SupplyPoint point) {
        Optional<Pressure> least = supply.line().feedRuns().stream()
                .flatMap(run -> run.conduit().workingPressure().stream())
                .min(Pressure::compareTo);
        return least.map(allowed -> {
            Pressure inside = point.added().minus(point.suctionLoss());
            boolean kept = !inside.isGreaterThan(allowed);
            return Finding.of(
                    "pressure in the feed line",
                    Figure.of(inside, Display.GAUGE_PRESSURE),
                    Figure.of(allowed, Display.GAUGE_PRESSURE),
                    Figure.of(allowed.minus(inside), Display.GAUGE_PRESSURE),
                    kept ? Verdict.MET : Verdict.EXCEEDED,
                    kept ? "the line is made for the pressure" : "the line is not made for this pressure; it can burst",
                    PRESSURE_RULE);
        });
    }

    /**
     * Checks what the line back to the tank costs while the engine burns next to nothing and the whole pump flow goes back.
     *
     * @param supply the supply
     * @param back the return line
     * @param flow the flow of the pump, or why it is not known
     * @param house the limits of the shop
     * @return the finding
     */
    public static Finding returnLine(FuelSupply supply, FuelLine back, Outcome<VolumeFlow> flow, FuelHouse house) {
        String checked = "loss in the return line at idle";
        Source rule = house.source(FuelHouse.Rule.RETURN_LOSS);
        Pressure most = house.returnLoss();
        if (supply.regulator().layout() == Regulator.Layout.RETURNLESS) {
            return Finding.notEvaluated(checked, "a returnless system sends nothing back", rule);
        }
        return flow.map(all -> back.feedLoss(all, supply.fuel()))
                .fold(
                        loss -> {
                            boolean kept = !loss.isGreaterThan(most);
                            return Finding.of(
                                    checked,
                                    Figure.of(loss, Display.GAUGE_PRESSURE),
                                    Figure.of(most, Display.GAUGE_PRESSURE),
                                    Figure.of(most.minus(loss), Display.GAUGE_PRESSURE),
                                    kept ? Verdict.MET : Verdict.MARGINAL,
                                    kept
                                            ? "the return line lets the regulator work"
                                            : "the return line is narrow: at idle it can lift the rail above the regulator's setting",
                                    rule);
                        },
                        reason -> Finding.notEvaluated(checked, reason, rule));
    }

    /**
     * Checks whether the fuel boils at the pump's inlet.
     *
     * @param suction the suction side, or why it is not looked at
     * @param flow the flow through the pump, or why it is not known
     * @param house the limits of the shop
     * @return the finding
     */
    public static Finding suction(Outcome<Suction> suction, Outcome<VolumeFlow> flow, FuelHouse house) {
        Source rule = house.source(FuelHouse.Rule.BOILING);
        Pressure least = house.boiling();
        return suction.then(side -> flow.map(side::margin))
                .fold(
                        margin -> {
                            Verdict verdict = margin.si() <= 0.0
                                    ? Verdict.EXCEEDED
                                    : margin.isLessThan(least) ? Verdict.MARGINAL : Verdict.MET;
                            return Finding.of(
                                    SUCTION,
                                    Figure.of(margin, Display.GAUGE_PRESSURE),
                                    Figure.of(least, Display.GAUGE_PRESSURE),
                                    Figure.of(margin.minus(least), Display.GAUGE_PRESSURE),
                                    verdict,
                                    suctionWords(verdict),
                                    rule);
                        },
                        reason -> Finding.notEvaluated(SUCTION, reason, rule));
    }

    private static String suctionWords(Verdict verdict) {
        return switch (verdict) {
            case EXCEEDED ->
                "the fuel boils at the pump's inlet, whatever the pump: a pump in the tank, a wider and cooler suction line, or a fuel of lower vapor pressure helps";
            case MARGINAL -> "the fuel is close to boiling at the pump's inlet; heat and altitude can stall the pump";
            default -> "the fuel stays liquid at the pump's inlet";
        };
    }

    /**
     * Checks the vapor of a day against the canister.
     *
     * @param vapor the vapor of a day
     * @param capacity the canister's working capacity
     * @return the finding
     */
    public static Finding canister(Mass vapor, Mass capacity) {
        double days = capacity.ratioTo(vapor);
        Verdict verdict = days < 1.0 ? Verdict.EXCEEDED : days < 2.0 ? Verdict.MARGINAL : Verdict.MET;
        String statement = switch (verdict) {
            case EXCEEDED -> "the canister does not hold the vapor of one such day";
            case MARGINAL -> "the canister holds the vapor of one such day, not of two";
            default -> "the canister holds the vapor of two such days and more";
        };
        return Finding.of(
                "vapor of a day against the canister",
                Figure.of(vapor, Display.VAPOR_MASS),
                Figure.of(capacity, Display.VAPOR_MASS),
                Figure.of(capacity.minus(vapor), Display.VAPOR_MASS),
                verdict,
                statement,
                CAPACITY_RULE);
    }
}
