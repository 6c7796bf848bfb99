package drivetrain.engine;

import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Power;

/** The checks of an engine's data against each other. */
final class EngineChecks {

    private static final String STATED_POWER = "stated power against torque curve";
    private static final Source CURVE_RULE = Source.derived("nothing is extrapolated beyond the torque curve");

    private EngineChecks() {}

    static Finding statedPower(Power stated, Outcome<OperatingPoint> peak) {
        EngineLimit met = EngineLimit.of("stated-power-met");
        return peak.fold(
                point -> statedPower(stated, point, met, EngineLimit.of("stated-power-marginal")),
                reason -> Finding.notEvaluated(STATED_POWER, reason, met.source()));
    }

    private static Finding statedPower(Power stated, OperatingPoint peak, EngineLimit met, EngineLimit marginal) {
        double difference = stated.ratioTo(peak.power()) - 1.0;
        double size = Math.abs(difference);
        Verdict verdict =
                size <= met.most() ? Verdict.MET : size <= marginal.most() ? Verdict.MARGINAL : Verdict.EXCEEDED;
        String sentence = "the stated power, " + ShownText.power(stated) + ", is "
                + DecimalText.fixed(100.0 * size, 1) + " % " + (difference < 0.0 ? "below" : "above")
                + " the peak of the torque curve, " + ShownText.power(peak.power()) + " at "
                + ShownText.rpm(peak.speed());
        return Finding.of(
                STATED_POWER,
                Figure.percent(size, 1),
                Figure.percent(met.most(), 1),
                Figure.percent(met.most() - size, 1),
                verdict,
                sentence,
                met.source());
    }

    static Finding torqueEndsEarly(AngularSpeed end, AngularSpeed maximum) {
        return new Finding(
                "torque up to the maximum speed",
                java.util.Optional.of(Figure.of(end, Display.ROTATION)),
                java.util.Optional.of(Figure.of(maximum, Display.ROTATION)),
                java.util.Optional.empty(),
                Verdict.NOT_EVALUATED,
                "the torque is known up to " + ShownText.rpm(end) + " only; above that it is not evaluated",
                CURVE_RULE);
    }
}
