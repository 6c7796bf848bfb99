package drivetrain.driveshaft;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;

/**
 * A rod across the vehicle that holds an axle sideways.
 *
 * @param axle its end at the axle
 * @param chassis its end at the chassis
 */
public record PanhardRod(Position axle, Position chassis) {

    static final Assumption NOT_GIVEN = Assumption.flagged(
            "sideways guidance of the axle",
            "no rod is given that holds the axle sideways: it is taken as held by the bushes alone",
            Source.commonPractice("a rod moves the axle sideways by a few millimeters over its travel"));

    private static final double SHORTEST = 0.1;

    /**
     * Checks the ends.
     *
     * @throws drivetrain.refusal.RefusedException if the rod is shorter than 100 mm or lies too far off
     */
    public PanhardRod {
        SuspensionPoint.requireNear("panhard rod", axle);
        SuspensionPoint.requireNear("panhard rod", chassis);
        requireLength("panhard rod", Length.ofMeters(axle.vector().distance(chassis.vector())));
    }

    static void requireLength(String subject, Length length) {
        if (Math.abs(length.toMeters()) < SHORTEST) {
            throw Refusal.of(subject, length.toString(), "is too short to guide an axle")
                    .allowing("at least 100 mm")
                    .asException();
        }
    }

    void addTo(LinkSystem system) {
        system.link(axle.vector(), chassis.vector());
    }
}
