package drivetrain.assessment;

import drivetrain.driveshaft.CriticalSpeed;
import drivetrain.driveshaft.Driveshaft;
import drivetrain.driveshaft.InstalledShaft;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.driveshaft.ShaftSpeed;
import drivetrain.driveshaft.ShaftSpeedChecks;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.quantity.Angle;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Holds the speeds at which a shaft is judged against its critical speed. */
final class ShaftWhirl {

    private static final Source RULE = Source.derived("first bending mode of the shaft between its joint centers");

    private ShaftWhirl() {}

    /** The critical speed of a shaft, or why a shaft of these lengths cannot be. */
    static Outcome<CriticalSpeed> critical(ShaftPlace place, Driveshaft shaft, List<Length> lengths) {
        try {
            return CriticalSpeed.of(shaft, lengths);
        } catch (RefusedException impossible) {
            Refusal why = impossible.refusal();
            return Outcome.notEvaluated(
                    "the " + place.label() + " " + why.subject() + " " + why.given() + " " + why.problem());
        }
    }

    static List<Finding> findings(
            InstalledShaft installed, Outcome<CriticalSpeed> critical, List<ShaftAnswer.Motion> motions) {
        String which = installed.place().label();
        return critical.fold(
                known -> findings(which, known, motions, Optional.of(ShaftLengths.greatestBend(installed))),
                reason -> List.of(Finding.notEvaluated(which + " shaft, critical speed", reason, RULE)));
    }

    private static List<Finding> findings(
            String which, CriticalSpeed critical, List<ShaftAnswer.Motion> motions, Optional<Angle> widest) {
        List<Finding> findings = new ArrayList<>();
        for (ShaftAnswer.Motion at : motions) {
            AngularSpeed turning = at.motion().speed();
            ShaftSpeed speed = at.held() ? ShaftSpeed.held(at.when(), turning) : ShaftSpeed.reached(at.when(), turning);
            findings.add(ShaftSpeedChecks.critical(which, critical.speed(), speed));
            if (speed.held()) {
                findings.add(ShaftSpeedChecks.half(which, critical.speed(), speed, widest));
                critical.bounce().ifPresent(bounce -> findings.add(ShaftSpeedChecks.bounce(which, bounce, speed)));
            }
        }
        return findings;
    }
}
