package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.gearing.AxleTie;
import drivetrain.gearing.GearTrain;
import drivetrain.quantity.Force;
import drivetrain.road.DriveLayout;
import drivetrain.road.Grip;
import drivetrain.road.RoadLoad;
import drivetrain.road.Surface;
import java.util.List;
import java.util.Optional;

/**
 * The grip with which a package is driven on the road.
 *
 * @param layout which wheels drive
 * @param force the greatest force that they put down on the level
 * @param grip how it is worked out; empty where only the mass is known
 * @param assumptions what it rests on
 */
public record DriveGrip(DriveLayout layout, Force force, Optional<Grip> grip, List<Assumption> assumptions) {

    private static final Assumption REAR_ON_ROAD = Assumption.of(
            "driven wheels",
            "a part-time front axle is not engaged on a hard road",
            Source.commonPractice("part-time four-wheel drive winds up on a dry road"));

    /** Copies the list. */
    public DriveGrip {
        assumptions = List.copyOf(assumptions);
    }

    /** The grip on the surface of the order; a part-time front axle is engaged on soft ground only. */
    static Outcome<DriveGrip> forRoad(Combination combination, RoadLoad load) {
        Surface surface = RoadGround.surface(combination);
        return combination.gearTrain().then(train -> {
            DriveLayout layout = layout(train, surface);
            List<Assumption> assumptions = partTime(train) && layout == DriveLayout.REAR
                    ? List.of(surface.slidingAssumption(), REAR_ON_ROAD)
                    : List.of(surface.slidingAssumption());
            if (layout == DriveLayout.LOCKED) {
                Force force = Grip.tied(load.mass(), surface.sliding(), load.grade());
                return Outcome.of(new DriveGrip(layout, force, Optional.empty(), assumptions));
            }
            return RoadGround.balance(combination)
                    .map(balance -> new Grip(balance, surface.sliding(), surface.rolling()))
                    .map(grip ->
                            new DriveGrip(layout, grip.greatest(layout, load.grade()), Optional.of(grip), assumptions));
        });
    }

    private static boolean partTime(GearTrain train) {
        return train.transferCase().tie() == AxleTie.PART_TIME;
    }

    private static DriveLayout layout(GearTrain train, Surface surface) {
        return switch (train.transferCase().tie()) {
            case REAR_ONLY -> DriveLayout.REAR;
            case PART_TIME -> surface.hard() ? DriveLayout.REAR : DriveLayout.LOCKED;
            case OPEN -> DriveLayout.OPEN;
            case LOCKED -> DriveLayout.LOCKED;
        };
    }

    /** Every layout in which a transfer case can drive. */
    static List<DriveLayout> layouts(AxleTie tie) {
        return switch (tie) {
            case REAR_ONLY -> List.of(DriveLayout.REAR);
            case PART_TIME -> List.of(DriveLayout.REAR, DriveLayout.LOCKED);
            case OPEN -> List.of(DriveLayout.OPEN, DriveLayout.LOCKED);
            case LOCKED -> List.of(DriveLayout.LOCKED);
        };
    }
}
