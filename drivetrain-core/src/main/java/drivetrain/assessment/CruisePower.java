package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.gearing.Converter;
import drivetrain.gearing.ConverterMatch;
import drivetrain.gearing.DriveGear;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Power;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Torque;
import drivetrain.road.Grade;
import drivetrain.road.RoadLoad;

/**
 * The power that a steady speed takes, for whoever feeds or cools the engine.
 *
 * @param speed the road speed
 * @param gear the gear
 * @param atWheels the power at the driven wheels
 * @param atCrank the power that the engine gives: that at the wheels over the efficiency of the gear, with the loss of a converter that does not lock
 * @param engineSpeed the engine speed
 */
public record CruisePower(Speed speed, DriveGear gear, Power atWheels, Power atCrank, AngularSpeed engineSpeed) {

    /**
     * Asks at the cruise speed of the order, on the level, in the highest gear.
     *
     * @param combination the drivetrain package
     * @return the power, or what is missing
     */
    public static Outcome<CruisePower> of(Combination combination) {
        return Outcome.of(combination.cruise(), "the order names no cruise speed")
                .then(speed -> at(combination, speed, Grade.level(), GearChoice.TOP));
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @param speed the road speed, greater than zero
     * @param grade the grade
     * @param choice the gear
     * @return the power, or what is missing; less than zero where the vehicle would be pushed
     * @throws drivetrain.refusal.RefusedException if the road speed is not greater than zero
     */
    public static Outcome<CruisePower> at(Combination combination, Speed speed, Grade grade, GearChoice choice) {
        speed.requirePositive("road speed");
        return RoadGround.load(combination)
                .then(load -> Rolling.of(combination)
                        .then(rolling -> combination
                                .gearTrain()
                                .then(choice::in)
                                .map(gear -> of(
                                        combination,
                                        load.on(grade),
                                        speed,
                                        gear,
                                        gear.engineSpeedAt(speed, rolling.radius())))));
    }

    private static CruisePower of(
            Combination combination, RoadLoad load, Speed speed, DriveGear gear, AngularSpeed kinematic) {
        Power wheels = load.powerAtWheels(speed);
        Power input = wheels.dividedBy(gear.efficiency());
        return open(combination, input, kinematic)
                .map(point -> new CruisePower(
                        speed, gear, wheels, point.pumpTorque().at(point.pumpSpeed()), point.pumpSpeed()))
                .value()
                .orElseGet(() -> new CruisePower(speed, gear, wheels, input, kinematic));
    }

    /** The state of a converter that never locks. */
    private static Outcome<ConverterMatch.Point> open(Combination combination, Power input, AngularSpeed turbine) {
        return combination.gearTrain().then(train -> {
            boolean slips = train.transmission().coupling() instanceof Converter converter && !converter.lockUp();
            if (!slips) {
                return Outcome.notEvaluated("nothing slips");
            }
            Torque torque = input.torqueAt(turbine);
            return FullLoadEngine.of(combination)
                    .then(engine -> GearPulls.match(train.transmission().coupling(), engine))
                    .then(match -> match.atLoad(turbine, torque));
        });
    }
}
