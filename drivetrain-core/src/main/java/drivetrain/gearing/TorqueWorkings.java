package drivetrain.gearing;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Torque;

/** How torques are worked out, as text; made only when asked for. */
final class TorqueWorkings {

    static final Source POWER_BALANCE = Source.derived(
            "power out = efficiency x power in, so that torque rises with the ratio and falls with the losses of each stage");

    private TorqueWorkings() {}

    static Working wheelTorque(DriveGear gear, Torque engine) {
        Working.Builder working = Working.of("wheel torque in " + gear.label())
                .input("torque put into the transmission", "T_e", torque(engine), "given");
        return steps(working, gear, engine, "T_e").build();
    }

    static Working.Builder steps(Working.Builder working, DriveGear gear, Torque input, String symbol) {
        Stages stages = gear.stages();
        GearWorkings.ratioInputs(working, stages.fitted());
        stages.fitted()
                .forEach(stage -> working.input(
                        "efficiency, " + stage.name(),
                        stage.symbol().replace('i', 'e'),
                        Figure.plain(stage.efficiency().value(), 3),
                        stage.defaulted().isPresent() ? "default" : stage.part()));
        String upToShaft = GearWorkings.product(stages.fittedToShaft());
        working.step(
                        "torque in all driveshafts together",
                        "T_s = " + symbol + " x " + upToShaft + " x " + upToShaft.replace('i', 'e'),
                        torque(gear.driveshaftTorque(input)))
                .step(
                        "torque in all half-shafts together",
                        "T_x = T_s x i_x x e_x",
                        torque(gear.halfShaftTorque(input)))
                .step(
                        "torque at all driven wheels together",
                        stages.hub().isAbsent() ? "T_w = T_x" : "T_w = T_x x i_h x e_h",
                        torque(gear.wheelTorque(input)))
                .source(POWER_BALANCE);
        gear.efficiencyAssumptions().stream().map(Assumption::source).forEach(working::source);
        return working;
    }

    static Figure torque(Torque torque) {
        return Figure.of(torque, Display.TORQUE);
    }
}
