package drivetrain.comparison;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import java.util.Map;
import java.util.Optional;

/** A figure of a part that is known within a fraction of itself. */
final class UncertainLever extends Uncertain {

    private final Lever lever;
    private final double fraction;

    UncertainLever(Lever lever, double fraction) {
        this.lever = lever;
        this.fraction = fraction;
    }

    @Override
    public String word() {
        return lever.word();
    }

    @Override
    public String text(UnitSystem units) {
        return lever.meaning() + " within " + Figure.percent(fraction, 2).text(units);
    }

    @Override
    Optional<String> missing(Combination combination) {
        return lever.number(combination).reason();
    }

    @Override
    int ends(Combination combination) {
        return 1;
    }

    @Override
    int draws(Combination combination) {
        return 1;
    }

    @Override
    void apply(Map<Slot, Object> items, double[] errors) {
        Adjusted.scale(items, lever, 1.0 + fraction * errors[0]);
    }
}
