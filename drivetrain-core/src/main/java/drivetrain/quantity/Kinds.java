package drivetrain.quantity;

import java.util.List;
import java.util.Optional;

/** Every kind of quantity that the library reads. */
public final class Kinds {

    private static final List<Kind<?>> ALL = List.of(
            Angle.KIND,
            AngularAcceleration.KIND,
            AngularSpeed.KIND,
            Area.KIND,
            CapacityFactor.KIND,
            Current.KIND,
            Density.KIND,
            Force.KIND,
            Frequency.KIND,
            KinematicViscosity.KIND,
            Length.KIND,
            Mass.KIND,
            MassFlow.KIND,
            MomentOfInertia.KIND,
            Power.KIND,
            Pressure.KIND,
            RevolutionsPerDistance.KIND,
            SpecificFuelConsumption.KIND,
            Speed.KIND,
            Stiffness.KIND,
            Temperature.KIND,
            Time.KIND,
            Torque.KIND,
            Voltage.KIND,
            Volume.KIND,
            VolumeFlow.KIND);

    private Kinds() {}

    /**
     * Returns every kind.
     *
     * @return the kinds in alphabetical order of their types
     */
    public static List<Kind<?>> all() {
        return ALL;
    }

    /**
     * Finds the kind that a unit measures.
     *
     * @param unit the unit as typed
     * @return the kind, or empty if no kind knows the unit
     */
    public static Optional<Kind<?>> measuredIn(String unit) {
        return ALL.stream().filter(kind -> kind.unit(unit).isPresent()).findFirst();
    }
}
