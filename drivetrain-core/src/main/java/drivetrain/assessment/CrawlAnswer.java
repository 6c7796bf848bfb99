package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.engine.Engine;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.gearing.Coupling;
import drivetrain.gearing.DriveGear;
import drivetrain.gearing.GearTrain;
import drivetrain.gearing.GearingCautions;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Speed;
import drivetrain.tire.RollingCircumference;
import java.util.ArrayList;
import java.util.List;

/**
 * The crawl ratio and how slowly the vehicle then moves at idle.
 *
 * @param gear the lowest gear in the lowest range
 * @param coupling what stands between engine and transmission
 * @param idle the idle speed of the engine, or why it is not known
 * @param rolling the rolling circumference, or why it is not known
 * @param speed the crawl speed at idle with nothing slipping, or what is missing
 */
public record CrawlAnswer(
        DriveGear gear,
        Coupling coupling,
        Outcome<AngularSpeed> idle,
        Outcome<RollingCircumference> rolling,
        Outcome<Speed> speed)
        implements Answer {

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
        DriveGear lowest = train.lowest();
        Outcome<AngularSpeed> idle = combination.needEngine().then(Engine::needIdle);
        Outcome<RollingCircumference> rolling = Rolling.of(combination);
        Outcome<Speed> speed = idle.then(slow -> rolling.map(known -> lowest.speedAt(slow, known.radius())));
        return new CrawlAnswer(lowest, train.transmission().coupling(), idle, rolling, speed);
    }

    /**
     * Returns the crawl ratio.
     *
     * @return lowest gear x lowest range x axle x hubs
     */
    public double ratio() {
        return gear.totalRatio();
    }

    @Override
    public List<Assumption> assumptions() {
        List<Assumption> all = new ArrayList<>(
                rolling.value().map(RollingCircumference::assumptions).orElse(List.of()));
        all.addAll(coupling.crawlAssumptions());
        return all;
    }

    @Override
    public List<Finding> findings() {
        return List.of();
    }

    @Override
    public List<Caution> cautions() {
        return GearingCautions.all();
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of("crawl ratio");
        rolling.value().ifPresent(known -> working.from(known.working()));
        working.from(gear.ratioWorking());
        idle.value().ifPresent(slow -> working.input("idle speed", "n", Figure.of(slow, Display.ROTATION), "engine"));
        speed.value().ifPresent(slow -> working.step("crawl speed", "v = n · r / i", Figure.of(slow, Display.CRAWL_SPEED)));
        return working.source(Source.derived("the total ratio of the lowest gear in the lowest range"))
                .build();
    }
}
