package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.ShaftChoice;
import drivetrain.driveshaft.Driveshaft;
import drivetrain.driveshaft.Joint;
import drivetrain.driveshaft.ShaftHouse;
import drivetrain.driveshaft.ShaftPiece;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.driveshaft.ShaftSpeedCautions;
import drivetrain.driveshaft.Torsion;
import drivetrain.driveshaft.TorsionChecks;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.finding.Working;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.Torque;
import drivetrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Whether the driveshafts carry the greatest torque that they see.
 *
 * @param shafts the shafts that can be answered for, the front one first
 * @param missing what is missing for a shaft of which something is chosen
 */
public record StrengthAnswer(List<Shaft> shafts, List<String> missing) implements Answer {

    private static final Source RULE = Source.derived("greatest torque of the shaft against yield and ratings");

    /**
     * One shaft.
     *
     * @param place which axle it runs to
     * @param torque the greatest torque
     * @param where what limits that torque
     * @param pieces the tubes under that torque, with the length of each where it is known
     * @param assumptions what the torque rests on
     * @param findings the checks
     * @param working how the torque is worked out
     */
    public record Shaft(
            ShaftPlace place,
            Torque torque,
            String where,
            List<Piece> pieces,
            List<Assumption> assumptions,
            List<Finding> findings,
            Working working) {

        /** Copies the lists. */
        public Shaft {
            pieces = List.copyOf(pieces);
            assumptions = List.copyOf(assumptions);
            findings = List.copyOf(findings);
        }
    }

    /**
     * One tube under torque.
     *
     * @param torsion the tube and the torque
     * @param length from joint center to joint center; empty where it is not known
     */
    public record Piece(Torsion torsion, Optional<Length> length) {}

    /** Copies the lists. */
    public StrengthAnswer {
        shafts = List.copyOf(shafts);
        missing = List.copyOf(missing);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing for both shafts
     */
    public static Outcome<StrengthAnswer> of(Combination combination) {
        return of(ShaftGround.of(combination));
    }

    static Outcome<StrengthAnswer> of(ShaftGround ground) {
        return ShaftOutcomes.of(ground.combination(), choice -> shaft(ground, choice), StrengthAnswer::new);
    }

    private static Outcome<Shaft> shaft(ShaftGround ground, ShaftChoice choice) {
        return choice.needShaft()
                .then(made -> ShaftTorques.of(ground, choice.place())
                        .map(torque -> shaft(choice, made, torque, ground.house())));
    }

    private static Shaft shaft(ShaftChoice choice, Driveshaft made, ShaftTorques torque, ShaftHouse house) {
        String which = choice.place().label();
        Optional<List<Length>> lengths = ShaftLengths.of(choice).value();
        List<Piece> pieces = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        Set<Assumption> assumptions = new LinkedHashSet<>(torque.assumptions());
        for (int i = 0; i < made.pieces().size(); i++) {
            int index = i;
            ShaftPiece piece = made.pieces().get(i);
            Torsion torsion = new Torsion(piece.tube(), piece.material(), torque.torque());
            pieces.add(new Piece(torsion, lengths.map(all -> all.get(index))));
            String name = which + " shaft" + (made.pieces().size() == 1 ? "" : ", piece " + (i + 1) + ",");
            findings.add(TorsionChecks.tube(name, torsion, torque.where(), house));
            assumptions.addAll(piece.material().assumptions());
        }
        least(made)
                .ifPresent(rating -> findings.add(
                        TorsionChecks.rating(which + " shaft joints", torque.torque(), rating, torque.where(), house)));
        made.flangeRating()
                .ifPresent(rating -> findings.add(TorsionChecks.rating(
                        which + " shaft flanges", torque.torque(), rating, torque.where(), house)));
        return new Shaft(
                choice.place(),
                torque.torque(),
                torque.where(),
                pieces,
                List.copyOf(assumptions),
                judged(which, findings, torque),
                torque.working());
    }

    /** A torque that tire slip may cut short condemns nothing by itself: one finding then stands for all that it would. */
    private static List<Finding> judged(String which, List<Finding> findings, ShaftTorques torque) {
        List<Finding> kept = findings.stream()
                .filter(finding -> finding.verdict() == Verdict.MET)
                .toList();
        Optional<Finding> beyond = findings.stream()
                .filter(finding -> finding.verdict().compareTo(Verdict.NOT_EVALUATED) > 0)
                .findFirst();
        if (torque.missing().isEmpty() || beyond.isEmpty()) {
            return findings;
        }
        boolean over = findings.stream().anyMatch(finding -> finding.verdict() == Verdict.EXCEEDED);
        List<Finding> all = new ArrayList<>(kept);
        all.add(Finding.notEvaluated(
                which + " shaft strength",
                "the engine can send "
                        + Figure.of(torque.torque(), Display.TORQUE).text(UnitSystem.BOTH)
                        + (over ? ", more than the shaft is rated for" : ", which leaves less to spare than is wanted")
                        + ", but at which torque the tires slip is not known: "
                        + torque.missing().get(),
                beyond.get().rule()));
        return all;
    }

    static Finding missing(ShaftPlace place, String reason) {
        return Finding.notEvaluated(place.label() + " shaft strength", reason, RULE);
    }

    private static Optional<Torque> least(Driveshaft made) {
        return made.joints().stream()
                .map(Joint::rating)
                .flatMap(Optional::stream)
                .min(Comparator.naturalOrder());
    }

    @Override
    public List<Assumption> assumptions() {
        return ShaftOutcomes.assumptions(shafts, Shaft::assumptions);
    }

    @Override
    public List<Finding> findings() {
        return ShaftOutcomes.findings(shafts, Shaft::findings);
    }

    @Override
    public List<Caution> cautions() {
        return ShaftSpeedCautions.strength();
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of("strength of the driveshafts");
        for (Shaft shaft : shafts) {
            working.from(shaft.working());
            for (Piece piece : shaft.pieces()) {
                working.from(piece.torsion().working(piece.length()));
            }
        }
        return working.build();
    }
}
