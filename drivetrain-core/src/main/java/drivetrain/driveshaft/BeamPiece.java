package drivetrain.driveshaft;

/** What a beam consists of, from one end to the other. */
public sealed interface BeamPiece permits BeamSpan, BeamMass, BeamBearing, BeamHinge {}
