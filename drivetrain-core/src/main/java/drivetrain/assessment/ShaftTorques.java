package drivetrain.assessment;

import drivetrain.driveshaft.ShaftPlace;
import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.quantity.Torque;
import drivetrain.road.PartLoad;
import java.util.List;
import java.util.Optional;

/**
 * The greatest torque that a driveshaft sees.
 *
 * @param torque the torque
 * @param where what limits it
 * @param missing why it is not known at which torque the tires slip, so that the torque may be less; empty where it is known
 * @param assumptions what it rests on
 * @param working how it is worked out
 */
record ShaftTorques(
        Torque torque, String where, Optional<String> missing, List<Assumption> assumptions, Working working) {

    /** Copies the list. */
    ShaftTorques {
        assumptions = List.copyOf(assumptions);
    }

    /** The torque of the shaft to an axle: what the engine can send, or what the ground can send back, whichever is less. */
    static Outcome<ShaftTorques> of(ShaftGround ground, ShaftPlace place) {
        String part = place.label() + " driveshaft";
        return ground.loads()
                .then(loads -> Outcome.of(
                                loads.path().parts().stream()
                                        .filter(each -> each.part().equals(part))
                                        .findFirst(),
                                "the transfer case drives no " + place.label() + " axle")
                        .then(load -> of(loads, load)));
    }

    private static Outcome<ShaftTorques> of(LoadsAnswer loads, PartLoad load) {
        boolean slips = load.limit().equals(Optional.of(PartLoad.Limit.SLIP));
        return load.governing()
                .map(torque -> new ShaftTorques(
                        torque,
                        slips ? "tires slip on " + loads.surface().description() : "engine limited",
                        load.slipLimited().reason(),
                        loads.assumptions(),
                        loads.working()));
    }
}
