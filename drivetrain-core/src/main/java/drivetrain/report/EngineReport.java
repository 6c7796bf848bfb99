package drivetrain.report;

import drivetrain.assessment.EngineAnswer;
import drivetrain.engine.Engine;
import drivetrain.engine.OperatingPoint;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import java.util.ArrayList;
import java.util.List;

/** The engine: its greatest torque and power, and its speeds. */
public final class EngineReport {

    private EngineReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(EngineAnswer answer, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence(answer, units)));
        blocks.add(new Facts("detail", "", facts(answer)));
        return AnswerGround.report("engine", blocks, answer);
    }

    private static String sentence(EngineAnswer answer, UnitSystem units) {
        String power = answer.peakPower()
                .fold(
                        peak -> Figure.of(peak.power(), Display.POWER).text(units) + " at " + speed(peak, units),
                        reason -> "a power that is not evaluated because " + reason);
        String torque = answer.peakTorque()
                .fold(
                        peak -> Figure.of(peak.torque(), Display.TORQUE).text(units) + " at " + speed(peak, units),
                        reason -> "a torque that is not evaluated because " + reason);
        return "The engine gives " + power + ", and " + torque + ".";
    }

    private static String speed(OperatingPoint peak, UnitSystem units) {
        return Figure.of(peak.speed(), Display.ROTATION).text(units);
    }

    private static List<Fact> facts(EngineAnswer answer) {
        Engine engine = answer.engine();
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("name", "engine", engine.name()));
        facts.add(Fact.of("aspiration", "aspiration", engine.aspiration().label()));
        facts.add(Fact.of("rating", "rating", engine.rating().word()));
        facts.add(Fact.of("measuredAt", "measured at", engine.measuredAt().word()));
        facts.add(new Fact("greatestTorque", "greatest torque", torque(answer.peakTorque())));
        facts.add(new Fact("greatestPower", "greatest power", power(answer.peakPower())));
        engine.idle().ifPresent(idle -> facts.add(Fact.of("idle", "idle", Figure.of(idle, Display.ROTATION))));
        facts.add(Fact.of("maximumSpeed", "maximum speed", Figure.of(engine.maximumSpeed(), Display.ROTATION)));
        return facts;
    }

    private static Cell torque(Outcome<OperatingPoint> peak) {
        return Cell.of(peak.map(point -> Figure.of(point.torque(), Display.TORQUE)));
    }

    private static Cell power(Outcome<OperatingPoint> peak) {
        return Cell.of(peak.map(point -> Figure.of(point.power(), Display.POWER)));
    }
}
