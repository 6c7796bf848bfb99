package drivetrain.driveshaft;

/** A joint between two pieces of a shaft: both sides move across together and tilt freely. */
public record BeamHinge() implements BeamPiece {}
