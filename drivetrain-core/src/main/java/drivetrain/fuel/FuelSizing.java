package drivetrain.fuel;

import drivetrain.finding.Source;
import drivetrain.quantity.Density;
import drivetrain.quantity.Length;
import drivetrain.quantity.MassFlow;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Speed;
import drivetrain.quantity.VolumeFlow;
import drivetrain.refusal.Refusal;
import drivetrain.table.ReferenceTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a supply has to be for a demand: injectors and lines. */
public final class FuelSizing {

    private static final class Table {
        static final ReferenceTable BORES = ReferenceTable.load("fuel/bores.csv");
    }

    private FuelSizing() {}

    /**
     * A bore tried for a line.
     *
     * @param conduit the tube or hose
     * @param speed how fast the fuel flows in it
     * @param loss what a straight length of it costs
     * @param wideEnough true if the speed and, in a feed line, the loss are within the house limits
     */
    public record Bore(Conduit conduit, Speed speed, Pressure loss, boolean wideEnough) {}

    /**
     * Returns how much one injector has to flow when held open.
     *
     * @param demand the fuel that the engine burns
     * @param number how many injectors share it, 1 or more
     * @param duty the share of the time that they may be open, above 0 to 1
     * @return the flow of one, at the pressure and with the fuel of the vehicle
     * @throws drivetrain.refusal.RefusedException if the number or the duty is out of range
     */
    public static MassFlow injector(MassFlow demand, int number, double duty) {
        if (number < 1 || !(duty > 0.0 && duty <= 1.0)) {
            throw Refusal.of("injectors", number + " at a duty of " + duty, "cannot be sized")
                    .allowing("1 injector or more, open for more than 0 and at most all of the time")
                    .asException();
        }
        return demand.dividedBy(number * duty);
    }

    /**
     * Converts the flow of an injector to the pressure and the fluid that its maker names.
     *
     * @param flow the flow by mass
     * @param difference the pressure difference of that flow
     * @param density the density of that fuel
     * @param rated the pressure difference of the maker
     * @param testDensity the density of the maker's fluid
     * @return the flow by mass that the maker would name
     */
    public static MassFlow rated(
            MassFlow flow, Pressure difference, Density density, Pressure rated, Density testDensity) {
        return flow.times(Math.sqrt(rated.ratioTo(difference) * testDensity.ratioTo(density)));
    }

    /**
     * Tries every bore of {@code reference-tables/fuel/bores.csv}.
     *
     * @param flow the flow, greater than zero
     * @param length the length of the line
     * @param fuel the fuel
     * @param suction true for a line ahead of the pump, which must be slower
     * @param house the limits of the shop
     * @return the bores as the table has them
     * @throws drivetrain.refusal.RefusedException if the flow is not greater than zero
     */
    public static List<Bore> bores(VolumeFlow flow, Length length, FlowingFuel fuel, boolean suction, FuelHouse house) {
        flow.requirePositive("flow in the line");
        Speed fastest = house.speed(suction);
        Pressure most = house.feedLoss();
        List<Bore> bores = new ArrayList<>();
        Table.BORES.rows().forEach(row -> {
            Conduit.Material material = row.text("kind").equals(Conduit.Material.TUBE.word())
                    ? Conduit.Material.TUBE
                    : Conduit.Material.HOSE;
            Conduit conduit =
                    new Conduit(row.text("line"), material, Length.ofMillimeters(row.number("bore")), Optional.empty());
            Speed speed = PipeFlow.speed(flow, conduit.bore());
            Pressure loss = PipeFlow.friction(
                    flow, conduit.bore(), length, conduit.roughness(), fuel.density(), fuel.viscosity());
            boolean cheap = suction || !loss.isGreaterThan(most);
            bores.add(new Bore(conduit, speed, loss, cheap && !speed.isGreaterThan(fastest)));
        });
        return List.copyOf(bores);
    }

    /**
     * Returns where the bores come from.
     *
     * @return the source
     */
    public static Source boreSource() {
        return Table.BORES.source();
    }
}
