package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.engine.Engine;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.gearing.DriveGear;
import drivetrain.gearing.GearTrain;
import drivetrain.gearing.GearingCautions;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Speed;
import drivetrain.tire.RollingCircumference;
import drivetrain.tire.TireCautions;
import java.util.ArrayList;
import java.util.List;

/**
 * How fast each gear of both ranges goes at an engine speed, in reverse and forward, and how fast the driveshaft then turns.
 *
 * @param engineSpeed the engine speed
 * @param rows the gears in reverse, then those forward from the shortest to the tallest
 * @param rolling the rolling circumference that the road speeds rest on
 * @param assumptions what the tire, the axle ratio and the state of the converter leave open
 */
public record RoadSpeedsAnswer(
        AngularSpeed engineSpeed, List<Row> rows, RollingCircumference rolling, List<Assumption> assumptions)
        implements Answer {

    /**
     * One gear.
     *
     * @param gear the gear
     * @param roadSpeed the road speed
     * @param driveshaftSpeed the speed of the driveshaft
     */
    public record Row(DriveGear gear, Speed roadSpeed, AngularSpeed driveshaftSpeed) {}

    /** Copies the rows. */
    public RoadSpeedsAnswer {
        rows = List.copyOf(rows);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Asks at an engine speed.
     *
     * @param combination the drivetrain package
     * @param engineSpeed the engine speed, greater than zero
     * @return the answer, or what is missing
     * @throws drivetrain.refusal.RefusedException if the engine speed is not greater than zero
     */
    public static Outcome<RoadSpeedsAnswer> at(Combination combination, AngularSpeed engineSpeed) {
        engineSpeed.requirePositive("engine speed");
        return Rolling.of(combination)
                .then(rolling -> combination
                        .gearTrain()
                        .map(train -> new RoadSpeedsAnswer(
                                engineSpeed,
                                rows(train, rolling, engineSpeed),
                                rolling,
                                SpeedGround.of(rolling, train))));
    }

    /**
     * Asks at the engine's maximum speed.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing
     */
    public static Outcome<RoadSpeedsAnswer> atMaximum(Combination combination) {
        return combination.needEngine().map(Engine::maximumSpeed).then(maximum -> at(combination, maximum));
    }

    private static List<Row> rows(GearTrain train, RollingCircumference rolling, AngularSpeed engineSpeed) {
        List<DriveGear> gears = new ArrayList<>();
        for (DriveGear gear : train.gears()) {
            if (gear.reverse()) {
                gears.add(gear);
            }
        }
        gears.addAll(train.byTotalRatio());
        List<Row> rows = new ArrayList<>();
        for (DriveGear gear : gears) {
            rows.add(new Row(gear, gear.speedAt(engineSpeed, rolling.radius()), gear.driveshaftSpeedAt(engineSpeed)));
        }
        return rows;
    }

    @Override
    public List<Finding> findings() {
        return List.of();
    }

    @Override
    public List<Caution> cautions() {
        List<Caution> all = new ArrayList<>(TireCautions.all());
        all.addAll(GearingCautions.rotatingShafts());
        return all;
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of("road speed in each gear")
                .from(rolling.working())
                .input("engine speed", "n", Figure.of(engineSpeed, Display.ROTATION), "asked");
        for (Row row : rows) {
            String label = row.gear().label();
            working.input("total ratio, " + label, "i", Figure.plain(row.gear().totalRatio(), 3), "gear train");
        }
        for (Row row : rows) {
            working.step(
                    "road speed, " + row.gear().label(),
                    "v = n · r / i",
                    Figure.of(row.roadSpeed(), Display.ROAD_SPEED));
        }
        return working.source(Source.derived("a wheel that rolls without slip covers its rolling circumference a turn"))
                .build();
    }
}
