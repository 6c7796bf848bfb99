package drivetrain.engine;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Power;
import drivetrain.quantity.Torque;
import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A full-load torque curve estimated from the two stated peaks alone.
 *
 * <p>Every answer but the peaks themselves is an estimate and is flagged. It is given from half the speed of peak torque to 1.2 times the speed of peak
 * power; the shape and what it rests on stand in the documentation of the package.
 */
public final class PeakEstimate implements TorqueSource {

    private static final String ASSUMED =
            "the torque curve is an estimate drawn through the two stated peaks; expect errors of 10 % away from them";
    private static final List<Assumption> ASSUMPTIONS =
            List.of(Assumption.flagged("torque curve", ASSUMED, EngineSources.PEAK_SHAPE));

    private final Power power;
    private final AngularSpeed powerSpeed;
    private final Torque torque;
    private final AngularSpeed torqueSpeed;
    private final PeakShape shape;
    private final Outcome<Torque> below;
    private final Outcome<Torque> above;

    private PeakEstimate(Power power, AngularSpeed powerSpeed, Torque torque, AngularSpeed torqueSpeed) {
        this.power = power;
        this.powerSpeed = powerSpeed;
        this.torque = torque;
        this.torqueSpeed = torqueSpeed;
        shape = new PeakShape(torqueSpeed.si(), torque.si(), powerSpeed.si(), power.si());
        below = Outcome.notEvaluated("the peaks say nothing of the torque below "
                + ShownText.rpm(AngularSpeed.ofRadiansPerSecond(shape.lowest())));
        above = Outcome.notEvaluated("the peaks say nothing of the torque above "
                + ShownText.rpm(AngularSpeed.ofRadiansPerSecond(shape.highest())));
    }

    /**
     * Draws the estimate.
     *
     * @param power the stated peak power
     * @param powerSpeed its engine speed, above that of the peak torque
     * @param torque the stated peak torque
     * @param torqueSpeed its engine speed
     * @return the estimate
     * @throws drivetrain.refusal.RefusedException if the peaks contradict each other: the torque at the power peak above the peak torque, the
     *     power at the torque peak above the peak power, or the power peak not above the torque peak in speed
     */
    public static PeakEstimate of(Power power, AngularSpeed powerSpeed, Torque torque, AngularSpeed torqueSpeed) {
        Plausible.power("peak power", power);
        Plausible.torque("peak torque", torque);
        Plausible.speed("speed of peak power", powerSpeed);
        Plausible.speed("speed of peak torque", torqueSpeed);
        if (!powerSpeed.isGreaterThan(torqueSpeed)) {
            throw contradiction(
                    "peak power at " + ShownText.rpm(powerSpeed),
                    "lies no higher than peak torque at " + ShownText.rpm(torqueSpeed),
                    "a power peak at a higher speed than the torque peak");
        }
        Torque there = power.torqueAt(powerSpeed);
        if (there.isGreaterThan(torque)) {
            throw contradiction(
                    ShownText.power(power) + " at " + ShownText.rpm(powerSpeed),
                    "needs " + ShownText.torque(there) + ", more than the peak torque",
                    "at most " + ShownText.power(torque.at(powerSpeed)) + " at that speed");
        }
        if (torque.at(torqueSpeed).isGreaterThan(power)) {
            throw contradiction(
                    ShownText.torque(torque) + " at " + ShownText.rpm(torqueSpeed),
                    "makes " + ShownText.power(torque.at(torqueSpeed)) + ", more than the peak power",
                    "at most " + ShownText.torque(power.torqueAt(torqueSpeed)) + " at that speed");
        }
        return new PeakEstimate(power, powerSpeed, torque, torqueSpeed);
    }

    private static drivetrain.refusal.RefusedException contradiction(String given, String problem, String allowed) {
        return Refusal.of("engine peaks", given, problem).allowing(allowed).asException();
    }

    @Override
    public Outcome<Torque> torqueAt(AngularSpeed speed) {
        double n = speed.si();
        if (n < shape.lowest()) {
            return below;
        }
        return n > shape.highest() ? above : Outcome.of(Torque.ofNewtonMeters(shape.torqueAt(n)));
    }

