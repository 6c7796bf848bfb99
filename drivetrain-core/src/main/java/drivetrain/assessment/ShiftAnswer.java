package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.engine.Engine;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.gearing.GearTrain;
import drivetrain.gearing.Range;
import drivetrain.gearing.RangeOverlap;
import drivetrain.gearing.UpshiftTable;
import drivetrain.quantity.AngularSpeed;
import java.util.List;

/**
 * The steps between the gears and the engine speed after each upshift.
 *
 * @param high the upshifts in the high range
 * @param overlap where the gears of the low range lie among those of the high range
 */
public record ShiftAnswer(UpshiftTable high, RangeOverlap overlap) implements Answer {

    /**
     * Asks, shifting at an engine speed.
     *
     * @param combination the drivetrain package
     * @param shiftSpeed the engine speed at which each shift is made, greater than zero
     * @return the answer, or what is missing
     * @throws drivetrain.refusal.RefusedException if the engine speed is not greater than zero
     */
    public static Outcome<ShiftAnswer> at(Combination combination, AngularSpeed shiftSpeed) {
        shiftSpeed.requirePositive("shift speed");
        return combination.gearTrain().map(train -> answer(train, shiftSpeed));
    }

    /**
     * Asks, shifting at the engine's maximum speed.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing
     */
    public static Outcome<ShiftAnswer> atMaximum(Combination combination) {
        return combination.needEngine().map(Engine::maximumSpeed).then(maximum -> at(combination, maximum));
    }

    private static ShiftAnswer answer(GearTrain train, AngularSpeed shiftSpeed) {
        return new ShiftAnswer(UpshiftTable.of(train, Range.HIGH, shiftSpeed), RangeOverlap.of(train));
    }

    @Override
    public List<Assumption> assumptions() {
        return List.of();
    }

    @Override
    public List<Finding> findings() {
        return List.of();
    }

    @Override
    public List<Caution> cautions() {
        return List.of();
    }

    @Override
    public Working working() {
        return high.working();
    }
}
