package drivetrain.comparison;

import drivetrain.assessment.CriticalSpeedAnswer;
import drivetrain.combination.Combination;
import drivetrain.combination.ShaftChoice;
import drivetrain.driveshaft.CriticalSpeed;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.finding.Outcome;
import drivetrain.quantity.AngularSpeed;
import java.util.Optional;

/**
 * The critical speed of a driveshaft, remembered for the shaft that was asked for last: solving for it takes far longer than any other figure, and packages that
 * are asked one after the other mostly have the same shaft. It depends on nothing but what is chosen for the shaft.
 */
final class LastCritical {

    private record Known(ShaftChoice choice, Outcome<AngularSpeed> speed) {}

    private final ShaftPlace place;
    private volatile Optional<Known> last = Optional.empty();

    LastCritical(ShaftPlace place) {
        this.place = place;
    }

    Outcome<AngularSpeed> of(Combination combination) {
        ShaftChoice choice = combination.shaft(place);
        Optional<Known> known = last.filter(before -> before.choice().equals(choice));
        return known.orElseGet(() -> solve(choice)).speed();
    }

    private Known solve(ShaftChoice choice) {
        Known solved = new Known(choice, CriticalSpeedAnswer.critical(choice).map(CriticalSpeed::speed));
        last = Optional.of(solved);
        return solved;
    }
}
