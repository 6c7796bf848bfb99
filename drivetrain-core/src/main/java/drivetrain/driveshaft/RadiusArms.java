package drivetrain.driveshaft;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two arms that are clamped to the axle and pivot in bushes at the chassis: the axle, and the pinion with it, turns about the bushes.
 *
 * @param pivots the bushes at the chassis; y is their distance apart
 * @param panhard the rod that holds the axle sideways, where it is given
 * @param travel how far the axle moves
 */
public record RadiusArms(Position pivots, Optional<PanhardRod> panhard, AxleTravel travel) implements Suspension {

    private static final Assumption BUSHES = Assumption.flagged(
            "bushes of the radius arms",
            "in articulation the arms twist their bushes, which are taken as equally soft all round",
            Source.derived("two clamped arms cannot roll otherwise; least sum of the squares of what the bushes give"));

    /**
     * Checks the pivots.
     *
     * @throws drivetrain.refusal.RefusedException if they lie too far off or over the axle
     */
    public RadiusArms {
        SuspensionPoint.requireApart("radius arms", pivots);
        PanhardRod.requireLength("radius arms", pivots.x());
    }

    @Override
    public AxlePose pose(double heave, double roll) {
        return walk().pose(heave, roll);
    }

    @Override
    public AxleWalk walk() {
        LinkSystem system =
                new LinkSystem().bush(SuspensionPoint.side(pivots, 1.0)).bush(SuspensionPoint.side(pivots, -1.0));
        panhard.ifPresent(rod -> rod.addTo(system));
        return system::pose;
    }

    @Override
    public List<Assumption> assumptions() {
        List<Assumption> all = new ArrayList<>(List.of(BUSHES));
        if (panhard.isEmpty()) {
            all.add(PanhardRod.NOT_GIVEN);
        }
        return all;
    }

    @Override
    public String text() {
        return SuspensionText.write(this);
    }
}
