package drivetrain.engine;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import java.util.ArrayList;
import java.util.List;

/** What the figures of an engine rest on. */
final class EngineAssumptions {

    private static final String SUBJECT = "engine rating";
    private static final Source HELD = Source.commonPractice("full-load torque held down to idle");

    private static final Assumption NET_AT_CRANK =
            Assumption.of(SUBJECT, "engine torque and power are net figures at the crank", EngineSources.GIVEN);
    private static final Assumption GROSS_AT_CRANK = Assumption.flagged(
            SUBJECT,
            "engine torque and power are gross figures at the crank, used as stated; in the vehicle the engine gives less",
            EngineSources.GIVEN);
    private static final Assumption NET_AT_WHEELS = Assumption.flagged(
            SUBJECT,
            "engine torque and power were measured at the wheels, used as stated; the losses of that drivetrain are already"
                    + " taken off and are taken off again",
            EngineSources.GIVEN);
    private static final Assumption GROSS_AT_WHEELS = Assumption.flagged(
            SUBJECT,
            "engine torque and power are called gross and were measured at the wheels, which contradict each other;"
                    + " used as stated",
            EngineSources.GIVEN);

    private EngineAssumptions() {}

    static List<Assumption> of(Engine engine, boolean held) {
        List<Assumption> all = new ArrayList<>();
        all.add(rating(engine));
        all.addAll(engine.torque().assumptions());
        if (held) {
            engine.torque().slowestMeasurement().ifPresent(first -> all.add(held(engine, first)));
        }
        return List.copyOf(all);
    }

    private static Assumption rating(Engine engine) {
        if (engine.measuredAt() == MeasuredAt.CRANK) {
            return engine.rating() == Rating.NET ? NET_AT_CRANK : GROSS_AT_CRANK;
        }
        return engine.rating() == Rating.NET ? NET_AT_WHEELS : GROSS_AT_WHEELS;
    }

    private static Assumption held(Engine engine, OperatingPoint first) {
        String from = engine.idle().map(ShownText::rpm).orElse("idle");
        return Assumption.flagged(
                "torque at idle",
                "the torque curve starts at " + ShownText.rpm(first.speed())
                        + "; its first torque is held from there down to " + from + ", where the engine may give less",
                HELD);
    }
}
