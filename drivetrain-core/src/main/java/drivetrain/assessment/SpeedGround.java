package drivetrain.assessment;

import drivetrain.finding.Assumption;
import drivetrain.gearing.GearTrain;
import drivetrain.tire.RollingCircumference;
import java.util.ArrayList;
import java.util.List;

/** What a speed rests on: how far the tire rolls in a turn, and what the gear train leaves open. */
final class SpeedGround {

    private SpeedGround() {}

    static List<Assumption> of(RollingCircumference rolling, GearTrain train) {
        List<Assumption> all = new ArrayList<>(rolling.assumptions());
        all.addAll(train.speedAssumptions());
        return all;
    }
}
