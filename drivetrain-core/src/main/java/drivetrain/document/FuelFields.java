package drivetrain.document;

import drivetrain.combination.PartKind;
import drivetrain.fuel.Conduit;
import drivetrain.fuel.Fuel;
import drivetrain.fuel.FuelFamily;
import drivetrain.fuel.FuelFilter;
import drivetrain.fuel.FuelLine;
import drivetrain.fuel.FuelSystem;
import drivetrain.fuel.Injectors;
import drivetrain.fuel.Tank;
import drivetrain.quantity.Density;
import drivetrain.quantity.KinematicViscosity;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Volume;
import drivetrain.quantity.VolumeFlow;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads fuels and the parts of a fuel supply other than pumps. */
final class FuelFields {

    static final PartReader<Fuel> FUEL = PartReader.of(
            PartKind.FUEL, List.of("family", "ethanol", "density", "viscosity", "reidVaporPressure"), FuelFields::fuel);

    static final PartReader<Injectors> INJECTORS =
            PartReader.of(PartKind.INJECTORS, List.of("flow", "pressure", "testDensity"), FuelFields::injectors);

    static final PartReader<Conduit> HOSE =
            PartReader.of(PartKind.FUEL_HOSE, List.of("material", "bore", "workingPressure"), FuelFields::hose);

    static final PartReader<FuelFilter> FILTER =
            PartReader.of(PartKind.FUEL_FILTER, List.of("loss", "flow"), FuelFields::filter);

    static final PartReader<FuelLine> LINE = PartReader.of(PartKind.FUEL_LINE, List.of("pieces"), FuelFields::line);

    static final PartReader<FuelSystem> SYSTEM =
            PartReader.of(PartKind.FUEL_SYSTEM, List.of("setup"), FuelFields::system);

    static final PartReader<Tank> TANK =
            PartReader.of(PartKind.TANK, List.of("volume", "usable", "canister"), FuelFields::tank);

    private FuelFields() {}

    private static Fuel fuel(String name, Fields fields, CurveFiles files) {
        return new Fuel(
                name,
                fields.required("family", value -> value.choice(FuelFamily.class, FuelFamily::word)),
                fields.optional("ethanol", Value::number).orElse(0.0),
                fields.required("density", value -> value.quantity(Density.KIND)),
                fields.required("viscosity", value -> value.quantity(KinematicViscosity.KIND)),
                fields.optional("reidVaporPressure", value -> value.quantity(Pressure.KIND)),
                List.of());
    }

    /** The flow may be by mass or by volume, so that the fields are read as the text that they would be typed as. */
    private static Injectors injectors(String name, Fields fields, CurveFiles files) {
        String flow = fields.required("flow", Value::line);
        String pressure = fields.required("pressure", Value::line);
        String tested = fields.optional("testDensity", Value::line)
                .map(density -> ", tested at " + density)
                .orElse("");
        Injectors typed = Injectors.parse(flow + " at " + pressure + tested, other -> Optional.empty());
        return new Injectors(name, typed.number(), typed.each());
    }

    private static Conduit hose(String name, Fields fields, CurveFiles files) {
        return new Conduit(
                name,
                fields.required("material", value -> value.choice(Conduit.Material.class, Conduit.Material::word)),
                fields.required("bore", value -> value.quantity(Length.KIND)),
                fields.optional("workingPressure", value -> value.quantity(Pressure.KIND)));
    }

    private static FuelFilter filter(String name, Fields fields, CurveFiles files) {
        return new FuelFilter(
                name,
                fields.required("loss", value -> value.quantity(Pressure.KIND)),
                fields.required("flow", value -> value.quantity(VolumeFlow.KIND)));
    }

    private static FuelLine line(String name, Fields fields, CurveFiles files) {
        FuelLine typed = fields.required(
                "pieces", value -> value.literal(text -> FuelLine.parse(text, FuelLine.Shelves.none())));
        return new FuelLine(name, typed.suction(), typed.feed(), typed.pumpPlaced());
    }

    private static FuelSystem system(String name, Fields fields, CurveFiles files) {
        return fields.required("setup", value -> value.literal(FuelSystem::parse));
    }

    private static Tank tank(String name, Fields fields, CurveFiles files) {
        return new Tank(
                name,
                fields.required("volume", value -> value.quantity(Volume.KIND)),
                fields.optional("usable", value -> value.quantity(Volume.KIND)),
                fields.optional("canister", value -> value.quantity(Mass.KIND)),
                OptionalDouble.empty(),
                Optional.empty());
    }
}
