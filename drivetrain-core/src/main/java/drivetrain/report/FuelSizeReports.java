package drivetrain.report;

import drivetrain.assessment.InjectorSizeAnswer;
import drivetrain.assessment.LineSizeAnswer;
import drivetrain.assessment.PumpSizeAnswer;
import drivetrain.finding.Verdict;
import drivetrain.fuel.FuelSizing;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import java.util.ArrayList;
import java.util.List;

/** What a pump, an injector or a line has to be. */
public final class FuelSizeReports {

    private FuelSizeReports() {}

    /**
     * Makes the report on the pump.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(PumpSizeAnswer answer, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        List<String> fitting = answer.rows().stream()
                .filter(row -> row.verdict() == Verdict.MET)
                .map(PumpSizeAnswer.Row::name)
                .toList();
        blocks.add(Sentence.answer("The pump has to deliver "
                + Figure.of(answer.wanted(), Display.VOLUME_FLOW).text(units) + " against "
                + Figure.of(answer.added(), Display.GAUGE_PRESSURE).text(units) + " at "
                + Figure.of(answer.voltage(), Display.VOLTAGE).text(units) + "; " + onShelf(fitting) + "."));
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(
                "demand", "burned at full power", Figure.of(answer.demand().volume(), Display.VOLUME_FLOW)));
        facts.add(Fact.of("margin", "margin", Figure.percent(answer.margin(), 0)));
        facts.add(Fact.of("wanted", "flow of the pump", Figure.of(answer.wanted(), Display.VOLUME_FLOW)));
        facts.add(Fact.of("added", "pressure that it adds", Figure.of(answer.added(), Display.GAUGE_PRESSURE)));
        blocks.add(new Facts("detail", "", facts));
        if (!answer.rows().isEmpty()) {
            List<List<Cell>> rows = new ArrayList<>();
            for (PumpSizeAnswer.Row row : answer.rows()) {
                rows.add(List.of(
                        Cell.of(row.name()),
                        Cell.of(row.delivered().map(flow -> Figure.of(flow, Display.VOLUME_FLOW))),
                        Cell.of(row.verdict().label())));
            }
            blocks.add(new Grid(
                    "pumps",
                    "The pumps on the shelf, through these lines",
                    List.of(
                            Column.ofText("pump", "pump"),
                            Column.ofFigures("delivered", "delivers"),
                            Column.ofText("verdict", "demand and margin")),
                    rows));
        }
        return AnswerGround.report("sizePump", blocks, answer);
    }

    private static String onShelf(List<String> fitting) {
        return fitting.isEmpty() ? "no pump on the shelf does" : "on the shelf: " + String.join(", ", fitting);
    }

    /**
     * Makes the report on the injectors.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(InjectorSizeAnswer answer, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer("Each of " + answer.number() + " injectors has to be one of "
                + Figure.of(answer.rated(), Display.INJECTOR_FLOW).text(units) + " or more at "
                + Figure.of(answer.ratedPressure(), Display.GAUGE_PRESSURE).text(units) + ", open for at most "
                + Figure.percent(answer.duty(), 0).text(units) + " of the time."));
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of(
                "demand", "burned at full power", Figure.of(answer.demand().mass(), Display.MASS_FLOW)));
        facts.add(Fact.of("difference", "rail above manifold", Figure.of(answer.difference(), Display.GAUGE_PRESSURE)));
        facts.add(Fact.of("each", "flow of each in this engine", Figure.of(answer.each(), Display.INJECTOR_FLOW)));
        facts.add(Fact.of("rated", "flow of each at the rating", Figure.of(answer.rated(), Display.INJECTOR_FLOW)));
        blocks.add(new Facts("detail", "", facts));
        if (!answer.rows().isEmpty()) {
            List<List<Cell>> rows = new ArrayList<>();
            for (InjectorSizeAnswer.Row row : answer.rows()) {
                rows.add(List.of(
                        Cell.of(row.name()),
                        Cell.of(Figure.percent(row.duty(), 0)),
                        Cell.of(row.fits() ? "large enough" : "too small")));
            }
            blocks.add(new Grid(
                    "injectors",
                    "The injectors on the shelf",
                    List.of(
                            Column.ofText("injector", "injector"),
                            Column.ofFigures("duty", "open for"),
                            Column.ofText("fits", "so it is")),
                    rows));
        }
        return AnswerGround.report("sizeInjectors", blocks, answer);
    }

    /**
     * Makes the report on the line.
     *
     * @param answer the answer
     * @param units the units of the sentence
     * @return the report
     */
    public static Report of(LineSizeAnswer answer, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer("For "
                + Figure.of(answer.flow(), Display.VOLUME_FLOW).text(units)
                + (answer.ofPump() ? ", the whole flow of the pump," : ", the demand with its margin,")
                + " the feed line wants " + narrowest(answer.feed()) + " or wider, and a line ahead of the pump "
                + narrowest(answer.suction()) + "."));
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("flow", "flow in the line", Figure.of(answer.flow(), Display.VOLUME_FLOW)));
        facts.add(Fact.of("length", "length", Figure.of(answer.length(), Display.LINE_LENGTH)));
        facts.add(
                Fact.of("mostSpeed", "most speed in the feed line", Figure.of(answer.mostSpeed(), Display.FLOW_SPEED)));
        facts.add(Fact.of(
                "mostSuctionSpeed",
                "most speed ahead of the pump",
                Figure.of(answer.mostSuctionSpeed(), Display.FLOW_SPEED)));
        blocks.add(new Facts("detail", "", facts));
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < answer.feed().size(); i++) {
            FuelSizing.Bore bore = answer.feed().get(i);
            rows.add(List.of(
                    Cell.of(bore.conduit().name()),
                    Cell.of(Figure.of(bore.conduit().bore(), Display.BORE)),
                    Cell.of(Figure.of(bore.speed(), Display.FLOW_SPEED)),
                    Cell.of(Figure.of(bore.loss(), Display.GAUGE_PRESSURE)),
                    Cell.of(bore.wideEnough() ? "wide enough" : "too narrow"),
                    Cell.of(answer.suction().get(i).wideEnough() ? "wide enough" : "too narrow")));
        }
        blocks.add(new Grid(
                "bores",
                "Bores, each over the whole length",
                List.of(
                        Column.ofText("line", "line"),
                        Column.ofFigures("bore", "bore"),
                        Column.ofFigures("speed", "speed"),
                        Column.ofFigures("loss", "loss"),
                        Column.ofText("feed", "as feed"),
                        Column.ofText("suction", "ahead of the pump")),
                rows));
        return AnswerGround.report("sizeLine", blocks, answer);
    }

    private static String narrowest(List<FuelSizing.Bore> bores) {
        return LineSizeAnswer.narrowest(bores)
                .map(bore -> "a " + bore.conduit().name())
                .orElse("more than any bore tried");
    }
}
