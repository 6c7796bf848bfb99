package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.gearing.Coupling;
import drivetrain.gearing.DriveGear;
import drivetrain.gearing.GearTrain;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.Speed;
import drivetrain.tire.RollingCircumference;
import drivetrain.tire.TireCautions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How fast the engine turns at a road speed.
 *
 * @param speed the road speed
 * @param gear the gear
 * @param engineSpeed the engine speed with clutch or converter locked
 * @param unlocked the engine speed with the converter open; empty with a clutch, or where its slip is not known
 * @param driveshaftSpeed the speed of the driveshaft
 * @param everyGear the engine speed in every forward gear of the same range, lowest gear first
 * @param rolling the rolling circumference that the engine speed rests on
 * @param coupling what stands between engine and transmission
 * @param assumptions what the rolling circumference, the axle ratio and the state of the converter rest on
 * @param findings whether the engine lugs or screams there, and whether the tire may go that fast
 */
public record CruiseAnswer(
        Speed speed,
        DriveGear gear,
        AngularSpeed engineSpeed,
        Optional<AngularSpeed> unlocked,
        AngularSpeed driveshaftSpeed,
        List<Row> everyGear,
        RollingCircumference rolling,
        Coupling coupling,
        List<Assumption> assumptions,
        List<Finding> findings)
        implements Answer {

    /**
     * The engine speed in one gear.
     *
     * @param gear the gear
     * @param engineSpeed the engine speed with clutch or converter locked
     */
    public record Row(DriveGear gear, AngularSpeed engineSpeed) {}

    /** Copies the lists. */
    public CruiseAnswer {
        everyGear = List.copyOf(everyGear);
        assumptions = List.copyOf(assumptions);
        findings = List.copyOf(findings);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @param speed the road speed, greater than zero
     * @param choice the gear
     * @return the answer, or what is missing
     * @throws drivetrain.refusal.RefusedException if the road speed is not greater than zero
     */
    public static Outcome<CruiseAnswer> at(Combination combination, Speed speed, GearChoice choice) {
        speed.requirePositive("road speed");
        return Rolling.of(combination)
                .then(rolling -> combination
                        .gearTrain()
                        .then(train -> choice.in(train).map(gear -> answer(combination, speed, train, gear, rolling))));
    }

    private static CruiseAnswer answer(
            Combination combination, Speed speed, GearTrain train, DriveGear gear, RollingCircumference rolling) {
        Length radius = rolling.radius();
        AngularSpeed engineSpeed = gear.engineSpeedAt(speed, radius);
        Coupling coupling = train.transmission().coupling();
        List<Row> rows = new ArrayList<>();
        for (DriveGear other : train.gears()) {
            if (!other.reverse() && other.range() == gear.range() && other.overdrive() == gear.overdrive()) {
                rows.add(new Row(other, other.engineSpeedAt(speed, radius)));
            }
        }
        return new CruiseAnswer(
                speed,
                gear,
                engineSpeed,
                coupling.slipping(engineSpeed),
                gear.driveshaftSpeedAt(engineSpeed),
                rows,
                rolling,
                coupling,
                SpeedGround.of(rolling, train),
                CruiseChecks.of(combination, speed, engineSpeed));
    }

    @Override
    public List<Caution> cautions() {
        return TireCautions.all();
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of(
                        "engine speed at " + speed.format(Speed.MILE_PER_HOUR, 1) + " in " + gear.label())
                .from(rolling.working())
                .from(gear.engineSpeedWorking(speed, rolling.radius()));
        unlocked.ifPresent(open -> working.input(
                        "speed ratio of the converter", "s", Figure.plain(engineSpeed.ratioTo(open), 3), "transmission")
                .step("engine speed, converter slipping", "n_c = n_e / s", Figure.of(open, Display.ROTATION)));
        return working.from(gear.driveshaftSpeedWorking(engineSpeed)).build();
    }
}
