package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.ShaftChoice;
import drivetrain.driveshaft.ShaftLineCautions;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.driveshaft.ShaftSpeedCautions;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The driveshafts: angles, what the joints leave of each other, motion at speed.
 *
 * @param shafts the shafts that can be answered for, the front one first
 * @param missing what is missing for a shaft of which something is chosen
 */
public record ShaftsAnswer(List<ShaftAnswer> shafts, List<String> missing) implements Answer {

    /** Copies the lists. */
    public ShaftsAnswer {
        shafts = List.copyOf(shafts);
        missing = List.copyOf(missing);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing for both shafts
     */
    public static Outcome<ShaftsAnswer> of(Combination combination) {
        List<ShaftAnswer> shafts = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        for (ShaftPlace place : ShaftPlace.values()) {
            ShaftChoice choice = combination.shaft(place);
            Outcome<ShaftAnswer> answer = ShaftAnswer.of(combination, choice);
            answer.value().ifPresent(shafts::add);
            if (choice.isAnyChosen()) {
                answer.reason().ifPresent(missing::add);
            }
        }
        return shafts.isEmpty()
                ? Outcome.notEvaluated(missing.isEmpty() ? "no driveshaft is chosen" : String.join(", and ", missing))
                : Outcome.of(new ShaftsAnswer(shafts, missing));
    }

    @Override
    public List<Assumption> assumptions() {
        Set<Assumption> all = new LinkedHashSet<>();
        shafts.forEach(shaft -> all.addAll(shaft.assumptions()));
        return List.copyOf(all);
    }

    @Override
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>();
        shafts.forEach(shaft -> all.addAll(shaft.findings()));
        return all;
    }

    @Override
    public List<Caution> cautions() {
        List<Caution> all = new ArrayList<>(ShaftLineCautions.all());
        all.addAll(ShaftSpeedCautions.whirl());
        return all;
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of("angles and motion of the driveshafts");
        shafts.forEach(shaft -> shaft.workInto(working));
        return working.build();
    }
}
