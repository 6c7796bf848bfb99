package drivetrain.gearing;

import drivetrain.finding.Assumption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The stages from engine to wheel in the order in which the torque passes them.
 *
 * @param gear the transmission in its gear
 * @param auxiliary the auxiliary unit, engaged or not
 * @param range the transfer case in its range
 * @param axle the final drive
 * @param hub the hub reduction
 */
public record Stages(Stage gear, Stage auxiliary, Stage range, Stage axle, Stage hub) {

    /**
     * Returns the stages as a list.
     *
     * @return five stages, engine side first
     */
    public List<Stage> all() {
        return List.of(gear, auxiliary, range, axle, hub);
    }

    double outputRatio() {
        return gear.ratio().value();
    }

    double shaftRatio() {
        return gear.ratio().value() * auxiliary.ratio().value() * range.ratio().value();
    }

    double axleRatio() {
        return shaftRatio() * axle.ratio().value();
    }

    double totalRatio() {
        return axleRatio() * hub.ratio().value();
    }

    double shaftEfficiency() {
        return gear.efficiency().value()
                * auxiliary.efficiency().value()
                * range.efficiency().value();
    }

    double axleEfficiency() {
        return shaftEfficiency() * axle.efficiency().value();
    }

    double totalEfficiency() {
        return axleEfficiency() * hub.efficiency().value();
    }

    List<Assumption> efficiencyAssumptions() {
        return all().stream()
                .map(Stage::defaulted)
                .flatMap(Optional::stream)
                .map(MeshStage::assumption)
                .toList();
    }

    /** The stages from engine to driveshaft that are there, so that a working does not speak of parts that are not fitted. */
    Stream<Stage> fittedToShaft() {
        return Stream.concat(Stream.of(gear), Stream.of(auxiliary, range).filter(stage -> !stage.isAbsent()));
    }

    /** The stages from engine to wheel that are there. */
    Stream<Stage> fitted() {
        Stream<Stage> behindShaft = hub.isAbsent() ? Stream.of(axle) : Stream.of(axle, hub);
        return Stream.concat(fittedToShaft(), behindShaft);
    }
}
