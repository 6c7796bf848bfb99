package drivetrain.driveshaft;

import drivetrain.quantity.Angle;
import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;
import java.util.Optional;

/**
 * One piece of a driveshaft, from joint to joint: a tube with a yoke at either end.
 *
 * @param tube the tube
 * @param material what the tube is made of
 * @param length from joint center to joint center at ride height, 50 mm to 5 m, where it is given with the shaft and not with the line
 * @param yoke the yoke at each end, where known
 * @param phase the turn of the yoke at the axle's end from the one at the other end: positive clockwise for one who looks from the transfer case
 *     toward the axle, 0 in phase; empty where it is not known
 */
public record ShaftPiece(
        Tube tube, ShaftMaterial material, Optional<Length> length, Optional<Yoke> yoke, Optional<Angle> phase) {

    private static final Length SHORTEST = Length.ofMillimeters(50.0);
    private static final Length LONGEST = Length.ofMeters(5.0);
    private static final Angle HALF_TURN = Angle.ofDegrees(180.0);

    /**
     * Checks length and phase.
     *
     * @throws drivetrain.refusal.RefusedException if the length is impossible, if the yokes leave no tube between them, or if the phase is more
     *     than half a turn
     */
    public ShaftPiece {
        length.ifPresent(ShaftPiece::requireLength);
        phase.ifPresent(
                angle -> angle.requireBetween("phase of the yokes", HALF_TURN.times(-1.0), HALF_TURN, Angle.DEGREE));
        if (length.isPresent()
                && yoke.isPresent()
                && yoke.get().length().times(2.0).compareTo(length.get()) >= 0) {
            throw Refusal.of("yoke length", yoke.get().length().toString(), "leaves no tube between two yokes")
                    .allowing("less than half of the piece's length of " + length.get())
                    .asException();
        }
    }

    /** The piece with another tube between its yokes. */
    ShaftPiece withTube(Tube other, ShaftMaterial made) {
        return new ShaftPiece(other, made, length, yoke, phase);
    }

    static Length requireLength(Length length) {
        return length.requireBetween("shaft length", SHORTEST, LONGEST, Length.MILLIMETER);
    }

    /**
     * Makes a piece of which nothing more is known.
     *
     * @param tube the tube
     * @param material what it is made of
     * @return the piece
     */
    public static ShaftPiece of(Tube tube, ShaftMaterial material) {
        return new ShaftPiece(tube, material, Optional.empty(), Optional.empty(), Optional.empty());
    }
}
