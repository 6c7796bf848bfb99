package drivetrain.gearing;

import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Torque;

/**
 * Crawling in the shortest gear: first gear, low range, an overdrive disengaged, an underdrive engaged.
 *
 * <p>The crawl ratio is kinematic. A torque converter raises the torque at a standstill, never the ratio.
 *
 * @param gear the shortest forward gear
 * @param coupling what joins engine and transmission
 */
public record Crawl(DriveGear gear, Coupling coupling) {

    /**
     * Finds the crawl gear of a gear train.
     *
     * @param train the gear train
     * @return crawling in its shortest gear
     */
    public static Crawl of(GearTrain train) {
        return new Crawl(train.lowest(), train.transmission().coupling());
    }

    /**
     * Returns the crawl ratio.
     *
     * @return the total ratio of the shortest gear
     */
    public double ratio() {
        return gear.totalRatio();
    }

    /**
     * Returns the crawl speed, without slip of a converter.
     *
     * @param idle the engine speed at idle
     * @param rollingRadius the rolling radius
     * @return the road speed
     */
    public Speed speedAt(AngularSpeed idle, Length rollingRadius) {
        return gear.speedAt(idle, rollingRadius);
    }

    /**
     * Returns the torque at all driven wheels together while the vehicle stands still against its engine.
     *
     * @param engine the engine torque, with a converter at its stall speed
     * @return the wheel torque times the stall torque ratio, or why it is not known
     */
    public Outcome<Torque> stallTorque(Torque engine) {
        if (coupling.stallMultiplication().isEmpty()) {
            return Outcome.notEvaluated("the stall torque ratio of the converter is not known");
        }
        return Outcome.of(
                gear.wheelTorque(engine.times(coupling.stallMultiplication().getAsDouble())));
    }

    /**
     * Shows how the crawl ratio is worked out.
     *
     * @return the working
     */
    public Working working() {
        return GearWorkings.withTotalRatio(Working.of("crawl ratio"), gear).build();
    }

    /**
     * Shows how the crawl speed is worked out.
     *
     * @param idle the engine speed at idle
     * @param rollingRadius the rolling radius
     * @return the working
     */
    public Working speedWorking(AngularSpeed idle, Length rollingRadius) {
        return gear.speedWorking(idle, rollingRadius);
    }

    /**
     * Shows how the stall torque is worked out.
     *
     * @param engine the engine torque
     * @return the working, or why there is none
     */
    public Outcome<Working> stallTorqueWorking(Torque engine) {
        return stallTorque(engine).map(torque -> {
            double ratio = coupling.stallMultiplication().orElse(1.0);
            Torque turbine = engine.times(ratio);
            Working.Builder working = Working.of("crawl torque at stall")
                    .input("engine torque", "T_e", TorqueWorkings.torque(engine), "given")
                    .input(
                            "stall torque ratio",
                            "m",
                            Figure.plain(ratio, 2),
                            gear.stages().gear().part())
                    .step("torque behind the coupling", "T_t = m x T_e", TorqueWorkings.torque(turbine));
            return TorqueWorkings.steps(working, gear, turbine, "T_t").build();
        });
    }
}
