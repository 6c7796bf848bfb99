package drivetrain.report;

import drivetrain.assessment.StrengthAnswer;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** Whether the driveshafts carry the greatest torque that they see. */
public final class StrengthReport {

    private StrengthReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentences
     * @return the report
     */
    public static Report of(StrengthAnswer answer, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        answer.shafts()
                .forEach(shaft -> sentences.add("The " + shaft.place().label() + " shaft may have to carry "
                        + Figure.of(shaft.torque(), Display.TORQUE).text(units) + " (" + shaft.where() + ")."));
        answer.missing().forEach(why -> sentences.add("Not everything is evaluated because " + why + "."));
        blocks.add(Sentence.answer(String.join(" ", sentences)));
        blocks.add(grid(answer.shafts()));
        return AnswerGround.report("strength", blocks, answer);
    }

    private static Grid grid(List<StrengthAnswer.Shaft> shafts) {
        List<List<Cell>> rows = new ArrayList<>();
        for (StrengthAnswer.Shaft shaft : shafts) {
            for (int i = 0; i < shaft.pieces().size(); i++) {
                StrengthAnswer.Piece piece = shaft.pieces().get(i);
                String name = shaft.pieces().size() == 1
                        ? shaft.place().label()
                        : shaft.place().label() + " " + (i + 1);
                rows.add(List.of(
                        Cell.of(name),
                        Cell.of(Figure.of(piece.torsion().torque(), Display.TORQUE)),
                        Cell.of(Figure.of(piece.torsion().stress(), Display.STRESS)),
                        piece.length()
                                .map(length -> Cell.of(Figure.of(piece.torsion().twist(length), Display.JOINT_ANGLE)))
                                .orElse(Cell.notEvaluated("the length is not known")),
                        piece.torsion()
                                .yieldTorque()
                                .map(yield -> Cell.of(Figure.of(yield, Display.TORQUE)))
                                .orElse(Cell.notEvaluated(piece.torsion().strengthMissing())),
                        piece.torsion().factor().isPresent()
                                ? Cell.of(Figure.plain(piece.torsion().factor().getAsDouble(), 2))
                                : Cell.empty()));
            }
        }
        return new Grid(
                "tubes",
                "",
                List.of(
                        Column.ofText("shaft", "shaft"),
                        Column.ofFigures("torque", "torque"),
                        Column.ofFigures("stress", "shear stress"),
                        Column.ofFigures("twist", "twist"),
                        Column.ofFigures("yield", "yields at"),
                        Column.ofFigures("factor", "factor")),
                rows);
    }
}
