package drivetrain.driveshaft;

import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Source;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Length;
import drivetrain.quantity.Stiffness;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A driveshaft taken as a beam.
 *
 * @param shaft the shaft
 * @param lengths the length of each piece from joint center to joint center
 * @param line the beam
 * @param assumptions what was assumed to make it one
 */
public record BeamShaft(Driveshaft shaft, List<Length> lengths, BeamLine line, List<Assumption> assumptions) {

    private static final Source DRIVELINE = Source.commonPractice("how a shaft is taken for its critical speed");
    private static final String STUB_METAL = "steel";

    /** Copies the lists. */
    public BeamShaft {
        lengths = List.copyOf(lengths);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * Takes a shaft as a beam.
     *
     * @param shaft the shaft
     * @param lengths the length of each piece from joint center to joint center
     * @return the beam; not evaluated for two pieces whose center bearing has a mount of unknown stiffness
     * @throws drivetrain.refusal.RefusedException if the lengths leave no room for the tubes, or are not as many as the pieces
     */
    public static Outcome<BeamShaft> of(Driveshaft shaft, List<Length> lengths) {
        if (lengths.size() != shaft.pieces().size()) {
            throw Refusal.of("shaft lengths", Integer.toString(lengths.size()), "are not as many as the pieces")
                    .allowing(Integer.toString(shaft.pieces().size()))
                    .asException();
        }
        if (lengths.size() > 1 && shaft.bearing().isEmpty()) {
            return Outcome.notEvaluated(
                    "the stiffness of the center bearing's mount is not known, and a soft mount lowers the "
                            + "critical speed; add it to the shaft, such as bearing 300 N/mm");
        }
        return Outcome.of(new Builder(shaft, lengths).build());
    }

    /** The critical speed of the longest piece as if it were its tube from joint to joint. */
    AngularSpeed tubeAlone() {
        int longest = longest();
        ShaftPiece piece = shaft.pieces().get(longest);
        return CriticalSpeed.ofUniform(piece.tube(), piece.material(), lengths.get(longest));
    }

    /** The index of the longest piece. */
    int longest() {
        return lengths.size() > 1 && lengths.get(1).compareTo(lengths.get(0)) > 0 ? 1 : 0;
    }

    private static final class Builder {

        private final Driveshaft shaft;
        private final List<Length> lengths;
        private final List<BeamPiece> beam = new ArrayList<>();
        private final List<Assumption> assumptions = new ArrayList<>();

        Builder(Driveshaft shaft, List<Length> lengths) {
            this.shaft = shaft;
            this.lengths = lengths;
        }

        BeamShaft build() {
            for (int i = 0; i < lengths.size(); i++) {
                add(shaft.pieces().get(i), lengths.get(i), i == lengths.size() - 1);
            }
            assumptions.add(Assumption.of(
                    "shaft ends",
                    "the shaft's ends are taken as held firmly across at the joint centers; soft mounts of transfer case or axle "
                            + "lower its critical speed",
                    DRIVELINE));
            return new BeamShaft(shaft, lengths, new BeamLine(Optional.empty(), beam, Optional.empty()), assumptions);
        }

        private void add(ShaftPiece piece, Length length, boolean last) {
            assumptions.addAll(piece.material().assumptions());
            ShaftMaterial metal = piece.material() instanceof ShaftMetal ? piece.material() : steel();
            Optional<BeamSpan> yoke = piece.yoke().map(known -> BeamSpan.of(known, piece.tube(), metal));
            Optional<BeamSpan> stub = last ? stub() : Optional.empty();
            Length tube = length;
            if (yoke.isPresent()) {
                tube = tube.minus(yoke.get().length().times(2.0));
            }
            if (stub.isPresent()) {
                tube = tube.minus(stub.get().length());
            }
            requireRoom(tube, length);
            yoke.ifPresent(beam::add);
            stub.ifPresent(beam::add);
            beam.add(BeamSpan.of(tube, piece.tube(), piece.material()));
            if (!last) {
                Stiffness mount = shaft.bearing().orElseThrow();
                beam.add(BeamBearing.of(mount));
            }
            yoke.ifPresent(beam::add);
            if (!last) {
                beam.add(new BeamHinge());
            }
            assume(yoke.isPresent());
        }

        private void requireRoom(Length tube, Length length) {
            if (!(tube.toMeters() > 0.0)) {
                throw Refusal.of(
                                "shaft length",
                                DecimalText.significant(length.toMillimeters(), 6) + " mm",
                                "leaves no tube between yokes and slip stub")
                        .allowing("more than yokes and stub together")
                        .asException();
            }
        }

        private void assume(boolean yokes) {
            Assumption about = yokes
                    ? Assumption.of(
                            "yokes",
                            "each yoke is taken as a round bar of its length and mass, no thicker than the tube",
                            DRIVELINE)
                    : Assumption.of(
                            "yokes",
                            "the tube is taken from joint center to joint center: no yokes are given",
                            DRIVELINE);
            if (!assumptions.contains(about)) {
                assumptions.add(about);
            }
        }

        private static ShaftMaterial steel() {
            return StockMaterials.named(STUB_METAL).orElseThrow();
        }

        private Optional<BeamSpan> stub() {
            if (shaft.slip().isEmpty()) {
                return Optional.empty();
            }
            SlipSpline slip = shaft.slip().get();
            if (slip.diameter().isEmpty() || slip.stub().isEmpty()) {
                assumptions.add(Assumption.of(
                        "slip stub",
                        "the slip stub is taken as tube: its diameter and length outside the tube are not given, and a slender "
                                + "stub lowers the critical speed",
                        DRIVELINE));
                return Optional.empty();
            }
            assumptions.add(Assumption.of(
                    "slip stub",
                    "the slip stub is taken as a solid steel bar of its diameter next to the joint at the transfer case's end of its piece",
                    DRIVELINE));
            return Optional.of(
                    BeamSpan.of(slip.stub().get(), Tube.solid(slip.diameter().get()), steel()));
        }
    }
}
