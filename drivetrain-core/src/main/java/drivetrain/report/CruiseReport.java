package drivetrain.report;

import drivetrain.assessment.CruiseAnswer;
import drivetrain.gearing.Converter;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import java.util.ArrayList;
import java.util.List;

/** Engine speed at a road speed: one sentence to be read out, then the detail. */
public final class CruiseReport {

    private CruiseReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(CruiseAnswer answer, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence(answer, units)));
        blocks.add(new Facts("detail", "", facts(answer)));
        blocks.add(everyGear(answer));
        return AnswerGround.report("cruise", blocks, answer);
    }

    private static String sentence(CruiseAnswer answer, UnitSystem units) {
        String where = "At " + Figure.of(answer.speed(), Display.ROAD_SPEED).text(units) + " in "
                + answer.gear().label() + " the engine turns ";
        String locked = rotation(answer.engineSpeed(), units);
        if (!(answer.coupling() instanceof Converter converter)) {
            return where + locked + ".";
        }
        String open = answer.unlocked().map(speed -> rotation(speed, units)).orElse("");
        if (converter.lockUp()) {
            return where + locked + " with the converter locked"
                    + (open.isEmpty() ? "." : " and " + open + " with it slipping.");
        }
        return open.isEmpty()
                ? where + locked + " or more, as its converter does not lock and how much it slips is not known."
                : where + open + " with the slip of its converter, which does not lock.";
    }

    private static String rotation(AngularSpeed speed, UnitSystem units) {
        return Figure.of(speed, Display.ROTATION).text(units);
    }

    private static List<Fact> facts(CruiseAnswer answer) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("roadSpeed", "road speed", Figure.of(answer.speed(), Display.ROAD_SPEED)));
        facts.add(Fact.of("gear", "gear", answer.gear().label()));
        boolean converter = answer.coupling() instanceof Converter;
        facts.add(Fact.of(
                "engineSpeed",
                converter ? "engine speed, converter locked" : "engine speed",
                Figure.of(answer.engineSpeed(), Display.ROTATION)));
        answer.unlocked()
                .ifPresent(open -> facts.add(Fact.of(
                        "engineSpeedSlipping", "engine speed, converter slipping", Figure.of(open, Display.ROTATION))));
        facts.add(
                Fact.of("driveshaftSpeed", "driveshaft speed", Figure.of(answer.driveshaftSpeed(), Display.ROTATION)));
        facts.addAll(RatioFacts.of(answer.gear()));
        facts.addAll(RollingFacts.of(answer.rolling()));
        return facts;
    }

    private static Grid everyGear(CruiseAnswer answer) {
        List<List<Cell>> rows = new ArrayList<>();
        for (CruiseAnswer.Row row : answer.everyGear()) {
            rows.add(List.of(
                    Cell.of(row.gear().label()),
                    Cell.of(Figure.plain(row.gear().totalRatio(), 3)),
                    Cell.of(Figure.of(row.engineSpeed(), Display.ROTATION))));
        }
        return new Grid(
                "everyGear",
                "The same road speed in every gear",
                List.of(
                        Column.ofText("gear", "gear"),
                        Column.ofFigures("totalRatio", "total ratio"),
                        Column.ofFigures("engineSpeed", "engine speed")),
                rows);
    }
}
