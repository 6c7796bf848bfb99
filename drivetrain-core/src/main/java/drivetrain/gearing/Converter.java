package drivetrain.gearing;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.DecimalText;
import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A torque converter.
 *
 * @param stallTorqueRatio turbine torque over pump torque with the turbine standing still, 1 to 5, where known
 * @param lockUp true if a clutch can lock turbine and pump together
 * @param cruiseSpeedRatio turbine speed over pump speed at a steady cruise, unlocked, 0.5 to 1, where known; 1 - slip
 */
public record Converter(OptionalDouble stallTorqueRatio, boolean lockUp, OptionalDouble cruiseSpeedRatio)
        implements Coupling {

    private static final double LEAST_SPEED_RATIO = 0.5;
    private static final double MOST_STALL_RATIO = 5.0;
    private static final Source KINEMATICS = Source.derived("locked, turbine and pump turn as one");
    private static final List<Assumption> LOCKED = List.of(Assumption.of(
            "torque converter", "the converter is locked: engine speed is by the gears alone", KINEMATICS));
    private static final List<Assumption> NEVER_LOCKED = List.of(Assumption.flagged(
            "torque converter",
            "the converter has no lock-up: the engine turns faster than the gears alone say, by the slip",
            KINEMATICS));

    /**
     * Checks the ratios.
     *
     * @throws drivetrain.refusal.RefusedException if a ratio is out of range
     */
    public Converter {
        if (stallTorqueRatio.isPresent() && !allowsStallRatio(stallTorqueRatio.getAsDouble())) {
            throw Refusal.of("stall torque ratio", Double.toString(stallTorqueRatio.getAsDouble()), "is out of range")
                    .allowing("1 to 5")
                    .asException();
        }
        if (cruiseSpeedRatio.isPresent() && !allowsSpeedRatio(cruiseSpeedRatio.getAsDouble())) {
            throw Refusal.of(
                            "converter speed ratio", Double.toString(cruiseSpeedRatio.getAsDouble()), "is out of range")
                    .allowing("0.5 to 1, that is a slip of 50 % to 0 %")
                    .asException();
        }
    }

    static boolean allowsStallRatio(double ratio) {
        return ratio >= 1.0 && ratio <= MOST_STALL_RATIO;
    }

    static boolean allowsSpeedRatio(double ratio) {
        return ratio >= LEAST_SPEED_RATIO && ratio <= 1.0;
    }

    /**
     * Makes a converter of which nothing is known.
     *
     * @return a converter without lock-up, stall torque ratio and slip
     */
    public static Converter unknown() {
        return new Converter(OptionalDouble.empty(), false, OptionalDouble.empty());
    }

    /**
     * Returns the slip at cruise.
     *
     * @return 1 - speed ratio, where known
     */
    public OptionalDouble slip() {
        return cruiseSpeedRatio.isPresent()
                ? OptionalDouble.of(1.0 - cruiseSpeedRatio.getAsDouble())
                : OptionalDouble.empty();
    }

    @Override
    public Optional<AngularSpeed> slipping(AngularSpeed kinematic) {
        return cruiseSpeedRatio.isPresent()
                ? Optional.of(kinematic.dividedBy(cruiseSpeedRatio.getAsDouble()))
                : Optional.empty();
    }

    @Override
    public OptionalDouble stallMultiplication() {
        return stallTorqueRatio;
    }

    @Override
    public List<Assumption> speedAssumptions() {
        return lockUp ? LOCKED : NEVER_LOCKED;
    }

    @Override
    public String text() {
        StringBuilder words = new StringBuilder("converter");
        stallTorqueRatio.ifPresent(ratio -> words.append(" stall ").append(DecimalText.shortest(ratio)));
        words.append(lockUp ? " lockup" : " no lockup");
        cruiseSpeedRatio.ifPresent(ratio -> words.append(slipWords(ratio)));
        return words.toString();
    }

    /** Slip in percent where that reads back as the same speed ratio, else the speed ratio in full. */
    private static String slipWords(double speedRatio) {
        String percent = DecimalText.significant(100.0 - 100.0 * speedRatio, 10);
        boolean exact = 1.0 - Double.parseDouble(percent) / 100.0 == speedRatio;
        return exact ? " slip " + percent + " %" : " speed-ratio " + DecimalText.shortest(speedRatio);
    }
}
