package drivetrain.driveshaft;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two lower and two upper links between axle and chassis.
 *
 * @param lower the lower links
 * @param upper the upper links
 * @param panhard the rod that holds the axle sideways, where it is given
 * @param travel how far the axle moves
 */
public record FourLinks(LinkPair lower, LinkPair upper, Optional<PanhardRod> panhard, AxleTravel travel)
        implements Suspension {

    private static final Assumption BUSHES = Assumption.flagged(
            "bushes of the links",
            "where the links hold the axle more than once, as in articulation, their bushes are taken to give alike",
            Source.derived("least sum of the squares of the changes of the links' lengths"));

    @Override
    public AxlePose pose(double heave, double roll) {
        return walk().pose(heave, roll);
    }

    @Override
    public AxleWalk walk() {
        LinkSystem system = new LinkSystem();
        lower.addTo(system);
        upper.addTo(system);
        panhard.ifPresent(rod -> rod.addTo(system));
        if (isHeldByBushes()) {
            system.heldSideways();
        }
        return system::pose;
    }

    private boolean isHeldByBushes() {
        return panhard.isEmpty() && !lower.holdsSideways() && !upper.holdsSideways();
    }

    @Override
    public List<Assumption> assumptions() {
        List<Assumption> all = new ArrayList<>(List.of(BUSHES));
        if (isHeldByBushes()) {
            all.add(PanhardRod.NOT_GIVEN);
        }
        return all;
    }

    @Override
    public String text() {
        return SuspensionText.write(this);
    }
}
