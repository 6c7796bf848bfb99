package drivetrain.gearing;

import drivetrain.finding.Assumption;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Length;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Torque;
import java.util.List;

/**
 * One gear of the whole drivetrain: a gear of the transmission in one range of the transfer case, the auxiliary unit engaged or not.
 *
 * <p>Speeds are kinematic: nothing slips, neither converter nor tire. Reverse speeds and torques are given without a sign.
 *
 * @param label how a driver calls it, such as {@code 4th high}, {@code reverse low}, {@code 5th high with overdrive}
 * @param number the number of the forward gear, counted from 1; 0 for reverse
 * @param range the range of the transfer case; high where there is only one
 * @param auxiliaryEngaged true if the auxiliary overdrive or underdrive is engaged
 * @param stages the stages from engine to wheel
 */
public record DriveGear(String label, int number, Range range, boolean auxiliaryEngaged, Stages stages) {

    /**
     * Tells whether this is a reverse gear.
     *
     * @return true for reverse
     */
    public boolean reverse() {
        return number == 0;
    }

    /**
     * Tells whether the auxiliary overdrive or underdrive is engaged.
     *
     * @return true if engaged
     */
    public boolean overdrive() {
        return auxiliaryEngaged;
    }

    /**
     * Returns engine speed over wheel speed.
     *
     * @return gear x auxiliary x range x axle x hub
     */
    public double totalRatio() {
        return stages.totalRatio();
    }

    /**
     * Returns engine speed over driveshaft speed, below 1 in an overdriven gear.
     *
     * @return gear x auxiliary x range
     */
    public double shaftRatio() {
        return stages.shaftRatio();
    }

    /**
     * Returns the efficiency from engine to wheel.
     *
     * @return the product of the efficiencies of all stages
     */
    public double efficiency() {
        return stages.totalEfficiency();
    }

    /**
     * Returns the road speed at an engine speed.
     *
     * @param engine the engine speed
     * @param rollingRadius the rolling radius, rolling circumference / 2 pi
     * @return the road speed
     */
    public Speed speedAt(AngularSpeed engine, Length rollingRadius) {
        return Speed.ofMetersPerSecond(engine.si() / totalRatio() * rollingRadius.si());
    }

    /**
     * Returns the engine speed at a road speed.
     *
     * @param road the road speed
     * @param rollingRadius the rolling radius, greater than zero
     * @return the engine speed
     * @throws drivetrain.refusal.RefusedException if the radius is not greater than zero
     */
    public AngularSpeed engineSpeedAt(Speed road, Length rollingRadius) {
        double radius = rollingRadius.requirePositive("rolling radius").si();
        return AngularSpeed.ofRadiansPerSecond(road.si() / radius * totalRatio());
    }

    /**
     * Returns the driveshaft speed at an engine speed. Front and rear driveshaft turn alike when they are tied and the axles match.
     *
     * @param engine the engine speed
     * @return the driveshaft speed, higher than the engine speed in an overdriven gear
     */
    public AngularSpeed driveshaftSpeedAt(AngularSpeed engine) {
        return engine.dividedBy(shaftRatio());
    }

    /**
     * Returns the torque at the output of the transmission.
     *
     * @param engine the torque put into the transmission
     * @return the torque behind the transmission's gear
     */
    public Torque transmissionOutputTorque(Torque engine) {
        return engine.times(stages.outputRatio() * stages.gear().efficiency().value());
    }

    /**
     * Returns the torque in all driveshafts together; {@link AxleShare} tells what one of them may see.
     *
     * @param engine the torque put into the transmission
     * @return the torque behind the transfer case
     */
    public Torque driveshaftTorque(Torque engine) {
        return engine.times(stages.shaftRatio() * stages.shaftEfficiency());
    }

    /**
     * Returns the torque in all half-shafts together: a hub reduction does not load them.
     *
     * @param engine the torque put into the transmission
     * @return the torque behind the final drive
     */
    public Torque halfShaftTorque(Torque engine) {
        return engine.times(stages.axleRatio() * stages.axleEfficiency());
    }

    /**
     * Returns the torque at all driven wheels together. Four driven wheels do not double it: it is divided between them.
     *
     * @param engine the torque put into the transmission
     * @return engine torque x total ratio x efficiency
     */
    public Torque wheelTorque(Torque engine) {
        return engine.times(stages.totalRatio() * stages.totalEfficiency());
    }

    /**
     * Returns the defaults on which torques rest where a part states no efficiency.
     *
     * @return the assumptions, in the order of the stages
     */
    public List<Assumption> efficiencyAssumptions() {
        return stages.efficiencyAssumptions();
    }

    /**
     * Shows how the road speed is worked out.
     *
     * @param engine the engine speed
     * @param rollingRadius the rolling radius
     * @return the working
     */
    public Working speedWorking(AngularSpeed engine, Length rollingRadius) {
        return GearWorkings.roadSpeed(this, engine, rollingRadius);
    }

    /**
     * Shows how the engine speed is worked out.
     *
     * @param road the road speed
     * @param rollingRadius the rolling radius, greater than zero
     * @return the working
     */
    public Working engineSpeedWorking(Speed road, Length rollingRadius) {
        return GearWorkings.engineSpeed(this, road, rollingRadius);
    }

    /**
     * Shows how the driveshaft speed is worked out.
     *
     * @param engine the engine speed
     * @return the working
     */
    public Working driveshaftSpeedWorking(AngularSpeed engine) {
        return GearWorkings.driveshaftSpeed(this, engine);
    }

    /**
     * Shows how the torques at driveshaft, half-shafts and wheels are worked out.
     *
     * @param engine the torque put into the transmission
     * @return the working
     */
    public Working wheelTorqueWorking(Torque engine) {
        return TorqueWorkings.wheelTorque(this, engine);
    }

    /**
     * Shows how the total ratio is worked out.
     *
     * @return the working
     */
    public Working totalRatioWorking() {
        return GearWorkings.totalRatio(this);
    }
}
