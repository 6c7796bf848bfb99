package drivetrain.repl.command.ask;

import drivetrain.assessment.TravelAnswer;
import drivetrain.combination.Combination;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.driveshaft.ShaftTravel;
import drivetrain.finding.Outcome;
import drivetrain.repl.command.Arguments;
import drivetrain.report.Report;
import drivetrain.report.TravelPlot;
import java.util.List;
import java.util.Optional;

/** {@code plot travel}: a driveshaft over the travel of its axle; the rear one, unless the front one is asked for or alone is there. */
final class TravelDrawing {

    private TravelDrawing() {}

    static Report of(Combination combination, Arguments arguments) {
        Optional<ShaftPlace> asked = ShaftWords.read(arguments, "plot travel [front|rear]");
        Outcome<TravelAnswer> answer = TravelAnswer.of(combination);
        List<ShaftPlace> there = answer.value().map(TravelAnswer::travels).orElse(List.of()).stream()
                .map(ShaftTravel::installed)
                .map(installed -> installed.place())
                .toList();
        ShaftPlace wanted = asked.orElse(there.contains(ShaftPlace.REAR) ? ShaftPlace.REAR : ShaftPlace.FRONT);
        return Drawn.of(
                there.contains(wanted)
                        ? answer.map(travels -> TravelPlot.of(travels, wanted))
                        : Outcome.notEvaluated(why(answer, combination, wanted)));
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
