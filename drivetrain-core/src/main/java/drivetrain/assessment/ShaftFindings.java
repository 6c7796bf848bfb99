package drivetrain.assessment;

import drivetrain.combination.ShaftChoice;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import java.util.ArrayList;
import java.util.List;

/** The findings of the driveshafts among those of the whole package. */
final class ShaftFindings {

    private ShaftFindings() {}

    /** A package without a driveshaft is not asked about it; one with some of what is needed is told what is missing. */
    static List<Finding> of(
            ShaftGround ground,
            Outcome<ShaftsAnswer> shafts,
            Outcome<CriticalSpeedAnswer> critical,
            Outcome<StrengthAnswer> strength) {
        List<Finding> findings = new ArrayList<>();
        shafts.value().ifPresent(answer -> findings.addAll(answer.findings()));
        critical.value().ifPresent(answer -> findings.addAll(answer.findings()));
        strength.value().ifPresent(answer -> findings.addAll(answer.findings()));
        for (ShaftPlace place : ShaftPlace.values()) {
            ShaftChoice choice = ground.combination().shaft(place);
            if (choice.shaft().isPresent()) {
                choice.installed().reason().ifPresent(why -> findings.add(ShaftAnswer.missing(place, why)));
                ground.critical(place).reason().ifPresent(why -> findings.add(ShaftWhirl.missing(place, why)));
                ShaftTorques.of(ground, place)
                        .reason()
                        .ifPresent(why -> findings.add(StrengthAnswer.missing(place, why)));
            }
        }
        return findings;
    }
}
