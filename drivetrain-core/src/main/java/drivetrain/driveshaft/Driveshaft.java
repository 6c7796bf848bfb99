package drivetrain.driveshaft;

import drivetrain.quantity.Angle;
import drivetrain.quantity.Length;
import drivetrain.quantity.Stiffness;
import drivetrain.quantity.Torque;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A driveshaft between transfer case and axle: one piece with two joints, or two pieces with three joints and a center bearing before the second joint.
 *
 * @param name the name in a catalog, or the literal itself
 * @param pieces the pieces, the one at the transfer case first
 * @param joints the joints, the one at the transfer case first; one more than there are pieces
 * @param slip the sliding spline, where known; it is in the last piece
 * @param flangeRating the greatest torque that the flanges may carry, where known
 * @param bearing the stiffness of the center bearing's mount, where known
 */
public record Driveshaft(
        String name,
        List<ShaftPiece> pieces,
        List<Joint> joints,
        Optional<SlipSpline> slip,
        Optional<Torque> flangeRating,
        Optional<Stiffness> bearing) {

    private static final int MOST_PIECES = 2;

    /**
     * Copies the lists and checks that the parts belong together.
     *
     * @throws drivetrain.refusal.RefusedException if there are no or more than two pieces, if the joints are not one more, if a joint between two
     *     pieces is a double one, if a single piece has a center bearing, or if a rating is not greater than zero
     */
    public Driveshaft {
        pieces = List.copyOf(pieces);
        joints = List.copyOf(joints);
        flangeRating = flangeRating.map(torque -> torque.requirePositive("flange rating"));
        bearing = bearing.map(mount -> mount.requirePositive("stiffness of the center bearing"));
        if (pieces.isEmpty() || pieces.size() > MOST_PIECES) {
            throw Refusal.of("driveshaft", pieces.size() + " pieces", "is not a count of pieces that is known here")
                    .allowing("1, or 2 with a center bearing")
                    .asException();
        }
        if (joints.size() != pieces.size() + 1) {
            throw Refusal.of("driveshaft", joints.size() + " joints", "does not fit " + pieces.size() + " pieces")
                    .allowing("one joint more than pieces")
                    .asException();
        }
        if (pieces.size() == 1 && bearing.isPresent()) {
            throw Refusal.of("driveshaft", "bearing", "belongs between two pieces, and this shaft has one")
                    .allowing("a second tube, or no center bearing")
                    .asException();
        }
        if (joints.size() > 2 && joints.get(1).isDouble()) {
            throw Refusal.of("driveshaft", "double joint", "stands at the center bearing")
                    .allowing("a double joint at the output or at the pinion")
                    .asException();
        }
    }

    /**
     * Reads a shaft that is written out, such as {@code tube 76.2 mm x 2.1 mm of steel, yokes 1.1 kg 65 mm long in phase, joints rated 1700 Nm to
     * 30 deg, slip 24 teeth 95 mm engaged 50 mm free}.
     *
     * <p>Clauses, separated by commas: {@code tube DIAMETER x WALL of MATERIAL} opens a piece, the one at the transfer case first; behind it
     * {@code length LENGTH} and {@code yokes [MASS LENGTH long] [in phase | ANGLE clockwise | ANGLE counterclockwise]} belong to that piece.
     * {@code joints [rated TORQUE] [to ANGLE]} is about all joints, {@code double joint at output|pinion [rated TORQUE] [to ANGLE]} about that one.
     * {@code slip N teeth [LENGTH across] [LENGTH long] [LENGTH engaged] [LENGTH least] [LENGTH free]}, {@code flanges rated TORQUE} and
     * {@code bearing STIFFNESS} stand once.
     *
     * @param text the text
     * @return the shaft, named by its canonical text
     * @throws drivetrain.refusal.RefusedException if the text is something else, with the index of the fault
     */
    public static Driveshaft parse(String text) {
        return new DriveshaftText(text).read();
    }

    /**
     * Gives the shaft a name.
     *
     * @param other the name
     * @return a copy with that name
     */
    public Driveshaft withName(String other) {
        return new Driveshaft(other, pieces, joints, slip, flangeRating, bearing);
    }

    /**
     * Returns the outside diameter that all tubes share.
     *
     * @return the diameter; empty where the pieces differ in it
     */
    public Optional<Length> diameter() {
        Length first = pieces.get(0).tube().diameter();
        return pieces.stream().allMatch(piece -> piece.tube().diameter().equals(first))
                ? Optional.of(first)
                : Optional.empty();
    }

    /**
     * Gives all tubes another outside diameter.
     *
     * @param other the diameter
     * @return a copy with that diameter and the same walls, materials and yokes
     * @throws drivetrain.refusal.RefusedException if there is no such tube
     */
    public Driveshaft withDiameter(Length other) {
        return withPieces(piece -> piece.withTube(Tube.of(other, piece.tube().wall()), piece.material()));
    }

    /**
     * Makes all pieces of another tube.
     *
     * @param tube the tube
     * @param material what it is made of
     * @return a copy with that tube and the same yokes
     */
    public Driveshaft withTube(Tube tube, ShaftMaterial material) {
        return withPieces(piece -> piece.withTube(tube, material));
    }

    private Driveshaft withPieces(UnaryOperator<ShaftPiece> change) {
        return new Driveshaft(name, pieces.stream().map(change).toList(), joints, slip, flangeRating, bearing);
    }

    /**
     * Turns the yoke at the axle's end of the last piece.
     *
     * @param phase the phase of that piece's yokes
     * @return a copy with that phase
     */
    public Driveshaft withLastPhase(Angle phase) {
        List<ShaftPiece> turned = new ArrayList<>(pieces);
        ShaftPiece last = turned.remove(turned.size() - 1);
        turned.add(new ShaftPiece(last.tube(), last.material(), last.length(), last.yoke(), Optional.of(phase)));
        return new Driveshaft(name, turned, joints, slip, flangeRating, bearing);
    }

    /**
     * Writes the shaft so that {@link #parse} reads the same one, but for its name.
     *
     * @return the canonical literal
     */
    public String text() {
        return DriveshaftText.write(this);
    }
}
