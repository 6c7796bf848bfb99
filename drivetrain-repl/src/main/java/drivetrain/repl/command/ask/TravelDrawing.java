package drivetrain.repl.command.ask;

import drivetrain.assessment.TravelAnswer;
import drivetrain.combination.Combination;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.driveshaft.ShaftTravel;
import drivetrain.finding.Outcome;
import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Line;
import drivetrain.report.Report;
import drivetrain.report.TravelPlot;
import java.util.List;

/** {@code plot travel}: a driveshaft over the travel of its axle; the rear one, unless the front one is asked for or alone is there. */
final class TravelDrawing {

    private static final String ALLOWED = "front or rear";

    private TravelDrawing() {}

    static Report of(Combination combination, Arguments arguments) {
        if (arguments.size() > 1) {
            arguments.from(1).requireAtMost(0, "plot travel [front|rear]");
        }
        boolean front = !arguments.isEmpty() && arguments.get(0).isAny("front");
        boolean rear = !arguments.isEmpty() && arguments.get(0).isAny("rear");
        if (!arguments.isEmpty() && !front && !rear) {
            throw arguments
                    .refuse(0, "is not one of the two shafts")
                    .allowing(ALLOWED)
                    .asException();
        }
        Outcome<TravelAnswer> answer = TravelAnswer.of(combination);
        List<ShaftPlace> there = answer.value().map(TravelAnswer::travels).orElse(List.of()).stream()
                .map(ShaftTravel::installed)
                .map(installed -> installed.place())
                .toList();
        ShaftPlace wanted = front || (!rear && !there.contains(ShaftPlace.REAR)) ? ShaftPlace.FRONT : ShaftPlace.REAR;
        if (!there.contains(wanted)) {
            throw Refusal.of("plot", "", "not evaluated because " + why(answer, combination, wanted))
                    .in(Line.place(0))
                    .asException();
        }
        return TravelPlot.of(answer.orThrow(), wanted);
    }

    private static String why(Outcome<TravelAnswer> answer, Combination combination, ShaftPlace wanted) {
        return answer.reason()
                .orElseGet(() -> combination
                        .shaft(wanted)
                        .installed()
                        .reason()
                        .orElseGet(() -> combination
                                .shaft(wanted)
                                .needSuspension()
                                .reason()
                                .orElse("its suspension cannot follow its travel")));
    }
}
