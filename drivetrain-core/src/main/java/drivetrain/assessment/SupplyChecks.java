package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import drivetrain.fuel.FuelHouse;
import java.util.List;

/** The findings of a fuel supply among those of the whole package. */
final class SupplyChecks {

    private SupplyChecks() {}

    /** A package without any fuel part is not asked about its fuel; one with some of them is told what is missing. */
    static List<Finding> of(Combination combination, Outcome<SupplyAnswer> supply) {
        if (!combination.fuelParts().isAnyChosen()) {
            return List.of();
        }
        return supply.fold(
                SupplyAnswer::findings,
                reason -> List.of(Finding.notEvaluated(
                        "fuel supply", reason, combination.limits().fuel().source(FuelHouse.Rule.MARGIN))));
    }
}
