package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.tire.RollingCircumference;
import drivetrain.tire.Tire;

/** The rolling circumference of the driven wheels: the rear tire's. */
final class Rolling {

    private Rolling() {}

    static Outcome<RollingCircumference> of(Combination combination) {
        return combination.needTire().then(Tire::rolling);
    }
}
