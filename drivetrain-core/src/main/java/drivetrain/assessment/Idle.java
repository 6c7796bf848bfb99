package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.quantity.AngularSpeed;

/** The idle speed of the engine, which a catalog may leave out. */
final class Idle {

    private Idle() {}

    static Outcome<AngularSpeed> of(Combination combination) {
        return combination
                .needEngine()
                .then(engine -> Outcome.of(engine.idle(), "the engine's idle speed is not given"));
    }
}
