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
 * @param stallSpeed the pump speed at stall behind the engine of the package at full load, 500 to 8000 rpm, where known
 * @param curve torque ratio and capacity over the speed ratio, where known; its first torque ratio is then the stall torque ratio
 */
public record Converter(
        OptionalDouble stallTorqueRatio,
        boolean lockUp,
        OptionalDouble cruiseSpeedRatio,
        Optional<AngularSpeed> stallSpeed,
        Optional<ConverterCurve> curve)
        implements Coupling {

    private static final AngularSpeed SLOWEST_STALL = AngularSpeed.ofRpm(500.0);
    private static final AngularSpeed FASTEST_STALL = AngularSpeed.ofRpm(8000.0);

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
     * @throws drivetrain.refusal.RefusedException if a ratio or the stall speed is out of range, or the stall torque ratio is not that of the curve
     */
    public Converter {
        if (curve.isPresent()) {
            double ofCurve = curve.get().stallTorqueRatio();
            if (stallTorqueRatio.isPresent() && stallTorqueRatio.getAsDouble() != ofCurve) {
                throw Refusal.of(
                                "stall torque ratio",
                                DecimalText.shortest(stallTorqueRatio.getAsDouble()),
                                "is not that of the curve, " + DecimalText.shortest(ofCurve))
                        .allowing("one of the two")
                        .asException();
            }
            stallTorqueRatio = OptionalDouble.of(ofCurve);
        }
        stallSpeed.ifPresent(
                speed -> speed.requireBetween("stall speed", SLOWEST_STALL, FASTEST_STALL, AngularSpeed.RPM));
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

    /**
     * Makes a converter of which neither the stall speed nor the curve is known.
     *
     * @param stallTorqueRatio turbine torque over pump torque with the turbine standing still, 1 to 5, where known
     * @param lockUp true if a clutch can lock turbine and pump together
     * @param cruiseSpeedRatio turbine speed over pump speed at a steady cruise, unlocked, 0.5 to 1, where known
     * @throws drivetrain.refusal.RefusedException if a ratio is out of range
     */
    public Converter(OptionalDouble stallTorqueRatio, boolean lockUp, OptionalDouble cruiseSpeedRatio) {
        this(stallTorqueRatio, lockUp, cruiseSpeedRatio, Optional.empty(), Optional.empty());
    }

    /**
     * Reads what stands behind the word converter in a transmission's literal: {@code [stall 2.0] [stall-speed 2200 rpm] [curve 0:2:150 0.5:1.5:160 0.95:1:250]
     * [lockup | no lockup] [slip 3 % | speed-ratio 0.97]}.
     *
     * @param text the text
     * @return the converter
     * @throws drivetrain.refusal.RefusedException if the text is something else, with the index of the fault
     */
    public static Converter parse(String text) {
        return TransmissionText.converter(text);
    }

    static boolean allowsStallSpeed(AngularSpeed speed) {
        return !speed.isLessThan(SLOWEST_STALL) && !speed.isGreaterThan(FASTEST_STALL);
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
        if (curve.isEmpty()) {
            stallTorqueRatio.ifPresent(ratio -> words.append(" stall ").append(DecimalText.shortest(ratio)));
        }
        stallSpeed.ifPresent(speed -> words.append(" stall-speed ").append(rpm(speed)));
        curve.ifPresent(known -> words.append(' ').append(known.words()));
        words.append(lockUp ? " lockup" : " no lockup");
        cruiseSpeedRatio.ifPresent(ratio -> words.append(slipWords(ratio)));
        return words.toString();
    }

    private static String rpm(AngularSpeed speed) {
        String brief = DecimalText.significant(speed.toRpm(), 10);
        boolean exact = AngularSpeed.ofRpm(Double.parseDouble(brief)).equals(speed);
        return (exact ? brief : DecimalText.shortest(speed.toRpm())) + " rpm";
    }

    /** Slip in percent where that reads back as the same speed ratio, else the speed ratio in full. */
    private static String slipWords(double speedRatio) {
        String percent = DecimalText.significant(100.0 - 100.0 * speedRatio, 10);
        boolean exact = 1.0 - Double.parseDouble(percent) / 100.0 == speedRatio;
        return exact ? " slip " + percent + " %" : " speed-ratio " + DecimalText.shortest(speedRatio);
    }
}
