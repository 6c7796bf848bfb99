package drivetrain.comparison;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.driveshaft.LineSurvey;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.driveshaft.SurveyReading;
import drivetrain.quantity.Angle;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The angles that were read on the line of the rear driveshaft, each off by itself. */
final class UncertainAngles extends Uncertain {

    static final String WORD = "angles";
    static final double MOST_DEGREES = 5.0;

    private final Angle reach;

    UncertainAngles(Angle reach) {
        this.reach = reach;
    }

    @Override
    public String word() {
        return WORD;
    }

    @Override
    public String text(UnitSystem units) {
        return "angles read on the rear shaft line within "
                + Figure.of(reach, Display.JOINT_ANGLE).text(units);
    }

    @Override
    Optional<String> missing(Combination combination) {
        return combination.shaft(ShaftPlace.REAR).installed().reason();
    }

    private static long count(List<SurveyReading> readings) {
        return readings.stream().filter(SurveyReading::isAngle).count();
    }

    @Override
    int ends(Combination combination) {
        return draws(combination);
    }

    @Override
    int draws(Combination combination) {
        return (int)
                count(combination.shaft(ShaftPlace.REAR).needLine().orThrow().readings());
    }

    @Override
    void apply(Map<Slot, Object> items, double[] errors) {
        LineSurvey line = (LineSurvey) items.get(Slot.REAR_LINE);
        if (line == null) {
            return;
        }
        int next = 0;
        for (int i = 0; i < line.readings().size(); i++) {
            // A misread survey has the same readings in the same order.
            SurveyReading reading = line.readings().get(i);
            if (reading.isAngle()) {
                line = reading.misread().apply(reach.toRadians() * errors[next]);
                next++;
            }
        }
        items.put(Slot.REAR_LINE, line);
    }
}
