package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.engine.Engine;
import drivetrain.engine.OperatingPoint;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.gearing.AxleTie;
import drivetrain.gearing.Crawl;
import drivetrain.gearing.GearTrain;
import drivetrain.gearing.GearingCautions;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Torque;
import drivetrain.tire.RollingCircumference;
import java.util.ArrayList;
import java.util.List;

/**
 * The crawl ratio, how slowly the vehicle then moves at idle, and what a converter at stall adds.
 *
 * @param crawl the shortest gear and what stands ahead of it
 * @param tie how the transfer case ties the axles together
 * @param idle the idle speed of the engine, or why it is not known
 * @param rolling the rolling circumference, or why it is not known
 * @param speed the crawl speed at idle with nothing slipping, or what is missing
 * @param engineTorque the greatest torque of the engine, or why it is not known
 * @param torque the wheel torque of all driven wheels at peak engine torque with nothing slipping, or what is missing
 * @param stallTorque the wheel torque at peak engine torque and converter stall, or what is missing; with a clutch nothing is added
 * @param assumptions what ratio, speed and torque rest on
 */
public record CrawlAnswer(
        Crawl crawl,
        AxleTie tie,
        Outcome<AngularSpeed> idle,
        Outcome<RollingCircumference> rolling,
        Outcome<Speed> speed,
        Outcome<Torque> engineTorque,
        Outcome<Torque> torque,
        Outcome<Torque> stallTorque,
        List<Assumption> assumptions)
        implements Answer {

    /** Copies the assumptions. */
    public CrawlAnswer {
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing; the crawl ratio needs neither engine nor tire
     */
    public static Outcome<CrawlAnswer> of(Combination combination) {
        return combination.gearTrain().map(train -> answer(combination, train));
    }

    private static CrawlAnswer answer(Combination combination, GearTrain train) {
        Crawl crawl = Crawl.of(train);
        Outcome<AngularSpeed> idle = Idle.of(combination);
        Outcome<RollingCircumference> rolling = Rolling.of(combination);
        Outcome<Torque> peak = combination.needEngine().then(Engine::peakTorque).map(OperatingPoint::torque);
        return new CrawlAnswer(
                crawl,
                train.transferCase().tie(),
                idle,
                rolling,
                idle.then(slow -> rolling.map(known -> crawl.speedAt(slow, known.radius()))),
                peak,
                peak.map(crawl.gear()::wheelTorque),
                peak.then(crawl::stallTorque),
                assumptions(train, crawl, rolling, peak));
    }

    private static List<Assumption> assumptions(
            GearTrain train, Crawl crawl, Outcome<RollingCircumference> rolling, Outcome<Torque> engineTorque) {
        List<Assumption> all = new ArrayList<>();
        rolling.value().ifPresent(known -> all.addAll(known.assumptions()));
        all.addAll(train.speedAssumptions());
        engineTorque.value().ifPresent(known -> all.addAll(crawl.gear().efficiencyAssumptions()));
        return all;
    }

    @Override
    public List<Finding> findings() {
        return List.of();
    }

    @Override
    public List<Caution> cautions() {
        return GearingCautions.of(tie);
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of("crawl ratio, crawl speed and torque");
        rolling.value().ifPresent(known -> {
            working.from(known.working());
            idle.value().ifPresent(slow -> working.from(crawl.speedWorking(slow, known.radius())));
        });
        working.from(crawl.working());
        engineTorque.value().ifPresent(peak -> addTorque(working, peak));
        return working.build();
    }

    private void addTorque(Working.Builder working, Torque peak) {
        working.from(crawl.gear().wheelTorqueWorking(peak));
        if (crawl.coupling().stallMultiplication().orElse(1.0) > 1.0) {
            crawl.stallTorqueWorking(peak).value().ifPresent(working::from);
        }
    }
}
