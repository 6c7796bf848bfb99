package drivetrain.gearing;

import drivetrain.finding.Assumption;
import drivetrain.quantity.AngularSpeed;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What joins the engine to the transmission. */
public sealed interface Coupling permits Clutch, Converter {

    /**
     * Returns the engine speed at cruise while the coupling slips.
     *
     * @param kinematic the engine speed that the gears alone give
     * @return the higher engine speed, or empty where nothing slips or the slip is not known
     */
    Optional<AngularSpeed> slipping(AngularSpeed kinematic);

    /**
     * Returns by how much the coupling multiplies torque with the output standing still.
     *
     * @return 1 for a clutch; the stall torque ratio of a converter, empty where it is not known
     */
    OptionalDouble stallMultiplication();

    /**
     * Returns what road speeds by the gears alone assume about the coupling.
     *
     * @return the assumptions; empty for a clutch that somebody has named
     */
    List<Assumption> speedAssumptions();

    /**
     * Writes the words that the transmission literal reads as the same coupling.
     *
     * @return the words, such as {@code clutch} or {@code converter stall 2 lockup}
     */
    String text();
}
