package drivetrain.fuel;

import drivetrain.finding.Outcome;
import drivetrain.quantity.MassFlow;
import drivetrain.quantity.Power;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.SpecificFuelConsumption;
import drivetrain.quantity.VolumeFlow;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * At what engine power each part of a supply runs out, without any margin.
 *
 * @param supply the pump, lines and regulator
 * @param suction the suction side, or why it is not looked at
 * @param injectors the injectors, or why there are none to look at
 * @param duty the share of the time that they may be open
 * @param consumption the engine's consumption
 * @param blower the power that a driven supercharger takes and the consumption does not include
 */
public record SupplyLimits(
        FuelSupply supply,
        Outcome<Suction> suction,
        Outcome<Injectors> injectors,
        double duty,
        SpecificFuelConsumption consumption,
        Power blower) {

    private static final double ACCURACY_FLOW = 1e-12;
    private static final int MOST_EVALUATIONS = 200;

    /**
     * Returns every part with its power.
     *
     * @return the parts
     */
    public List<RunOut> parts() {
        return parts(supply.capacity());
    }

    /**
     * Returns every part with its power, where the capacity of the supply is known already.
     *
     * @param capacity what {@link FuelSupply#capacity} returns
     * @return the parts
     */
    public List<RunOut> parts(Outcome<SupplyPoint> capacity) {
        return List.of(
                new RunOut(RunOut.Part.PUMP_ALONE, supply.pumpAlone().map(this::powerOf)),
                new RunOut(RunOut.Part.PUMP_THROUGH_LINES, capacity.map(point -> powerOf(point.flow()))),
                new RunOut(RunOut.Part.SUCTION, suction.then(Suction::mostFlow).map(this::powerOf)),
                new RunOut(RunOut.Part.INJECTORS, injectorFlow(capacity).map(this::powerOf)));
    }

    /** The power that a flow makes at the crank; none where the supercharger takes it all. */
    private Power powerOf(VolumeFlow flow) {
        MassFlow mass = FuelDemand.massFlow(flow, supply.fuel().density());
        Power crank = FuelDemand.powerOf(mass, consumption).minus(blower);
        return crank.si() > 0.0 ? crank : Power.ofWatts(0.0);
    }

    /** The flow at which the injectors stand open for as long as they may, with the pressure that the rail still has at that flow. */
    private Outcome<VolumeFlow> injectorFlow(Outcome<SupplyPoint> capacity) {
        return injectors.then(fitted -> {
            Pressure held = supply.held().minus(supply.boost());
            return fitted.flowAt(held, supply.fuel().density()).then(open -> {
                VolumeFlow most =
                        FuelDemand.volumeFlow(open.times(duty), supply.fuel().density());
                return capacity.value().isPresent() ? withRail(fitted, most, capacity) : Outcome.of(most);
            });
        });
    }

    private Outcome<VolumeFlow> withRail(Injectors fitted, VolumeFlow most, Outcome<SupplyPoint> capacity) {
        VolumeFlow delivered = capacity.orThrow().flow();
        VolumeFlow end = most.isLessThan(delivered) ? most : delivered;
        Optional<Double> excess = excess(fitted, end.si(), capacity);
        if (excess.isEmpty() || excess.get() >= 0.0) {
            return Outcome.of(most);
        }
        double flow = new BrentSolver(1e-12, ACCURACY_FLOW)
                .solve(MOST_EVALUATIONS, q -> excess(fitted, q, capacity).orElse(0.0), 0.0, end.si());
        return Outcome.of(VolumeFlow.ofCubicMetersPerSecond(flow));
    }

    /** What the injectors could still pass at the pressure of the rail, less the flow. */
    private Optional<Double> excess(Injectors fitted, double flow, Outcome<SupplyPoint> capacity) {
        return supply.at(VolumeFlow.ofCubicMetersPerSecond(flow), capacity)
                .then(point -> fitted.flowAt(
                        point.rail().minus(supply.boost()), supply.fuel().density()))
                .value()
                .map(open ->
                        FuelDemand.volumeFlow(open.times(duty), supply.fuel().density())
                                        .si()
                                - flow);
    }
}
