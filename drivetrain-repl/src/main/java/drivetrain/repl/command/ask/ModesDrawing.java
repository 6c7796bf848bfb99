package drivetrain.repl.command.ask;

import drivetrain.assessment.CriticalSpeedAnswer;
import drivetrain.combination.Combination;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.finding.Outcome;
import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Line;
import drivetrain.report.ModesPlot;
import drivetrain.report.Report;
import java.util.List;

/** {@code plot modes}: how a driveshaft bends; the rear one, unless the front one is asked for or alone is there. */
final class ModesDrawing {

    private ModesDrawing() {}

    static Report of(Combination combination, Arguments arguments) {
        arguments.requireAtMost(1, "plot modes [front|rear]");
        boolean front = !arguments.isEmpty() && arguments.get(0).isAny("front");
        boolean rear = !arguments.isEmpty() && arguments.get(0).isAny("rear");
        if (!arguments.isEmpty() && !front && !rear) {
            throw arguments
                    .refuse(0, "is not one of the two shafts")
                    .allowing("front or rear")
                    .asException();
        }
        Outcome<CriticalSpeedAnswer> answer = CriticalSpeedAnswer.of(combination);
        List<CriticalSpeedAnswer.Shaft> shafts =
                answer.value().map(CriticalSpeedAnswer::shafts).orElse(List.of());
        boolean onlyFront = shafts.size() == 1 && shafts.get(0).place() == ShaftPlace.FRONT;
        ShaftPlace wanted = front || (!rear && onlyFront) ? ShaftPlace.FRONT : ShaftPlace.REAR;
        return shafts.stream()
                .filter(shaft -> shaft.place() == wanted)
                .findFirst()
                .map(shaft -> ModesPlot.of(answer.orThrow(), shaft))
                .orElseThrow(() -> Refusal.of("plot", "", "not evaluated because " + why(answer, wanted))
                        .in(Line.place(0))
                        .asException());
    }

    private static String why(Outcome<CriticalSpeedAnswer> answer, ShaftPlace wanted) {
        return answer.reason()
                .orElseGet(() -> answer.orThrow().missing().stream()
                        .filter(reason -> reason.contains(wanted.label() + " shaft"))
                        .findFirst()
                        .orElse("no " + wanted.label() + " shaft is chosen"));
    }
}
