package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.engine.Engine;
import drivetrain.engine.OperatingPoint;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.gearing.AxleShare;
import drivetrain.gearing.AxleTie;
import drivetrain.gearing.DriveGear;
import drivetrain.gearing.GearTrain;
import drivetrain.gearing.GearingCautions;
import drivetrain.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The torque that the engine can send to the wheels in each gear, at the engine speed of its greatest torque.
 *
 * <p>It is what the engine can send, not what grip can take.
 *
 * @param engine the engine
 * @param peak the point of the engine's greatest torque
 * @param tie how the transfer case ties the axles together
 * @param stallMultiplication the torque ratio of the converter at stall; 1 with a clutch, empty where it is not known
 * @param rows the gears, from the shortest to the tallest, then reverse
 */
public record WheelTorqueAnswer(
        Engine engine, OperatingPoint peak, AxleTie tie, OptionalDouble stallMultiplication, List<Row> rows)
        implements Answer {

    /**
     * The torque in one gear.
     *
     * @param gear the gear
     * @param driveshaft the torque of all driveshafts together
     * @param halfShafts the torque of all half-shafts together, ahead of a hub reduction
     * @param wheels the torque of all driven wheels together, and what one axle may have to carry of it
     */
    public record Row(DriveGear gear, Torque driveshaft, Torque halfShafts, AxleShare wheels) {}

    /** Copies the rows. */
    public WheelTorqueAnswer {
        rows = List.copyOf(rows);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing; no tire is needed
     */
    public static Outcome<WheelTorqueAnswer> of(Combination combination) {
        return combination
                .gearTrain()
                .then(train -> combination
                        .needEngine()
                        .then(engine -> engine.peakTorque().map(peak -> answer(engine, peak, train))));
    }

    private static WheelTorqueAnswer answer(Engine engine, OperatingPoint peak, GearTrain train) {
        AxleTie tie = train.transferCase().tie();
        List<DriveGear> gears = new ArrayList<>(train.byTotalRatio());
        train.gears().stream().filter(DriveGear::reverse).forEach(gears::add);
        List<Row> rows = new ArrayList<>();
        for (DriveGear gear : gears) {
            rows.add(new Row(
                    gear,
                    gear.driveshaftTorque(peak.torque()),
                    gear.halfShaftTorque(peak.torque()),
                    AxleShare.of(tie, gear.wheelTorque(peak.torque()))));
        }
        return new WheelTorqueAnswer(
                engine, peak, tie, train.transmission().coupling().stallMultiplication(), rows);
    }

    @Override
    public List<Assumption> assumptions() {
        List<Assumption> all = new ArrayList<>(engine.assumptions());
        for (Row row : rows) {
            for (Assumption assumption : row.gear().efficiencyAssumptions()) {
                if (!all.contains(assumption)) {
                    all.add(assumption);
                }
            }
        }
        return all;
    }

    @Override
    public List<Finding> findings() {
        return engine.findings();
    }

    @Override
    public List<Caution> cautions() {
        return GearingCautions.of(tie);
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of("wheel torque in each gear at the engine's greatest torque");
        engine.peakTorqueWorking().value().ifPresent(working::from);
        rows.forEach(row -> working.from(row.gear().wheelTorqueWorking(peak.torque())));
        return working.build();
    }
}
