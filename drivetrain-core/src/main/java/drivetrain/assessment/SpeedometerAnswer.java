package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.Vehicle;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.gearing.DrivenGearChoice;
import drivetrain.gearing.GearTrain;
import drivetrain.gearing.GearingCautions;
import drivetrain.gearing.Speedometer;
import drivetrain.gearing.SpeedometerReading;
import drivetrain.quantity.Speed;
import drivetrain.tire.RollingCircumference;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the speedometer shows with this axle and this tire.
 *
 * @param speedometer the speedometer and what it was calibrated for
 * @param train the gear train, whose axle and hubs matter where a driveshaft turns the speedometer
 * @param rolling the rolling circumference of the tire now fitted
 * @param readings what it shows at a row of true speeds
 * @param drivenGears the driven gears that could be fitted instead; empty where it has none
 */
public record SpeedometerAnswer(
        Speedometer speedometer,
        GearTrain train,
        RollingCircumference rolling,
        List<SpeedometerReading> readings,
        Optional<DrivenGearChoice> drivenGears)
        implements Answer {

    private static final List<Speed> SHOWN_AT = List.of(
            Speed.ofKilometersPerHour(40.0),
            Speed.ofKilometersPerHour(80.0),
            Speed.ofKilometersPerHour(120.0),
            Speed.ofMilesPerHour(30.0),
            Speed.ofMilesPerHour(50.0),
            Speed.ofMilesPerHour(65.0),
            Speed.ofMilesPerHour(75.0));

    /** Copies the readings. */
    public SpeedometerAnswer {
        readings = List.copyOf(readings);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing
     */
    public static Outcome<SpeedometerAnswer> of(Combination combination) {
        return combination
                .needVehicle()
                .map(Vehicle::speedometer)
                .then(known -> Outcome.of(known, "the vehicle's speedometer is not described"))
                .then(speedometer -> Rolling.of(combination)
                        .then(rolling -> combination.gearTrain().map(train -> answer(speedometer, train, rolling))));
    }

    private static SpeedometerAnswer answer(Speedometer speedometer, GearTrain train, RollingCircumference rolling) {
        List<SpeedometerReading> readings = new ArrayList<>();
        for (Speed actual : SHOWN_AT.stream().sorted().toList()) {
            readings.add(speedometer.read(
                    actual, rolling.circumference(), train.rear().ratio(), train.hubs()));
        }
        return new SpeedometerAnswer(
                speedometer,
                train,
                rolling,
                readings,
                speedometer.drivenGearChoice(
                        rolling.circumference(), train.rear().ratio(), train.hubs()));
    }

    @Override
    public List<Assumption> assumptions() {
        return rolling.assumptions();
    }

    @Override
    public List<Finding> findings() {
        return List.of(
                speedometer.unR39(rolling.circumference(), train.rear().ratio(), train.hubs()),
                speedometer.usCommercial(rolling.circumference(), train.rear().ratio(), train.hubs()));
    }

    @Override
    public List<Caution> cautions() {
        return GearingCautions.speedometer();
    }

    @Override
    public Working working() {
        return Working.of("what the speedometer shows")
                .from(rolling.working())
                .from(speedometer.working(
                        readings.get(readings.size() - 1).actual(),
                        rolling.circumference(),
                        train.rear().ratio(),
                        train.hubs()))
                .build();
    }
}
