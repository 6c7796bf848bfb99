package drivetrain.fuel;

import drivetrain.finding.Outcome;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.VolumeFlow;
import java.util.ArrayList;
import java.util.List;

/**
 * The curve of a pump at the voltage that its wires leave, and that of the lines, regulator and lift, over the flows that the pump was measured for.
 *
 * @param pump what the pump adds
 * @param system what the lines, the regulator and the lift ask for
 */
public record SupplyCurves(List<Point> pump, List<Point> system) {

    private static final int POINTS = 24;

    /**
     * One point.
     *
     * @param flow the flow
     * @param pressure the pressure
     */
    public record Point(VolumeFlow flow, Pressure pressure) {}

    /** Copies the lists. */
    public SupplyCurves {
        pump = List.copyOf(pump);
        system = List.copyOf(system);
    }

    /**
     * Draws both curves.
     *
     * @param supply the supply
     * @return the curves; not evaluated at a voltage too far from the measured ones
     */
    public static Outcome<SupplyCurves> of(FuelSupply supply) {
        return supply.pumpPoints(POINTS).map(points -> {
            VolumeFlow most = points.get(0).flow();
            List<Point> system = new ArrayList<>();
            for (int i = 0; i <= POINTS; i++) {
                VolumeFlow flow = most.times((double) i / POINTS);
                system.add(new Point(flow, supply.needed(flow)));
            }
            return new SupplyCurves(points, system);
        });
    }
}
