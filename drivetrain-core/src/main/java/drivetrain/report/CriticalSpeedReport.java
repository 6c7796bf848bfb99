package drivetrain.report;

import drivetrain.assessment.CriticalSpeedAnswer;
import drivetrain.driveshaft.BeamMode;
import drivetrain.driveshaft.ShaftSpeed;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** How near the driveshafts come to whirling. */
public final class CriticalSpeedReport {

    private CriticalSpeedReport() {}

    /**
     * Words an answer.
     *
     * @param answer the answer
     * @param units the units of the sentences
     * @return the report
     */
    public static Report of(CriticalSpeedAnswer answer, UnitSystem units) {
        List<Block> blocks = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        answer.shafts().forEach(shaft -> sentences.add(sentence(shaft, units)));
        answer.missing().forEach(why -> sentences.add("Not everything is evaluated because " + why + "."));
        blocks.add(Sentence.answer(String.join(" ", sentences)));
        blocks.add(speeds(answer.shafts()));
        blocks.add(modes(answer.shafts()));
        return AnswerGround.report("critical", blocks, answer);
    }

    private static String sentence(CriticalSpeedAnswer.Shaft shaft, UnitSystem units) {
        return "The " + shaft.place().label() + " shaft whirls at "
                + rotation(shaft.critical().speed()).text(units)
                + "; its tube alone, from joint to joint, would at "
                + rotation(shaft.critical().tubeAlone()).text(units) + ".";
    }

    private static Grid speeds(List<CriticalSpeedAnswer.Shaft> shafts) {
        List<List<Cell>> rows = new ArrayList<>();
        for (CriticalSpeedAnswer.Shaft shaft : shafts) {
            for (ShaftSpeed speed : shaft.speeds()) {
                rows.add(List.of(
                        Cell.of(shaft.place().label() + ", " + speed.where()),
                        Cell.of(rotation(speed.speed())),
                        Cell.of(Figure.percent(shaft.fraction(speed), 0))));
            }
        }
        return new Grid(
                "speeds",
                "Speeds that the shafts reach where the road lets them, as a share of the critical speed",
                List.of(
                        Column.ofText("shaft", "shaft"),
                        Column.ofFigures("shaftSpeed", "shaft speed"),
                        Column.ofFigures("share", "share")),
                rows);
    }

    private static Grid modes(List<CriticalSpeedAnswer.Shaft> shafts) {
        List<List<Cell>> rows = new ArrayList<>();
        for (CriticalSpeedAnswer.Shaft shaft : shafts) {
            int number = 1;
            for (BeamMode mode : shaft.critical().modes()) {
                rows.add(List.of(
                        Cell.of(shaft.place().label() + " " + number),
                        Cell.of(Figure.of(mode.frequency(), Display.FREQUENCY)),
                        Cell.of(rotation(mode.speed())),
                        Cell.of(mode.isBending() ? "bends" : "bounces on the center bearing's mount")));
                number++;
            }
        }
        return new Grid(
                "modes",
                "Natural frequencies of bending",
                List.of(
                        Column.ofText("mode", "mode"),
                        Column.ofFigures("frequency", "frequency"),
                        Column.ofFigures("shaftSpeed", "shaft speed"),
                        Column.ofText("kind", "the shaft")),
                rows);
    }

    private static Figure rotation(AngularSpeed speed) {
        return Figure.of(speed, Display.ROTATION);
    }
}
