package drivetrain.report;

import drivetrain.assessment.SpeedometerAnswer;
import drivetrain.gearing.DrivenGear;
import drivetrain.gearing.DrivenGearChoice;
import drivetrain.gearing.SpeedometerReading;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the speedometer shows, and which driven gear would put it right. */
public final class SpeedometerReport {

    private SpeedometerReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(SpeedometerAnswer answer, UnitSystem units) {
        SpeedometerReading last = answer.readings().get(answer.readings().size() - 1);
        String sentence =
                "At a true " + Figure.of(last.actual(), Display.ROAD_SPEED).text(units) + " the speedometer shows "
                        + Figure.of(last.shown(), Display.ROAD_SPEED).text(units) + ".";
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence));
        blocks.add(grid(answer));
        answer.drivenGears().ifPresent(choice -> blocks.add(new Facts("drivenGears", "Driven gear", facts(choice))));
        blocks.add(new Facts("rolling", "", RollingFacts.of(answer.rolling())));
        return AnswerGround.report("speedometer", blocks, answer);
    }

    private static Grid grid(SpeedometerAnswer answer) {
        List<List<Cell>> rows = new ArrayList<>();
        for (SpeedometerReading reading : answer.readings()) {
            rows.add(List.of(
                    Cell.of(Figure.of(reading.actual(), Display.ROAD_SPEED)),
                    Cell.of(Figure.of(reading.shown(), Display.ROAD_SPEED)),
                    Cell.of(Figure.of(reading.error(), Display.ROAD_SPEED))));
        }
        return new Grid(
                "readings",
                "",
                List.of(
                        Column.ofFigures("trueSpeed", "true speed"),
                        Column.ofFigures("shownSpeed", "shown speed"),
                        Column.ofFigures("error", "shown less true")),
                rows);
    }

    private static List<Fact> facts(DrivenGearChoice choice) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("exactTeeth", "teeth for an exact reading", Figure.plain(choice.exactTeeth(), 2)));
        facts.add(new Fact("fewerTeeth", "next gear below", gear(choice.fewer())));
        facts.add(new Fact("moreTeeth", "next gear above", gear(choice.more())));
        facts.add(Fact.of(
                "legal",
                "gear to fit",
                choice.legal()
                        .map(gear -> gear.teeth() + " teeth")
                        .orElse("none of these: change the driving gear or fit an adapter box")));
        return facts;
    }

    private static Cell gear(Optional<DrivenGear> gear) {
        return gear.map(known -> Cell.of(known.teeth() + " teeth, shows "
                        + Figure.percent(known.shownOverTrue(), 1).text(UnitSystem.US) + " of the true speed"
                        + (known.legal() ? "" : ", not legal under UN Regulation 39")))
                .orElse(Cell.empty());
    }
}
