package drivetrain.repl.command.choose;

import drivetrain.assessment.EngineAnswer;
import drivetrain.assessment.TankAnswer;
import drivetrain.assessment.TireAnswer;
import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.finding.Outcome;
import drivetrain.repl.session.Session;
import drivetrain.report.EngineReport;
import drivetrain.report.Report;
import drivetrain.report.SetupReport;
import drivetrain.report.TankReport;
import drivetrain.report.TireReport;
import java.util.List;
import java.util.Optional;

/** What is chosen at present: for an engine or a tire with its figures. */
final class PresentChoice {

    private PresentChoice() {}

    static Report of(Session session, List<Slot> slots) {
        Combination combination = session.combination();
        Outcome<Report> figures = switch (slots.get(0)) {
            case ENGINE -> EngineAnswer.of(combination).map(answer -> EngineReport.of(answer, session.units()));
            case TANK -> TankAnswer.of(combination).map(answer -> TankReport.of(answer, session.units()));
            case TIRE -> TireAnswer.of(combination).map(answer -> TireReport.of(answer, session.units()));
            default -> Outcome.notEvaluated("it has no figures of its own");
        };
        Optional<Report> found = figures.value();
        return found.orElseGet(() -> SetupReport.of(combination, slots));
    }

    /** Says what has just been chosen. */
    static String notice(Session session, Slot slot) {
        return session.specification()
                .choice(slot)
                .map(text -> slot.word() + ": " + text)
                .orElse(slot.word() + ": none");
    }
}
