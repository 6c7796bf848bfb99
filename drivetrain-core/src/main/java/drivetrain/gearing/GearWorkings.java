package drivetrain.gearing;

import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.Speed;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How speeds and ratios are worked out, as text; made only when asked for. */
final class GearWorkings {

    static final Source KINEMATICS = Source.derived("wheels that roll without slip turn by the gear ratios alone");
    private static final String GIVEN = "given";

    private GearWorkings() {}

    static Working totalRatio(DriveGear gear) {
        return withTotalRatio(Working.of("total ratio in " + gear.label()), gear)
                .build();
    }

    static Working roadSpeed(DriveGear gear, AngularSpeed engine, Length radius) {
        AngularSpeed wheel = engine.dividedBy(gear.totalRatio());
        return withTotalRatio(Working.of("road speed in " + gear.label()), gear)
                .input("engine speed", "n_e", rotation(engine), GIVEN)
                .input("rolling radius", "r", Figure.of(radius, Display.DIMENSION), GIVEN)
                .step("wheel speed", "n_w = n_e / i", rotation(wheel))
                .step("road speed", "v = 2 pi n_w r", road(wheel.atRadius(radius)))
                .build();
    }

    static Working engineSpeed(DriveGear gear, Speed speed, Length radius) {
        AngularSpeed engine = gear.engineSpeedAt(speed, radius);
        return withTotalRatio(Working.of("engine speed in " + gear.label()), gear)
                .input("road speed", "v", road(speed), GIVEN)
                .input("rolling radius", "r", Figure.of(radius, Display.DIMENSION), GIVEN)
                .step("wheel speed", "n_w = v / (2 pi r)", rotation(engine.dividedBy(gear.totalRatio())))
                .step("engine speed", "n_e = n_w i", rotation(engine))
                .build();
    }

    static Working driveshaftSpeed(DriveGear gear, AngularSpeed engine) {
        Working.Builder working = Working.of("driveshaft speed in " + gear.label());
        ratioInputs(working, gear.stages().fittedToShaft());
        return working.input("engine speed", "n_e", rotation(engine), GIVEN)
                .step(
                        "engine turns for one of the driveshaft",
                        "i_s = " + product(gear.stages().fittedToShaft()),
                        ratio(gear.shaftRatio()))
                .step("driveshaft speed", "n_s = n_e / i_s", rotation(gear.driveshaftSpeedAt(engine)))
                .source(KINEMATICS)
                .build();
    }

    static Working.Builder withTotalRatio(Working.Builder working, DriveGear gear) {
        ratioInputs(working, gear.stages().fitted());
        return working.step("total ratio", "i = " + product(gear.stages().fitted()), ratio(gear.totalRatio()))
                .source(KINEMATICS);
    }

    static void ratioInputs(Working.Builder working, Stream<Stage> stages) {
        stages.forEach(stage ->
                working.input(stage.name(), stage.symbol(), stage.ratio().figure(), stage.part()));
    }

    static String product(Stream<Stage> stages) {
        return stages.map(Stage::symbol).collect(Collectors.joining(" x "));
    }

    static Figure ratio(double value) {
        return Figure.plain(value, 3);
    }

    static Figure rotation(AngularSpeed speed) {
        return Figure.of(speed, Display.ROTATION);
    }

    static Figure road(Speed speed) {
        boolean walkingPace = speed.toMilesPerHour() < 10.0;
        return Figure.of(speed, walkingPace ? Display.CRAWL_SPEED : Display.ROAD_SPEED);
    }
}
