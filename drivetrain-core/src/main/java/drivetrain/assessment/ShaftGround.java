package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.driveshaft.CriticalSpeed;
import drivetrain.driveshaft.ShaftHouse;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import java.util.EnumMap;
import java.util.Map;

/** What the questions about the driveshafts have in common, each worked out once. */
final class ShaftGround {

    /** What a speed rests on that power sets. */
    static final Assumption TOP_SPEED = Assumption.flagged(
            "top speed of the shafts",
            "the top speed is that of \"top\", on the level and in still air, with what is assumed there; downhill the shafts turn faster",
            Source.derived("driving force against road load"));

    private final Combination combination;
    private final Outcome<TopAnswer> top;
    private final Outcome<LoadsAnswer> loads;
    private final ShaftHouse house;
    private final Map<ShaftPlace, Outcome<CriticalSpeed>> critical = new EnumMap<>(ShaftPlace.class);

    private ShaftGround(Combination combination, Outcome<TopAnswer> top, Outcome<LoadsAnswer> loads) {
        this.combination = combination;
        this.top = top;
        this.loads = loads;
        this.house = combination.limits().driveshafts();
    }

    static ShaftGround of(Combination combination) {
        return new ShaftGround(combination, TopAnswer.of(combination), LoadsAnswer.of(combination));
    }

    static ShaftGround of(Combination combination, Outcome<TopAnswer> top, Outcome<LoadsAnswer> loads) {
        return new ShaftGround(combination, top, loads);
    }

    Combination combination() {
        return combination;
    }

    /** The speed that the vehicle really reaches. */
    Outcome<TopAnswer> top() {
        return top;
    }

    /** The torque in every part. */
    Outcome<LoadsAnswer> loads() {
        return loads;
    }

    /** The limits of the shop. */
    ShaftHouse house() {
        return house;
    }

    /** The critical speed of a shaft, or what is missing for it. */
    Outcome<CriticalSpeed> critical(ShaftPlace place) {
        return critical.computeIfAbsent(place, each -> CriticalSpeedAnswer.critical(combination.shaft(each)));
    }
}
