package drivetrain.engine;

import drivetrain.finding.Assumption;
import drivetrain.finding.Finding;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.finding.Working;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Power;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.Torque;
import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.Optional;

/**
 * The factor between the full-load power in the air of a place and in the reference air of 99 kPa dry pressure and 25 degC (298 K):
 * reference = factor times power in that air. Torque has the same factor.
 *
 * <p>The rules count T as t + 273, not 273.15, so that their reference temperature is 298 exactly.
 */
public final class PowerCorrection {

    /** Reference dry pressure, 99 kPa; SAE J1349, ISO 1585. */
    public static final Pressure REFERENCE_DRY_PRESSURE = Pressure.ofKilopascals(99.0);

    /** Reference temperature, 25 degC; SAE J1349, ISO 1585. */
    public static final Temperature REFERENCE_TEMPERATURE = Temperature.ofCelsius(25.0);

    private static final double RULE_ZERO_CELSIUS = 273.0;
    private static final double RULE_REFERENCE = 298.0;
    private static final Pressure LEAST_PRESSURE = Pressure.ofKilopascals(20.0);
    private static final Pressure MOST_PRESSURE = Pressure.ofKilopascals(120.0);
    private static final double LEAST_CELSIUS = -60.0;
    private static final double MOST_CELSIUS = 80.0;

    private static final Assumption SUPERCHARGED = Assumption.flagged(
            "air correction",
            "the engine is supercharged or turbocharged: its boost control holds part of the power against thin air,"
                    + " so that the correction for spark ignition overstates the change",
            Source.commonPractice("corrections for spark ignition describe naturally aspirated engines"));
    private static final Assumption TURBO_EXPONENTS = Assumption.of(
            "air correction",
            "a turbocharged diesel without charge cooling by water: fa = (99/pd)^0.7 (T/298)^1.2",
            Source.fromMemory("ISO 1585, exponents for turbocharged compression-ignition engines"));

    private final CorrectionRule rule;
    private final Pressure dryPressure;
    private final Temperature temperature;
    private final Aspiration aspiration;
    private final Optional<EngineFactor> engineFactor;
    private final double airFactor;
    private final double factor;

    private PowerCorrection(
            CorrectionRule rule,
            Pressure dryPressure,
            Temperature temperature,
            Aspiration aspiration,
            Optional<EngineFactor> engineFactor) {
        this.rule = rule;
        this.dryPressure =
                dryPressure.requireBetween("dry pressure", LEAST_PRESSURE, MOST_PRESSURE, Pressure.HECTOPASCAL);
        this.temperature = temperature;
        this.aspiration = aspiration;
        this.engineFactor = engineFactor;
        double t = temperature.toCelsius();
        if (t < LEAST_CELSIUS || t > MOST_CELSIUS) {
            throw Refusal.of("air temperature", temperature.format(Temperature.CELSIUS, 1), "is out of range")
                    .allowing("-60 to 80 degC")
                    .asException();
        }
        double p = REFERENCE_DRY_PRESSURE.ratioTo(dryPressure);
        double theta = (t + RULE_ZERO_CELSIUS) / RULE_REFERENCE;
        airFactor = airFactor(p, theta);
        factor = engineFactor.map(fm -> Math.pow(airFactor, fm.value())).orElse(airFactor);
    }

    private double airFactor(double p, double theta) {
        return switch (rule) {
            case SAE_J1349 -> 1.18 * p * Math.sqrt(theta) - 0.18;
            case ISO_1585_SPARK -> Math.pow(p, 1.2) * Math.pow(theta, 0.6);
            case ISO_1585_COMPRESSION ->
                aspiration == Aspiration.TURBOCHARGED
                        ? Math.pow(p, 0.7) * Math.pow(theta, 1.2)
                        : p * Math.pow(theta, 0.7);
        };
    }

    /**
     * Corrects a spark-ignition engine by SAE J1349.
     *
     * @param dryPressure the pressure of the dry part of the air, 20 to 120 kPa
     * @param temperature the temperature of the intake air, -60 to 80 degC
     * @param aspiration how the engine gets its air; flagged if it is not naturally aspirated
     * @return the correction
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public static PowerCorrection saeJ1349(Pressure dryPressure, Temperature temperature, Aspiration aspiration) {
        return new PowerCorrection(CorrectionRule.SAE_J1349, dryPressure, temperature, aspiration, Optional.empty());
    }

    /**
     * Corrects a spark-ignition engine by ISO 1585.
     *
     * @param dryPressure the pressure of the dry part of the air, 20 to 120 kPa
     * @param temperature the temperature of the intake air, -60 to 80 degC
     * @param aspiration how the engine gets its air; flagged if it is not naturally aspirated
     * @return the correction
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public static PowerCorrection iso1585Spark(Pressure dryPressure, Temperature temperature, Aspiration aspiration) {
        return new PowerCorrection(
                CorrectionRule.ISO_1585_SPARK, dryPressure, temperature, aspiration, Optional.empty());
    }

    /**
     * Corrects a compression-ignition engine by ISO 1585.
     *
     * @param dryPressure the pressure of the dry part of the air, 20 to 120 kPa
     * @param temperature the temperature of the intake air, -60 to 80 degC
     * @param aspiration how the engine gets its air; a driven supercharger counts as naturally aspirated
     * @param engineFactor the exponent, from the fuel per cycle
     * @return the correction
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public static PowerCorrection iso1585Compression(
            Pressure dryPressure, Temperature temperature, Aspiration aspiration, EngineFactor engineFactor) {
        return new PowerCorrection(
                CorrectionRule.ISO_1585_COMPRESSION, dryPressure, temperature, aspiration, Optional.of(engineFactor));
    }

    /**
     * Returns the rule.
     *
     * @return the rule
     */
    public CorrectionRule rule() {
        return rule;
    }

