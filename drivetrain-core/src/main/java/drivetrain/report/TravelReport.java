package drivetrain.report;

import drivetrain.assessment.TravelAnswer;
import drivetrain.driveshaft.ShaftTravel;
import drivetrain.driveshaft.TravelPoint;
import drivetrain.quantity.Angle;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Facts.Fact;
import java.util.ArrayList;
import java.util.List;

/** The driveshafts over the travel of their axles. */
public final class TravelReport {

    private static final int MOST_JOINTS = 3;

    private TravelReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentences
     * @return the report
     */
    public static Report of(TravelAnswer answer, UnitSystem units) {
        List<String> sentences = new ArrayList<>();
        answer.travels().forEach(travel -> sentences.add(sentence(travel, units)));
        answer.missing().forEach(why -> sentences.add("Not everything is evaluated because " + why + "."));
        List<Block> blocks = new ArrayList<>();
        blocks.add(Sentence.answer(String.join(" ", sentences)));
        for (ShaftTravel travel : answer.travels()) {
            String place = travel.installed().place().label();
            blocks.add(places(travel, place));
            blocks.add(new Facts(place + "Travel", "", facts(travel)));
        }
        return AnswerGround.report("travel", blocks, answer);
    }

    private static String sentence(ShaftTravel travel, UnitSystem units) {
        return "Over its travel the " + travel.installed().place().label() + " shaft is between "
                + figure(travel.shortest().length()).text(units) + " and "
                + figure(travel.longest().length()).text(units) + " long, a plunge of "
                + figure(travel.plunge()).text(units) + ".";
    }

    private static Figure figure(Length length) {
        return Figure.of(length, Display.DIMENSION);
    }

    private static Grid places(ShaftTravel travel, String place) {
        List<List<Cell>> rows = new ArrayList<>();
        rows.add(row("ride height", travel.ride()));
        rows.add(row("shortest", travel.shortest()));
        rows.add(row("longest", travel.longest()));
        for (int i = 0; i < travel.widest().size(); i++) {
            rows.add(row("joint " + (i + 1) + " widest", travel.widest().get(i)));
        }
        rows.add(row("most residual", travel.worst()));
        List<Column> columns = new ArrayList<>(List.of(
                Column.ofText("place", "place"),
                Column.ofFigures("left", "left wheel"),
                Column.ofFigures("right", "right wheel"),
                Column.ofFigures("length", "length")));
        for (int i = 1; i <= travel.widest().size() && i <= MOST_JOINTS; i++) {
            columns.add(Column.ofFigures("joint" + i, "joint " + i));
        }
        columns.add(Column.ofFigures("residual", "residual"));
        return new Grid(
                place + "Places",
                "The " + place + " shaft over the travel; a wheel is raised from ride height",
                columns,
                rows);
    }

    private static List<Cell> row(String name, TravelPoint point) {
        List<Cell> cells = new ArrayList<>();
        cells.add(Cell.of(name));
        cells.add(Cell.of(figure(point.left())));
        cells.add(Cell.of(figure(point.right())));
        cells.add(Cell.of(figure(point.length())));
        for (Angle angle : point.angles()) {
            cells.add(Cell.of(Figure.of(angle, Display.JOINT_ANGLE)));
        }
        cells.add(Cell.of(Figure.of(point.residual(), Display.JOINT_ANGLE)));
        return cells;
    }

    private static List<Fact> facts(ShaftTravel travel) {
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("plunge", "plunge", figure(travel.plunge())));
        facts.add(Fact.of(
                "drawn",
                "drawn apart from ride height, at most",
                figure(travel.longest().length().minus(travel.ride().length()))));
        facts.add(Fact.of(
                "pushed",
                "pushed together from ride height, at most",
                figure(travel.ride().length().minus(travel.shortest().length()))));
        travel.engagementLeft()
                .ifPresent(left -> facts.add(Fact.of("engagementLeft", "spline engagement left", figure(left))));
        travel.freeLeft().ifPresent(left -> facts.add(Fact.of("freeLeft", "slip travel left", figure(left))));
        facts.add(Fact.of("misfit", "give of the bushes, at most", figure(travel.misfit())));
        return facts;
    }
}
