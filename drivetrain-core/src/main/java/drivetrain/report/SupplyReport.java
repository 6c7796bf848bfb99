package drivetrain.report;

import drivetrain.assessment.SupplyAnswer;
import drivetrain.finding.Outcome;
import drivetrain.fuel.RunOut;
import drivetrain.fuel.SupplyPoint;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.quantity.VolumeFlow;
import drivetrain.report.Facts.Fact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether the fuel supply keeps up: one sentence to be read out, then the detail. */
public final class SupplyReport {

    private SupplyReport() {}

    /**
     * Makes the report.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(SupplyAnswer answer, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(sentence(answer, units)));
        blocks.add(new Facts("detail", "", facts(answer)));
        blocks.add(runsOut(answer));
        if (!answer.rows().isEmpty()) {
            blocks.add(overSpeed(answer));
        }
        return AnswerGround.report("supply", blocks, answer);
    }

    private static String sentence(SupplyAnswer answer, UnitSystem units) {
        String at =
                "At " + Figure.of(answer.supply().voltage(), Display.VOLTAGE).text(units) + " the fuel supply ";
        String burned = flow(answer.demand().volume(), units);
        return at
                + answer.capacity()
                        .fold(
                                point -> point.flow().isLessThan(answer.demand().volume())
                                        ? "does not keep up: the engine burns up to " + burned + " and gets "
                                                + flow(point.flow(), units) + "; " + first(answer, units)
                                        : keepsUp(answer, point, burned, units),
                                reason -> "is not evaluated because " + reason + "; the engine burns up to " + burned
                                        + ".");
    }

    private static String keepsUp(SupplyAnswer answer, SupplyPoint point, String burned, UnitSystem units) {
        boolean enough = answer.first()
                .filter(part -> part.power().orThrow().isLessThan(answer.peak().power()))
                .isEmpty();
        return enough
                ? "keeps up: the engine burns up to " + burned + " and the pump delivers " + flow(point.flow(), units)
                        + "; " + first(answer, units)
                : "is short although the pump keeps up (" + flow(point.flow(), units) + " for " + burned + "); "
                        + first(answer, units);
    }

    private static String flow(VolumeFlow flow, UnitSystem units) {
        return Figure.of(flow, Display.VOLUME_FLOW).text(units);
    }

    private static String first(SupplyAnswer answer, UnitSystem units) {
        Optional<RunOut> first = answer.first();
        if (first.isEmpty()) {
            return "what runs out first is not known.";
        }
        String power = Figure.of(first.get().power().orThrow(), Display.POWER).text(units);
        String peak = Figure.of(answer.peak().power(), Display.POWER).text(units);
        String part = switch (first.get().part()) {
            case SUCTION -> "the suction side runs out";
            case INJECTORS -> "the injectors run out";
            default -> answer.isLimitedByLines() ? "the lines run out" : "the pump runs out";
        };
        return part + " first, at " + power + " where the engine makes " + peak + ".";
    }

    private static List<Fact> facts(SupplyAnswer answer) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(
                "voltage", "voltage of the supply", Figure.of(answer.supply().voltage(), Display.VOLTAGE)));
        facts.add(Fact.of(
                "demandMass",
                "fuel burned at full power",
                Figure.of(answer.demand().mass(), Display.MASS_FLOW)));
        facts.add(Fact.of(
                "demandVolume", "the same by volume", Figure.of(answer.demand().volume(), Display.VOLUME_FLOW)));
        facts.add(Fact.of(
                "wanted",
                "with the margin",
                Figure.of(answer.demand().volume().times(1.0 + answer.margin()), Display.VOLUME_FLOW)));
        answer.capacity()
                .fold(
                        point -> facts.addAll(delivery(answer, point)),
                        reason -> facts.add(new Fact("delivered", "delivered", Cell.notEvaluated(reason))));
        answer.injectors()
                .value()
                .ifPresent(use -> facts.add(new Fact(
                        "duty",
                        "injectors open at full power",
                        Cell.of(use.duty().map(share -> Figure.percent(share, 0))))));
        return facts;
    }

    private static List<Fact> delivery(SupplyAnswer answer, SupplyPoint point) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(
                "delivered", "delivered with the regulator holding", Figure.of(point.flow(), Display.VOLUME_FLOW)));
        facts.add(Fact.of("added", "pressure that the pump adds", Figure.of(point.added(), Display.GAUGE_PRESSURE)));
        facts.add(Fact.of("feedLoss", "loss in the feed line", Figure.of(point.feedLoss(), Display.GAUGE_PRESSURE)));
        facts.add(Fact.of("pumpVoltage", "voltage at the pump", Figure.of(point.voltage(), Display.VOLTAGE)));
        point.current()
                .ifPresent(amperes ->
                        facts.add(Fact.of("current", "current of the pump", Figure.of(amperes, Display.CURRENT))));
        facts.add(new Fact(
                "rail",
                "rail pressure at full power",
                Cell.of(answer.atPeak().map(full -> Figure.of(full.rail(), Display.GAUGE_PRESSURE)))));
        return facts;
    }

    private static Grid runsOut(SupplyAnswer answer) {
        List<List<Cell>> rows = new ArrayList<>();
        for (RunOut part : answer.parts()) {
            rows.add(List.of(
                    Cell.of(part.part().label()), Cell.of(part.power().map(power -> Figure.of(power, Display.POWER)))));
        }
        return new Grid(
                "runsOut",
                "What runs out at what power",
                List.of(Column.ofText("part", "part"), Column.ofFigures("power", "good for")),
                rows);
    }

    private static Grid overSpeed(SupplyAnswer answer) {
        Outcome<VolumeFlow> delivered = answer.capacity().map(SupplyPoint::flow);
        List<List<Cell>> rows = new ArrayList<>();
        for (SupplyAnswer.Row row : answer.rows()) {
            rows.add(List.of(
                    Cell.of(Figure.of(row.speed(), Display.ROTATION)),
                    Cell.of(Figure.of(row.power(), Display.POWER)),
                    Cell.of(Figure.of(row.demand(), Display.VOLUME_FLOW)),
                    Cell.of(delivered.map(flow -> Figure.of(flow, Display.VOLUME_FLOW)))));
        }
        return new Grid(
                "overSpeed",
                "Over the engine speed, at full load",
                List.of(
                        Column.ofFigures("engineSpeed", "engine speed"),
                        Column.ofFigures("power", "power"),
                        Column.ofFigures("demand", "burned"),
                        Column.ofFigures("delivered", "delivered")),
                rows);
    }
}
