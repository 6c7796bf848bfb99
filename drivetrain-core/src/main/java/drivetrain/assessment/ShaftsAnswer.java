package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.driveshaft.ShaftLineCautions;
import drivetrain.driveshaft.ShaftSpeedCautions;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import java.util.ArrayList;
import java.util.List;

/**
 * The driveshafts: angles, what the joints leave of each other, motion at speed, couples under torque.
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
        return of(ShaftGround.of(combination));
    }

    static Outcome<ShaftsAnswer> of(ShaftGround ground) {
        return ShaftOutcomes.of(ground.combination(), choice -> ShaftAnswer.of(ground, choice), ShaftsAnswer::new);
    }

    @Override
    public List<Assumption> assumptions() {
        return ShaftOutcomes.assumptions(shafts, ShaftAnswer::assumptions);
    }

    @Override
    public List<Finding> findings() {
        return ShaftOutcomes.findings(shafts, ShaftAnswer::findings);
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
