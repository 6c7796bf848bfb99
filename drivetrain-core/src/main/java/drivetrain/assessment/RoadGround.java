package drivetrain.assessment;

import drivetrain.atmosphere.Air;
import drivetrain.combination.Combination;
import drivetrain.combination.RoadData;
import drivetrain.combination.Vehicle;
import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.quantity.Area;
import drivetrain.quantity.Mass;
import drivetrain.road.AxleBalance;
import drivetrain.road.RoadLoad;
import drivetrain.road.Surface;
import drivetrain.table.ReferenceTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What answers about the road take from a combination, and what they assume where it says nothing. */
final class RoadGround {

    private static final Surface USUAL = Surface.parse("asphalt");
    private static final Assumption NO_SURFACE = Assumption.of(
            "surface",
            "no surface is named: dry asphalt is taken",
            Source.commonPractice("most miles are driven on asphalt"));
    private static final Assumption NO_AIR = Assumption.of(
            "air",
            "no air is named: the standard air at sea level is taken, 15 degC",
            Source.standard("ISO 2533:1975 Standard Atmosphere"));
    private static final Assumption STILL_AIR =
            Assumption.of("wind", "the air is still", Source.derived("no wind is named"));

    private RoadGround() {}

    /** The hint is made when a drag area is missing, not before. */
    private static final class Hint {
        static final String DRAG_AREA =
                "the vehicle's drag area is not given; type it behind the vehicle, such as drag 1.4 m2 (from memory: "
                        + ReferenceTable.load("road/drag-area.csv").rows().stream()
                                .map(row -> row.text("body") + " " + row.text("from") + " to " + row.text("to") + " m2")
                                .collect(Collectors.joining(", "))
                        + ")";
    }

    static Outcome<Mass> mass(Combination combination) {
        return combination
                .needVehicle()
                .map(Vehicle::mass)
                .then(known -> Outcome.of(
                        known, "the vehicle's mass is not given; type it behind the vehicle, such as mass 2240 kg"));
    }

    static Outcome<Area> dragArea(Combination combination) {
        return combination
                .needVehicle()
                .then(vehicle -> vehicle.road()
                        .dragArea()
                        .<Outcome<Area>>map(Outcome::of)
                        .orElseGet(() -> Outcome.notEvaluated(Hint.DRAG_AREA)));
    }

    static Surface surface(Combination combination) {
        return combination.surface().orElse(USUAL);
    }

    static Air air(Combination combination) {
        return combination.air().orElseGet(Air::standard);
    }

    /** The resistance on the level in still air. */
    static Outcome<RoadLoad> load(Combination combination) {
        return mass(combination)
                .then(mass -> dragArea(combination)
                        .map(area -> RoadLoad.level(
                                mass,
                                surface(combination),
                                area,
                                air(combination).density())));
    }

    /** How the weight divides between the axles. */
    static Outcome<AxleBalance> balance(Combination combination) {
        return mass(combination).then(mass -> {
            RoadData data = combination.needVehicle().orThrow().road();
            List<String> missing = new ArrayList<>();
            require(missing, data.wheelbase().isPresent(), "wheelbase 2850 mm");
            require(missing, data.centerOfGravity().isPresent(), "cg 760 mm");
            require(missing, data.frontShare().isPresent(), "split 54 %");
            if (!missing.isEmpty()) {
                return Outcome.notEvaluated(
                        "the vehicle lacks its balance; type behind the vehicle, such as " + String.join(" ", missing));
            }
            return Outcome.of(new AxleBalance(
                    mass,
                    data.frontShare().getAsDouble(),
                    data.wheelbase().orElseThrow(),
                    data.centerOfGravity().orElseThrow()));
        });
    }

    private static void require(List<String> missing, boolean present, String words) {
        if (!present) {
            missing.add(words);
        }
    }

    static List<Assumption> loadAssumptions(Combination combination) {
        List<Assumption> all = new ArrayList<>();
        surfaceAssumption(combination).ifPresent(all::add);
        all.addAll(surface(combination).rollingAssumptions());
        if (combination.air().isEmpty()) {
            all.add(NO_AIR);
        }
        all.add(STILL_AIR);
        return all;
    }

    static Optional<Assumption> surfaceAssumption(Combination combination) {
        return combination.surface().isEmpty() ? Optional.of(NO_SURFACE) : Optional.empty();
    }
}
