package drivetrain.engine;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Torque;
import java.util.List;
import java.util.Optional;

/** What is known of an engine's full-load torque: a measured curve, its two peaks, or nothing. */
public sealed interface TorqueSource permits TorqueCurve, PeakEstimate, NoTorque {

    /**
     * Returns the torque at a speed.
     *
     * @param speed the engine speed
     * @return the torque; not evaluated outside the {@link #band}
     */
    Outcome<Torque> torqueAt(AngularSpeed speed);

    /**
     * Returns where the torque is greatest.
     *
     * @return the point; the slowest one if there are several
     */
    Outcome<OperatingPoint> peakTorque();

    /**
     * Returns where the power is greatest.
     *
     * @return the point; the slowest one if there are several
     */
    Outcome<OperatingPoint> peakPower();

    /**
     * Returns the speeds over which {@link #torqueAt} answers.
     *
     * @return the band; empty where nothing is known
     */
    Optional<SpeedBand> band();

    /**
     * Returns the point of the slowest measurement, whose torque may be held down to a stated idle.
     *
     * @return the point; empty where nothing was measured over a range of speeds
     */
    Optional<OperatingPoint> slowestMeasurement();

    /**
     * Returns what every torque of this source rests on.
     *
     * @return the assumptions
     */
    List<Assumption> assumptions();

    /**
     * Explains the torque at a speed.
     *
     * @param speed the engine speed
     * @return the working; not evaluated where the torque is not
     */
    Outcome<Working> torqueWorking(AngularSpeed speed);

    /**
     * Explains the peak torque.
     *
     * @return the working
     */
    Outcome<Working> peakTorqueWorking();

    /**
     * Explains the peak power.
     *
     * @return the working
     */
    Outcome<Working> peakPowerWorking();

    /**
     * Returns the source as it stands in an engine's literal text.
     *
     * @return the text, empty where nothing is known
     */
    String text();
}
