package drivetrain.driveshaft;

import drivetrain.finding.Caution;
import java.util.List;

/** The warnings that go with every answer about the line and the travel of a driveshaft. */
public final class ShaftLineCautions {

    private static final List<Caution> ALL = List.of(
            new Caution(
                    "driveshaft",
                    "A driveshaft that comes apart at speed can kill. Measure with the engine off, the wheels chocked and the vehicle on stands that"
                            + " carry its axles; never reach under a turning shaft."),
            new Caution(
                    "driveshaft",
                    "Joint angles, spline engagement and clearance must be seen on the vehicle over the whole suspension travel before it is driven. Have a shaft"
                            + " made, balanced and approved by licensed practice, under local law."));

    private ShaftLineCautions() {}

    /**
     * Returns the warnings.
     *
     * @return the cautions, in the order in which they are to be shown
     */
    public static List<Caution> all() {
        return ALL;
    }
}
