package drivetrain.report;

import drivetrain.assessment.TankAnswer;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import java.util.ArrayList;
import java.util.List;

/** The tank: range, expansion, warming and vapor. */
public final class TankReport {

    private TankReport() {}

    /**
     * Makes the report.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(TankAnswer answer, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence(answer, units)));
        blocks.add(new Facts("detail", "", facts(answer)));
        return AnswerGround.report("tank", blocks, answer);
    }

    private static String sentence(TankAnswer answer, UnitSystem units) {
        String holds = "The tank holds "
                + Figure.of(answer.tank().volume(), Display.TANK_VOLUME).text(units);
        return holds
                + answer.range()
                        .fold(
                                far -> ", which lasts "
                                        + Figure.of(far.shortest(), Display.ROAD_DISTANCE)
                                                .text(units) + " to "
                                        + Figure.of(far.longest(), Display.ROAD_DISTANCE)
                                                .text(units) + " at a steady "
                                        + Figure.of(far.speed(), Display.ROAD_SPEED)
                                                .text(units) + ".",
                                reason -> "; its range is not evaluated because " + reason + ".");
    }

    private static List<Fact> facts(TankAnswer answer) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("volume", "volume", Figure.of(answer.tank().volume(), Display.TANK_VOLUME)));
        facts.add(Fact.of("burnable", "usable", Figure.of(answer.tank().burnable(), Display.TANK_VOLUME)));
        answer.range().value().ifPresent(far -> {
            facts.add(Fact.of("cruisePower", "power at the cruise", Figure.of(far.power(), Display.POWER)));
            facts.add(Fact.of("leastFlow", "fuel at the cruise, least", Figure.of(far.least(), Display.VOLUME_FLOW)));
            facts.add(Fact.of("mostFlow", "fuel at the cruise, most", Figure.of(far.most(), Display.VOLUME_FLOW)));
        });
        facts.add(new Fact(
                "expansion",
                "room for a full tank to expand",
                Cell.of(answer.expansion().map(gain -> Figure.of(gain, Display.TANK_VOLUME)))));
        facts.add(new Fact(
                "warming",
                "warming by the pump, kelvins an hour",
                Cell.of(answer.warmingPerHour().map(kelvins -> Figure.plain(kelvins, 1)))));
        facts.add(new Fact(
                "vapor", "vapor of a day", Cell.of(answer.vapor().map(mass -> Figure.of(mass, Display.VAPOR_MASS)))));
        answer.tank()
                .canister()
                .ifPresent(capacity ->
                        facts.add(Fact.of("canister", "canister holds", Figure.of(capacity, Display.VAPOR_MASS))));
        return facts;
    }
}
