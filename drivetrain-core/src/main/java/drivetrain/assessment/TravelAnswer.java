package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.ShaftChoice;
import drivetrain.driveshaft.ShaftHouse;
import drivetrain.driveshaft.ShaftLineCautions;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.driveshaft.ShaftTravel;
import drivetrain.driveshaft.TravelChecks;
import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.finding.Working;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The driveshafts over the travel of their axles: length, angles, what is left of spline and joints.
 *
 * @param travels the shafts that can be answered for, the front one first
 * @param missing what is missing for a shaft of which something is chosen
 * @param house the limits of the shop
 */
public record TravelAnswer(List<ShaftTravel> travels, List<String> missing, ShaftHouse house) implements Answer {

    /** Copies the lists. */
    public TravelAnswer {
        travels = List.copyOf(travels);
        missing = List.copyOf(missing);
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing for both shafts
     */
    public static Outcome<TravelAnswer> of(Combination combination) {
        List<ShaftTravel> travels = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        for (ShaftPlace place : ShaftPlace.values()) {
            ShaftChoice choice = combination.shaft(place);
            Outcome<ShaftTravel> travel = travel(choice);
            travel.value().ifPresent(travels::add);
            if (choice.isAnyChosen()) {
                travel.reason().ifPresent(missing::add);
            }
        }
        return travels.isEmpty()
                ? Outcome.notEvaluated(missing.isEmpty() ? "no driveshaft is chosen" : String.join(", and ", missing))
                : Outcome.of(
                        new TravelAnswer(travels, missing, combination.limits().driveshafts()));
    }

    private static Outcome<ShaftTravel> travel(ShaftChoice choice) {
        return choice.installed()
                .then(installed -> choice.needSuspension().then(suspension -> {
                    try {
                        return Outcome.of(ShaftTravel.of(installed, suspension));
                    } catch (RefusedException impossible) {
                        return Outcome.notEvaluated("the " + choice.place().label() + " "
                                + impossible.refusal().subject() + " "
                                + impossible.refusal().problem());
                    }
                }));
    }

    @Override
    public List<Assumption> assumptions() {
        Set<Assumption> all = new LinkedHashSet<>();
        travels.forEach(travel -> all.addAll(travel.assumptions()));
        return List.copyOf(all);
    }

    @Override
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>();
        travels.forEach(travel -> all.addAll(TravelChecks.of(travel, house)));
        return all;
    }

    @Override
    public List<Caution> cautions() {
        return ShaftLineCautions.all();
    }

    @Override
    public Working working() {
        Working.Builder working = Working.of("driveshafts over the travel of their axles");
        travels.forEach(travel -> working.from(travel.working()));
        return working.build();
    }
}
