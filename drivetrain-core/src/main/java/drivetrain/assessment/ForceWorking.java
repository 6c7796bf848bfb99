package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.engine.PowerCorrection;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.gearing.DriveGear;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Force;
import drivetrain.quantity.Length;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Torque;

/** How the driving force in one gear comes from the engine, as text; made only when asked for. */
final class ForceWorking {

    private static final Source POWER_BALANCE = Source.derived(
            "force x road speed = torque x wheel speed, so that the force is the wheel torque over the rolling radius");

    private ForceWorking() {}

    /** Adds the way from engine torque to driving force; nothing where the package does not tell it. */
    static void into(Working.Builder working, Combination combination, DriveGear gear, Speed speed) {
        GearPulls.of(combination).value().ifPresent(pulls -> add(working, pulls, gear, speed));
    }

    private static void add(Working.Builder working, GearPulls pulls, DriveGear gear, Speed speed) {
        Length radius = pulls.rolling().radius();
        AngularSpeed input = gear.engineSpeedAt(speed, radius);
        working.from(pulls.rolling().working()).from(gear.engineSpeedWorking(speed, radius));
        Torque torque = pulls.inputTorqueAt(input);
        if (pulls.isOpenAt(input)) {
            pulls.match().ifPresent(match -> working.from(match.working()));
            working.step(
                    "torque behind the open converter",
                    "T_t(n), between the states in which (n / K)^2 is the engine's torque",
                    Figure.of(torque, Display.TORQUE));
        } else {
            addEngine(working, pulls.engine(), input, torque);
        }
        Torque wheels = gear.wheelTorque(torque);
        working.from(gear.wheelTorqueWorking(torque))
                .step(
                        "driving force in " + gear.label(),
                        "F_t = T_w / r",
                        Figure.of(Force.ofNewtons(wheels.si() / radius.si()), Display.FORCE))
                .source(POWER_BALANCE);
    }

    private static void addEngine(Working.Builder working, FullLoadEngine engine, AngularSpeed speed, Torque torque) {
        engine.engine().torqueWorking(speed).value().ifPresent(working::from);
        engine.correction()
                .map(PowerCorrection::working)
                .ifPresent(known -> working.from(known)
                        .step("engine torque in this air", "T = T_stated / factor", Figure.of(torque, Display.TORQUE)));
    }
}
