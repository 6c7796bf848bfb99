package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.Vehicle;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Mass;
import drivetrain.tire.OverallDiameter;
import drivetrain.tire.RollingCircumference;
import drivetrain.tire.Tire;
import drivetrain.tire.TireCautions;
import drivetrain.tire.TireChecks;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The tire: how large it is, how far it rolls in a turn, and whether it carries its axle.
 *
 * @param tire the tire of the rear axle, and of the front axle unless that differs
 * @param frontTire the tire of the front axle
 * @param overallDiameter the overall diameter of the rear tire, or why it is not known
 * @param rolling the rolling circumference of the rear tire, or why it is not known
 * @param findings load, size and consistency of the tires
 */
public record TireAnswer(
        Tire tire,
        Tire frontTire,
        Outcome<OverallDiameter> overallDiameter,
        Outcome<RollingCircumference> rolling,
        List<Finding> findings)
        implements Answer {

    private static final Source LOAD_RULE = Source.standard("ISO 4000-1, UN Regulations 30 and 54: load index");

    /** Copies the findings. */
    public TireAnswer {
        findings = List.copyOf(findings);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @return the answer, or that no tire is chosen
     */
    public static Outcome<TireAnswer> of(Combination combination) {
        return combination.needTire().map(rear -> {
            Tire front = combination.frontTire().orElseThrow().item();
            return new TireAnswer(
                    rear, front, rear.overallDiameter(), rear.rolling(), checks(combination, rear, front));
        });
    }

    private static List<Finding> checks(Combination combination, Tire rear, Tire front) {
        Outcome<Vehicle> vehicle = combination.needVehicle();
        List<Finding> findings = new ArrayList<>();
        findings.add(load("front", front, vehicle.map(Vehicle::frontAxleLoad), false));
        findings.add(load(
                "rear",
                rear,
                vehicle.map(Vehicle::rearAxleLoad),
                vehicle.value().map(Vehicle::dualRearWheels).orElse(false)));
        findings.addAll(TireChecks.consistency("rear", rear));
        if (!front.equals(rear)) {
            findings.addAll(TireChecks.consistency("front", front));
            findings.add(TireChecks.sameDiameter(front, rear));
        }
        return findings;
    }

    private static Finding load(String where, Tire tire, Outcome<Optional<Mass>> axleLoad, boolean dual) {
        return axleLoad.then(known -> Outcome.of(known, "the vehicle's axle load is not given"))
                .fold(
                        load -> TireChecks.load(where, tire, load, dual),
                        reason -> Finding.notEvaluated(where + " tire load", reason, LOAD_RULE));
    }

    @Override
    public List<Assumption> assumptions() {
        List<Assumption> all = new ArrayList<>();
        overallDiameter.value().ifPresent(known -> all.addAll(known.assumptions()));
        rolling.value()
                .ifPresent(known -> known.assumptions().stream()
                        .filter(assumption -> !all.contains(assumption))
                        .forEach(all::add));
        return all;
    }

    @Override
    public List<Caution> cautions() {
        return TireCautions.all();
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of("size and rolling circumference of the tire");
        overallDiameter.value().ifPresent(known -> working.from(known.working()));
        rolling.value().ifPresent(known -> working.from(known.working()));
        return working.build();
    }
}
