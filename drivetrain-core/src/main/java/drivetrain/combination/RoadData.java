package drivetrain.combination;

import drivetrain.quantity.Area;
import drivetrain.quantity.Length;
import drivetrain.quantity.MomentOfInertia;
import drivetrain.refusal.Refusal;
import drivetrain.road.AxleBalance;
import drivetrain.road.RoadLoad;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What answers about the road need to know of a vehicle.
 *
 * @param dragArea drag coefficient times frontal area, 0.1 to 10 m2, where known
 * @param wheelbase from front to rear axle, 1 to 10 m, where known
 * @param centerOfGravity the height of the center of gravity above the ground, 0.1 to 3 m, where known
 * @param frontShare the share of the weight on the front axle, standing on the level, more than 0 and less than 1, where known
 * @param engineInertia the moment of inertia of crankshaft, flywheel and clutch or converter, up to 10 kg m2, where known
 * @param wheelInertia the moment of inertia of one wheel with tire and brake, up to 50 kg m2, where known
 */
public record RoadData(
        Optional<Area> dragArea,
        Optional<Length> wheelbase,
        Optional<Length> centerOfGravity,
        OptionalDouble frontShare,
        Optional<MomentOfInertia> engineInertia,
        Optional<MomentOfInertia> wheelInertia) {

    private static final MomentOfInertia LEAST_INERTIA = MomentOfInertia.ofKilogramSquareMeters(0.001);
    private static final MomentOfInertia MOST_ENGINE = MomentOfInertia.ofKilogramSquareMeters(10.0);
    private static final MomentOfInertia MOST_WHEEL = MomentOfInertia.ofKilogramSquareMeters(50.0);
    private static final RoadData UNKNOWN = new RoadData(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty());

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range, or the share of the weight puts the center of gravity outside the wheelbase
     */
    public RoadData {
        dragArea.ifPresent(value -> value.requireBetween(
                "drag area", RoadLoad.LEAST_DRAG_AREA, RoadLoad.MOST_DRAG_AREA, Area.SQUARE_METER));
        wheelbase.ifPresent(value ->
                value.requireBetween("wheelbase", AxleBalance.SHORTEST, AxleBalance.LONGEST, Length.MILLIMETER));
        centerOfGravity.ifPresent(value -> value.requireBetween(
                "height of the center of gravity", AxleBalance.LOWEST, AxleBalance.HIGHEST, Length.MILLIMETER));
        frontShare.ifPresent(AxleBalance::requireShare);
        engineInertia.ifPresent(value -> requireInertia("inertia of the engine", value, MOST_ENGINE));
        wheelInertia.ifPresent(value -> requireInertia("inertia of a wheel", value, MOST_WHEEL));
    }

    private static void requireInertia(String subject, MomentOfInertia value, MomentOfInertia most) {
        if (value.isLessThan(LEAST_INERTIA) || value.isGreaterThan(most)) {
            throw Refusal.of(subject, value.format(MomentOfInertia.KILOGRAM_SQUARE_METER, 3), "is out of range")
                    .allowing("0.001 to " + most.format(MomentOfInertia.KILOGRAM_SQUARE_METER, 0))
                    .asException();
        }
    }

    /**
     * Returns the data of a vehicle of which none is known.
     *
     * @return no value
     */
    public static RoadData unknown() {
        return UNKNOWN;
    }
}
