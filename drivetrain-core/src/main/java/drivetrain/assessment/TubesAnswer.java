package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.driveshaft.ShaftSpeed;
import drivetrain.driveshaft.ShaftSpeedCautions;
import drivetrain.driveshaft.TubeSizing;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Which stock tube a driveshaft needs.
 *
 * @param fastest the greatest speed of the shaft and where it comes from
 * @param sizing every stock tube at that speed and length
 */
public record TubesAnswer(ShaftSpeed fastest, TubeSizing sizing) implements Answer {

    private static final Assumption TUBE_ALONE = Assumption.of(
            "tube alone",
            "the shaft is taken as its tube from joint center to joint center, its ends held firmly; yokes, a slip stub and soft mounts "
                    + "change its critical speed by some percent",
            Source.commonPractice("how a tube is sized before the shaft is drawn"));

    /**
     * Asks at a speed.
     *
     * @param combination the drivetrain package, for the limits of the shop
     * @param length from joint center to joint center, 50 mm to 5 m
     * @param speed the greatest speed of the shaft, greater than zero
     * @return the answer
     * @throws drivetrain.refusal.RefusedException if length or speed are out of range
     */
    public static TubesAnswer at(Combination combination, Length length, AngularSpeed speed) {
        return new TubesAnswer(
                ShaftSpeed.reached("asked", speed),
                TubeSizing.of(speed, length, combination.limits().driveshafts()));
    }

    /**
     * Asks at the greatest speed that the engine can give the shaft.
     *
     * @param combination the drivetrain package
     * @param length from joint center to joint center, 50 mm to 5 m
     * @return the answer, or what is missing
     * @throws drivetrain.refusal.RefusedException if the length is out of range
     */
    public static Outcome<TubesAnswer> atGreatest(Combination combination, Length length) {
        return ReachedShaftSpeeds.greatest(combination)
                .map(fastest -> new TubesAnswer(
                        fastest,
                        TubeSizing.of(
                                fastest.speed(), length, combination.limits().driveshafts())));
    }

    @Override
    public List<Assumption> assumptions() {
        List<Assumption> all = new ArrayList<>();
        all.add(TUBE_ALONE);
        sizing.smallest().ifPresent(row -> {
            all.addAll(row.stock().metal().assumptions());
            all.add(Assumption.of(
                    "stock tubes",
                    "the list of tubes is a usual one; ask the supplier",
                    row.stock().source()));
        });
        return all;
    }

    @Override
    public List<Finding> findings() {
        return List.of();
    }

    @Override
    public List<Caution> cautions() {
        return ShaftSpeedCautions.whirl();
    }

    @Override
    public Working working() {
        return sizing.working();
    }
}
