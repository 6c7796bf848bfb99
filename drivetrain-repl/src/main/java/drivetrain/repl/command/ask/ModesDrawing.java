package drivetrain.repl.command.ask;

import drivetrain.assessment.CriticalSpeedAnswer;
import drivetrain.combination.Combination;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.finding.Outcome;
import drivetrain.repl.command.Arguments;
import drivetrain.report.ModesPlot;
import drivetrain.report.Report;
import java.util.List;
import java.util.Optional;

/** {@code plot modes}: how a driveshaft bends; the rear one, unless the front one is asked for or alone is there. */
final class ModesDrawing {

    private ModesDrawing() {}

    static Report of(Combination combination, Arguments arguments) {
        Optional<ShaftPlace> asked = ShaftWords.read(arguments, "plot modes [front|rear]");
        Outcome<CriticalSpeedAnswer> answer = CriticalSpeedAnswer.of(combination);
        List<CriticalSpeedAnswer.Shaft> shafts =
                answer.value().map(CriticalSpeedAnswer::shafts).orElse(List.of());
        boolean onlyFront = shafts.size() == 1 && shafts.get(0).place() == ShaftPlace.FRONT;
        ShaftPlace wanted = asked.orElse(onlyFront ? ShaftPlace.FRONT : ShaftPlace.REAR);
        Optional<Report> drawing = shafts.stream()
                .filter(shaft -> shaft.place() == wanted)
                .findFirst()
                .map(shaft -> ModesPlot.of(answer.orThrow(), shaft));
        return Drawn.of(drawing.map(Outcome::of).orElseGet(() -> Outcome.notEvaluated(why(answer, wanted))));
    }

    private static String why(Outcome<CriticalSpeedAnswer> answer, ShaftPlace wanted) {
        return answer.reason()
                .orElseGet(() -> answer.orThrow().missing().stream()
                        .filter(reason -> reason.contains(wanted.label() + " shaft"))
                        .findFirst()
                        .orElse("no " + wanted.label() + " shaft is chosen"));
    }
}