    @Override
    public Outcome<OperatingPoint> peakTorque() {
        return Outcome.of(OperatingPoint.of(torqueSpeed, torque));
    }

    @Override
    public Outcome<OperatingPoint> peakPower() {
        return Outcome.of(OperatingPoint.of(powerSpeed, power));
    }

    @Override
    public Optional<SpeedBand> band() {
        return Optional.of(new SpeedBand(
                AngularSpeed.ofRadiansPerSecond(shape.lowest()), AngularSpeed.ofRadiansPerSecond(shape.highest())));
    }

    @Override
    public Optional<OperatingPoint> slowestMeasurement() {
        return Optional.empty();
    }

    @Override
    public List<Assumption> assumptions() {
        return ASSUMPTIONS;
    }

    @Override
    public Outcome<Working> torqueWorking(AngularSpeed speed) {
        return torqueAt(speed)
                .map(estimate -> peaks("engine torque at " + ShownText.rpm(speed))
                        .input("engine speed", "n", Figure.of(speed, Display.ROTATION), "asked for")
                        .step("engine torque, estimated", formulaAt(speed.si()), Figure.of(estimate, Display.TORQUE))
                        .source(EngineSources.PEAK_SHAPE)
                        .build());
    }

    private String formulaAt(double n) {
        if (n < torqueSpeed.si()) {
            return "T = T_1 (1 - 0.2 (1 - n / n_1)^2)";
        }
        if (n <= shape.torqueHeldTo()) {
            return "T = T_1, held until the fall to the power peak begins";
        }
        if (n < shape.powerHeldFrom()) {
            return "T = cubic that leaves T_1 level and meets P_2 / n with its slope";
        }
        return n <= powerSpeed.si() ? "T = P_2 / n" : "T = P_2 / n_2 (1 + x - x^2), x = n / n_2";
    }

    @Override
    public Outcome<Working> peakTorqueWorking() {
        return Outcome.of(peaks("peak torque")
                .step("peak torque", "T = T_1, as stated", Figure.of(torque, Display.TORQUE))
                .source(EngineSources.GIVEN)
                .build());
    }

    @Override
    public Outcome<Working> peakPowerWorking() {
        return Outcome.of(peaks("peak power")
                .step("peak power", "P = P_2, as stated", Figure.of(power, Display.POWER))
                .step("torque there", "T = P_2 / n_2", Figure.of(power.torqueAt(powerSpeed), Display.TORQUE))
                .source(EngineSources.GIVEN)
                .source(EngineSources.POWER)
                .build());
    }

    private Working.Builder peaks(String question) {
        return Working.of(question)
                .input("peak torque", "T_1", Figure.of(torque, Display.TORQUE), "stated")
                .input("speed of peak torque", "n_1", Figure.of(torqueSpeed, Display.ROTATION), "stated")
                .input("peak power", "P_2", Figure.of(power, Display.POWER), "stated")
                .input("speed of peak power", "n_2", Figure.of(powerSpeed, Display.ROTATION), "stated");
    }

    @Override
    public String text() {
        return EngineText.power(power) + " at " + EngineText.speed(powerSpeed) + ", " + EngineText.torque(torque)
                + " at " + EngineText.speed(torqueSpeed);
    }

    /**
     * Tells whether the other object is an estimate from the same peaks.
     *
     * @param other any object
     * @return true if equal
     */
    @Override
    public boolean equals(@org.jspecify.annotations.Nullable Object other) {
        return other instanceof PeakEstimate that
                && that.power.equals(power)
                && that.powerSpeed.equals(powerSpeed)
                && that.torque.equals(torque)
                && that.torqueSpeed.equals(torqueSpeed);
    }

    /**
     * Returns a hash of the peaks.
     *
     * @return the hash
     */
    @Override
    public int hashCode() {
        return Objects.hash(power, powerSpeed, torque, torqueSpeed);
    }

    /**
     * Returns the peaks as they stand in an engine's literal text.
     *
     * @return the text
     */
    @Override
    public String toString() {
        return text();
    }
}
