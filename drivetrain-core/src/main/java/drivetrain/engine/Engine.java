package drivetrain.engine;

import drivetrain.finding.Assumption;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Power;
import drivetrain.quantity.Torque;
import drivetrain.quantity.Volume;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An engine as a part of a drivetrain: its speeds, and its full-load torque as far as it is known.
 *
 * @param name the name in a catalog, or the literal text
 * @param aspiration how it gets its air
 * @param ignition what lights the charge
 * @param displacement the swept volume, 0.01 to 200 L, where it is known
 * @param rating what the engine drove when it was measured
 * @param measuredAt where torque and power were measured
 * @param idle the idle speed, below the maximum speed, where it is known
 * @param maximumSpeed the highest speed that the engine may run at, 1 to 30 000 rpm
 * @param statedPower the power that its papers state, where they do; checked against the curve
 * @param torque what is known of the torque
 */
public record Engine(
        String name,
        Aspiration aspiration,
        Ignition ignition,
        Optional<Volume> displacement,
        Rating rating,
        MeasuredAt measuredAt,
        Optional<AngularSpeed> idle,
        AngularSpeed maximumSpeed,
        Optional<Power> statedPower,
        TorqueSource torque) {

    private static final Outcome<Torque> ABOVE_MAXIMUM =
            Outcome.notEvaluated("the engine speed is above the engine's maximum speed");

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if the name is blank, a value is out of range, the idle is not below the maximum speed, or a peak or a
     *     measured point lies above the maximum speed
     */
    public Engine {
        if (name.isBlank()) {
            throw Refusal.of("engine", name, "has no name").asException();
        }
        displacement.ifPresent(Plausible::displacement);
        statedPower.ifPresent(power -> Plausible.power("stated power", power));
        Plausible.speed("maximum speed", maximumSpeed);
        idle.ifPresent(speed -> requireBelow("idle speed", Plausible.speed("idle speed", speed), maximumSpeed));
        torque.peakTorque().value().ifPresent(peak -> requireNotAbove("speed of peak torque", peak, maximumSpeed));
        torque.peakPower().value().ifPresent(peak -> requireNotAbove("speed of peak power", peak, maximumSpeed));
    }

    private static void requireBelow(String subject, AngularSpeed speed, AngularSpeed maximum) {
        if (!speed.isLessThan(maximum)) {
            throw Refusal.of(subject, ShownText.rpm(speed), "is not below the maximum speed")
                    .allowing("less than " + ShownText.rpm(maximum))
                    .asException();
        }
    }

    private static void requireNotAbove(String subject, OperatingPoint point, AngularSpeed maximum) {
        if (point.speed().isGreaterThan(maximum)) {
            throw Refusal.of(subject, ShownText.rpm(point.speed()), "is above the maximum speed")
                    .allowing("at most " + ShownText.rpm(maximum))
                    .asException();
        }
    }

    /**
     * Makes a naturally aspirated spark-ignition engine whose torque is net, at the crank.
     *
     * @param name the name
     * @param maximumSpeed the highest speed that it may run at
     * @param torque what is known of the torque
     * @return the engine, with no displacement, idle and stated power
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public static Engine of(String name, AngularSpeed maximumSpeed, TorqueSource torque) {
        return new Engine(
                name,
                Aspiration.NATURAL,
                Ignition.SPARK,
                Optional.empty(),
                Rating.NET,
                MeasuredAt.CRANK,
                Optional.empty(),
                maximumSpeed,
                Optional.empty(),
                torque);
    }

    /**
     * Reads an engine from its literal text.
     *
     * <p>The text holds, in any order and with or without commas: both peaks ({@code 420 hp at 5700 rpm}, {@code 460 lb-ft at 4100 rpm}), or three
     * torques and more with their speeds in rising order, or neither; {@code max 6600 rpm}, always; {@code idle 650 rpm}; a power without a speed, which is
     * the stated power; a displacement; and the words {@code natural}, {@code supercharged}, {@code turbocharged}, {@code spark}, {@code diesel},
     * {@code net}, {@code gross}, {@code crank}, {@code wheels}. What is not said is naturally aspirated, spark, net and crank;
     * {@link #assumptions} says so.
     *
     * @param text the text
     * @return the engine, named by its canonical text
     * @throws drivetrain.refusal.RefusedException if the text cannot be read, with the index of the fault
     */
    public static Engine parse(String text) {
        return EngineLiteral.read(text);
    }

    /**
     * Returns this engine with an idle speed.
     *
     * @param speed the idle speed
     * @return the engine
     * @throws drivetrain.refusal.RefusedException if the speed is not below the maximum speed
     */
    public Engine withIdle(AngularSpeed speed) {
        return new Engine(
                name,
                aspiration,
                ignition,
                displacement,
                rating,
                measuredAt,
                Optional.of(speed),
                maximumSpeed,
                statedPower,
                torque);
    }

    /**
     * Returns this engine with another torque.
     *
     * @param other what is known of the torque
     * @return the engine
     * @throws drivetrain.refusal.RefusedException if a peak lies above the maximum speed
     */
    public Engine withTorque(TorqueSource other) {
        return new Engine(
                name, aspiration, ignition, displacement, rating, measuredAt, idle, maximumSpeed, statedPower, other);
    }

    /**
     * Returns this engine under another name.
     *
     * @param other the name
     * @return the engine
     * @throws drivetrain.refusal.RefusedException if the name is blank
     */
    public Engine withName(String other) {
        return new Engine(
                other, aspiration, ignition, displacement, rating, measuredAt, idle, maximumSpeed, statedPower, torque);
    }

    /**
     * Returns the full-load torque at a speed. From a stated idle up to the first measured point the torque of that point is held, which
     * {@link #assumptionsAt} flags.
     *
     * @param speed the engine speed
     * @return the torque as it was measured (see {@link #rating} and {@link #measuredAt}); not evaluated where it is not known and above the maximum speed
     */
    public Outcome<Torque> torqueAt(AngularSpeed speed) {
        if (speed.isGreaterThan(maximumSpeed)) {
            return ABOVE_MAXIMUM;
        }
        return isHeldAt(speed)
                ? torque.torqueAt(torque.slowestMeasurement().orElseThrow().speed())
                : torque.torqueAt(speed);
    }

    private boolean isHeldAt(AngularSpeed speed) {
        return idle.isPresent()
                && !speed.isLessThan(idle.get())
                && torque.slowestMeasurement()
                        .filter(first -> speed.isLessThan(first.speed()))
                        .isPresent();
    }

    /**
     * Returns where the torque is greatest.
     *
     * @return the point
     */
    public Outcome<OperatingPoint> peakTorque() {
        return torque.peakTorque();
    }

    /**
     * Returns where the power is greatest.
     *
     * @return the point
     */
    public Outcome<OperatingPoint> peakPower() {
        return torque.peakPower();
    }

    /**
     * Returns the speeds at which {@link #torqueAt} answers: those of the torque source, down to a stated idle and up to the maximum speed.
     *
     * @return the band; empty where no torque is known
     */
    public Optional<SpeedBand> band() {
        return torque.band().map(known -> {
            AngularSpeed lowest = idle.filter(this::isHeldAt).orElse(known.lowest());
            return new SpeedBand(lowest, known.highest().isGreaterThan(maximumSpeed) ? maximumSpeed : known.highest());
        });
    }

    /**
     * Returns what the engine's figures rest on, whatever the speed.
     *
     * @return the assumptions: what was measured and where, an estimated curve, a torque held down to idle
     */
    public List<Assumption> assumptions() {
        return EngineAssumptions.of(this, idle.isPresent() && isHeldAt(idle.get()));
    }

    /**
     * Returns what the torque at a speed rests on.
     *
     * @param speed the engine speed
     * @return the assumptions
     */
    public List<Assumption> assumptionsAt(AngularSpeed speed) {
        return EngineAssumptions.of(this, isHeldAt(speed));
    }

    /**
     * Checks the stated power against the curve, and the curve against the maximum speed.
     *
     * @return the findings; none where there is nothing to check
     */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        statedPower.ifPresent(stated -> findings.add(EngineChecks.statedPower(stated, peakPower())));
        torque.band()
                .filter(known -> known.highest().isLessThan(maximumSpeed))
                .ifPresent(known -> findings.add(EngineChecks.torqueEndsEarly(known.highest(), maximumSpeed)));
        return List.copyOf(findings);
    }

    /**
     * Explains the torque at a speed.
     *
     * @param speed the engine speed
     * @return the working; not evaluated where the torque is not
     */
    public Outcome<Working> torqueWorking(AngularSpeed speed) {
        if (speed.isGreaterThan(maximumSpeed)) {
            return ABOVE_MAXIMUM.map(never -> Working.of("").build());
        }
        return torque.torqueWorking(
                isHeldAt(speed) ? torque.slowestMeasurement().orElseThrow().speed() : speed);
    }

    /**
     * Explains the peak torque.
     *
     * @return the working
     */
    public Outcome<Working> peakTorqueWorking() {
        return torque.peakTorqueWorking();
    }

    /**
     * Explains the peak power.
     *
     * @return the working
     */
    public Outcome<Working> peakPowerWorking() {
        return torque.peakPowerWorking();
    }

    /**
     * Returns the literal text, without the name.
     *
     * @return the text; {@link #parse} reads back an engine that is equal but for the name
     */
    public String text() {
        return EngineText.of(this);
    }
}
