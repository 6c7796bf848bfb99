package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.gearing.GearTrain;
import drivetrain.gearing.GearingCautions;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Torque;
import drivetrain.road.LoadPath;
import drivetrain.road.PartLoad;
import drivetrain.road.RoadCautions;
import drivetrain.road.Surface;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The greatest torque that every part between engine and wheels sees in any gear, forward or reverse, held against its rating.
 *
 * @param train the gear train
 * @param input the greatest torque at the transmission's input, with a converter at stall, or what is missing
 * @param surface the ground whose grip sends torque back
 * @param path the loads, engine side first
 * @param assumptions what they rest on
 */
public record LoadsAnswer(
        GearTrain train, Outcome<Torque> input, Surface surface, LoadPath path, List<Assumption> assumptions)
        implements Answer {

    private static final String UNRATED = "torque in parts without a rating";

    /** Copies the list. */
    public LoadsAnswer {
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing; engine, tire and axle loads may be missing one by one
     */
    public static Outcome<LoadsAnswer> of(Combination combination) {
        return combination.gearTrain().map(train -> answer(combination, train));
    }

    private static LoadsAnswer answer(Combination combination, GearTrain train) {
        Surface surface = RoadGround.surface(combination);
        InputTorque input = InputTorque.of(combination, train);
        AxleSlip slip = AxleSlip.of(combination, surface);
        LoadPath path = LoadedParts.of(combination, train, input, slip);
        LinkedHashSet<Assumption> all = new LinkedHashSet<>();
        RoadGround.surfaceAssumption(combination).ifPresent(all::add);
        all.add(surface.peakAssumption());
        all.addAll(input.assumptions());
        all.addAll(slip.assumptions());
        train.gears().forEach(gear -> all.addAll(gear.efficiencyAssumptions()));
        return new LoadsAnswer(train, input.behindCoupling(), surface, path, List.copyOf(all));
    }

    /**
     * Finds the weakest link.
     *
     * @return the part of which the greatest share of its rating is used, or what is missing
     */
    public Outcome<PartLoad> weakest() {
        return Outcome.of(
                path.weakest(),
                "no part whose greatest torque is known has a torque rating; type one behind a part, such as axle 41/10 ring-rating 5500 lb-ft");
    }

    /**
     * Says which parts the weakest link leaves out, because no rating of them is given.
     *
     * @return the assumption; not evaluated where every part has a rating
     */
    public Outcome<Assumption> unratedAssumption() {
        List<PartLoad> unrated = unrated();
        return unrated.isEmpty()
                ? Outcome.notEvaluated("every part has a rating")
                : Outcome.of(Assumption.flagged(
                        UNRATED, "parts without a rating are left out: " + names(unrated), PartLoad.RULE));
    }

    private List<PartLoad> unrated() {
        return path.parts().stream()
                .filter(part -> part.rating().isEmpty() && !part.part().endsWith(LoadedParts.LOCKED))
                .toList();
    }

    private static String names(List<PartLoad> parts) {
        return parts.stream().map(PartLoad::part).collect(Collectors.joining(", "));
    }

    @Override
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        List<PartLoad> unrated = unrated();
        for (PartLoad part : path.parts()) {
            if (part.rating().isPresent()) {
                findings.add(part.finding());
            }
        }
        if (!unrated.isEmpty()) {
            findings.add(Finding.notEvaluated(
                    UNRATED,
                    "no torque rating is given for: " + names(unrated)
                            + "; type one behind the part, such as axle 41/10 ring-rating 5500 lb-ft",
                    PartLoad.RULE));
        }
        return findings;
    }

    @Override
    public List<Caution> cautions() {
        List<Caution> all = new ArrayList<>(RoadCautions.loads());
        all.addAll(GearingCautions.of(train.transferCase().tie()));
        return all;
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of("torque in every part");
        input.value().ifPresent(torque -> working.from(train.lowest().wheelTorqueWorking(torque)));
        for (PartLoad part : path.parts()) {
            part.engineLimited()
                    .value()
                    .ifPresent(torque -> working.step(
                            part.part() + " in " + part.gear() + ", by the engine",
                            "T = T_in x ratio x efficiency up to it x its share",
                            Figure.of(torque, Display.TORQUE)));
            part.slipLimited()
                    .value()
                    .ifPresent(torque -> working.step(
                            part.part() + " in " + part.gear() + ", by tire slip",
                            "T = mu W r / (ratio x efficiency behind it) x its share",
                            Figure.of(torque, Display.TORQUE)));
        }
        return working.source(PartLoad.RULE)
                .source(surface.peakAssumption().source())
                .build();
    }
}