    /**
     * Returns the factor.
     *
     * @return power in the reference air over power in this air; above 1 in thin or hot air
     */
    public double factor() {
        return factor;
    }

    /**
     * Corrects a power measured in this air.
     *
     * @param here the power in this air
     * @return the power in the reference air
     */
    public Power toReference(Power here) {
        return here.times(factor);
    }

    /**
     * Corrects a torque measured in this air.
     *
     * @param here the torque in this air
     * @return the torque in the reference air
     */
    public Torque toReference(Torque here) {
        return here.times(factor);
    }

    /**
     * Returns what a rated power becomes in this air.
     *
     * @param rated the power in the reference air
     * @return the power in this air
     */
    public Power fromReference(Power rated) {
        return rated.dividedBy(factor);
    }

    /**
     * Returns what a rated torque becomes in this air.
     *
     * @param rated the torque in the reference air
     * @return the torque in this air
     */
    public Torque fromReference(Torque rated) {
        return rated.dividedBy(factor);
    }

    /**
     * Returns what the correction rests on.
     *
     * @return the assumptions, flagged for a supercharged or turbocharged spark-ignition engine
     */
    public List<Assumption> assumptions() {
        if (aspiration == Aspiration.NATURAL) {
            return List.of();
        }
        if (rule != CorrectionRule.ISO_1585_COMPRESSION) {
            return List.of(SUPERCHARGED);
        }
        return aspiration == Aspiration.TURBOCHARGED ? List.of(TURBO_EXPONENTS) : List.of();
    }

    /**
     * Checks the factor against the range in which the rule holds.
     *
     * @return one finding, marginal where the factor is an extrapolation
     */
    public List<Finding> findings() {
        EngineLimit valid = rule.validity();
        boolean inside = valid.contains(factor);
        double limit = factor < 1.0 ? valid.least() : valid.most();
        String range = DecimalText.fixed(valid.least(), 2) + " to " + DecimalText.fixed(valid.most(), 2);
        return List.of(Finding.of(
                "range of " + rule.label(),
                Figure.plain(factor, 4),
                Figure.plain(limit, 2),
                Figure.plain(factor < 1.0 ? factor - limit : limit - factor, 4),
                inside ? Verdict.MET : Verdict.MARGINAL,
                inside
                        ? "the factor lies in the range of the rule, " + range
                        : "the factor lies outside the range of the rule, " + range + ", and is an extrapolation",
                valid.source()));
    }

    /**
     * Explains the factor.
     *
     * @return the working
     */
    public Working working() {
        Working.Builder working = Working.of("air correction by " + rule.label())
                .input("dry pressure", "pd", Figure.of(dryPressure, Display.AIR_PRESSURE), "given")
                .input("temperature", "t", Figure.of(temperature, Display.TEMPERATURE), "given")
                .step(
                        "rule temperature",
                        "T = t + 273, t in degC",
                        Figure.plain(temperature.toCelsius() + RULE_ZERO_CELSIUS, 2));
        engineFactor.ifPresentOrElse(
                fm -> working.step("air factor", formula(), Figure.plain(airFactor, 5))
                        .step("engine factor", fm.formula(), Figure.plain(fm.value(), 3))
                        .step("correction factor", "alpha = fa^fm", Figure.plain(factor, 5)),
                () -> working.step("correction factor", formula(), Figure.plain(factor, 5)));
        return working.source(rule.source()).build();
    }

    private String formula() {
        return switch (rule) {
            case SAE_J1349 -> "CF = 1.18 (990/pd) sqrt(T/298) - 0.18, pd in hPa";
            case ISO_1585_SPARK -> "alpha = (990/pd)^1.2 (T/298)^0.6, pd in hPa";
            case ISO_1585_COMPRESSION ->
                aspiration == Aspiration.TURBOCHARGED
                        ? "fa = (990/pd)^0.7 (T/298)^1.2, pd in hPa"
                        : "fa = (990/pd) (T/298)^0.7, pd in hPa";
        };
    }
}
