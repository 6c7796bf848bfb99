package drivetrain.driveshaft;

import drivetrain.quantity.Frequency;
import drivetrain.quantity.Length;
import drivetrain.quantity.Stiffness;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A shaft as a beam, from its first joint center to its last: both ends tilt freely and are held across, firmly or by a spring.
 *
 * @param start the stiffness across of what carries the first joint; empty if it holds firm
 * @param pieces the stretches, masses, bearings and joints between, in order; at least one stretch on either side of every joint
 * @param end the stiffness across of what carries the last joint; empty if it holds firm
 */
public record BeamLine(Optional<Stiffness> start, List<BeamPiece> pieces, Optional<Stiffness> end) {

    private static final int MOST_PIECES = 60;

    /**
     * Copies the list and checks that the beam is held.
     *
     * @throws drivetrain.refusal.RefusedException if there is no stretch, if a joint has no stretch beside it or no bearing holds the pieces that it
     *     joins, or if a stiffness is not greater than zero
     */
    public BeamLine {
        pieces = List.copyOf(pieces);
        start = start.map(mount -> mount.requirePositive("stiffness at the start of the shaft"));
        end = end.map(mount -> mount.requirePositive("stiffness at the end of the shaft"));
        requireHeld(pieces);
    }

    /**
     * Makes a beam whose ends are held firmly.
     *
     * @param pieces the stretches, masses, bearings and joints, in order
     * @return the beam
     * @throws drivetrain.refusal.RefusedException if it has no stretch, or would fall
     */
    public static BeamLine of(BeamPiece... pieces) {
        return new BeamLine(Optional.empty(), List.of(pieces), Optional.empty());
    }

    /**
     * Makes a uniform tube between two joints.
     *
     * @param length from joint center to joint center
     * @param tube the tube
     * @param material what it is made of
     * @return the beam
     * @throws drivetrain.refusal.RefusedException if the length is impossible
     */
    public static BeamLine uniform(Length length, Tube tube, ShaftMaterial material) {
        return of(BeamSpan.of(length, tube, material));
    }

    private static void requireHeld(List<BeamPiece> pieces) {
        int spans = 0;
        int bearings = 0;
        int hinges = 0;
        boolean spanBefore = false;
        for (BeamPiece piece : pieces) {
            if (piece instanceof BeamSpan) {
                spans++;
                spanBefore = true;
            } else if (piece instanceof BeamBearing) {
                bearings++;
            } else if (piece instanceof BeamHinge) {
                hinges++;
                if (!spanBefore) {
                    throw refusal("has a joint without a stretch of shaft before it");
                }
                spanBefore = false;
            }
        }
        if (spans == 0 || !spanBefore) {
            throw refusal(spans == 0 ? "has no stretch of shaft" : "ends with a joint, which its end is already");
        }
        if (pieces.size() > MOST_PIECES) {
            throw refusal("has more than " + MOST_PIECES + " pieces");
        }
        if (hinges > bearings) {
            throw refusal("has a joint between two pieces and no bearing that holds them");
        }
    }

    private static drivetrain.refusal.RefusedException refusal(String problem) {
        return Refusal.of("shaft", "", problem)
                .allowing("stretches of shaft with masses, bearings and joints between")
                .asException();
    }

    /**
     * Returns the length from the first joint center to the last.
     *
     * @return the sum of the stretches
     */
    public Length length() {
        double sum = 0.0;
        for (BeamPiece piece : pieces) {
            if (piece instanceof BeamSpan span) {
                sum += span.length().toMeters();
            }
        }
        return Length.ofMeters(sum);
    }

    /**
     * Solves for the lowest natural frequency of bending.
     *
     * @return the frequency; the shaft whirls when it turns as often
     */
    public Frequency firstFrequency() {
        return BeamModes.of(BeamMesh.of(this)).first();
    }

    /**
     * Solves for the lowest modes of bending.
     *
     * @param count how many, 1 to 6
     * @return the modes, the lowest first
     * @throws drivetrain.refusal.RefusedException if the count is out of range
     */
    public List<BeamMode> modes(int count) {
        if (count < 1 || count > BeamModes.MOST) {
            throw Refusal.of("modes", Integer.toString(count), "is out of range")
                    .allowing("1 to " + BeamModes.MOST)
                    .asException();
        }
        return new ArrayList<>(BeamModes.of(BeamMesh.of(this)).lowest(count));
    }
}
