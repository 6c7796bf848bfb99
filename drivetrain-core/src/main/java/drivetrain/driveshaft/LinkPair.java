package drivetrain.driveshaft;

import drivetrain.quantity.Length;

/**
 * A link on either side of the vehicle, alike.
 *
 * @param axle the ends at the axle; y is their distance apart
 * @param chassis the ends at the chassis; y is their distance apart
 */
public record LinkPair(Position axle, Position chassis) {

    /**
     * Checks the ends.
     *
     * @throws drivetrain.refusal.RefusedException if a link is shorter than 100 mm or lies too far off
     */
    public LinkPair {
        SuspensionPoint.requireApart("link", axle);
        SuspensionPoint.requireApart("link", chassis);
        PanhardRod.requireLength(
                "link", Length.ofMeters(SuspensionPoint.side(axle, 1.0).distance(SuspensionPoint.side(chassis, 1.0))));
    }

    /** Whether the links converge so far that they hold the axle sideways. */
    boolean holdsSideways() {
        return Math.abs(axle.y().toMeters() - chassis.y().toMeters()) > 0.2;
    }

    void addTo(LinkSystem system) {
        for (double side = 1.0; side >= -1.0; side -= 2.0) {
            system.link(SuspensionPoint.side(axle, side), SuspensionPoint.side(chassis, side));
        }
    }
}
