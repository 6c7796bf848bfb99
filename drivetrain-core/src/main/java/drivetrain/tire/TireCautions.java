package drivetrain.tire;

import drivetrain.finding.Caution;
import java.util.List;

/** The warnings that go with every answer about tires. */
public final class TireCautions {

    private static final List<Caution> ALL = List.of(
            new Caution(
                    "tire",
                    "Load index and speed symbol hold for a sound tire on its proper rim at the maker's inflation pressure."
                            + " A tire fitted, loaded or driven beyond them can burst."),
            new Caution(
                    "tire",
                    "Whether a tire size may be fitted to a vehicle is decided by clearance in full steering and travel, by wheel and"
                            + " brake, by the vehicle's maker and by local law. Have it fitted and approved by licensed practice."));

    private TireCautions() {}

    /**
     * Returns the warnings.
     *
     * @return the cautions, in the order in which they are to be shown
     */
    public static List<Caution> all() {
        return ALL;
    }
}
