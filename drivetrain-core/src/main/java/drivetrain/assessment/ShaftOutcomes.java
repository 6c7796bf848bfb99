package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.combination.ShaftChoice;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.finding.Assumption;
import drivetrain.finding.Finding;
import drivetrain.finding.Outcome;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

/** One question asked about the front and the rear shaft: a shaft that cannot be answered for does not stop the other. */
final class ShaftOutcomes {

    private ShaftOutcomes() {}

    /**
     * Asks about each shaft of which something is chosen.
     *
     * @param combination the drivetrain package
     * @param question what is asked about one shaft
     * @param whole puts the answers, the front one first, and what is missing for the others together
     */
    static <S, A> Outcome<A> of(
            Combination combination,
            Function<ShaftChoice, Outcome<S>> question,
            BiFunction<List<S>, List<String>, A> whole) {
        List<S> shafts = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        for (ShaftPlace place : ShaftPlace.values()) {
            ShaftChoice choice = combination.shaft(place);
            if (choice.isAnyChosen()) {
                Outcome<S> shaft = question.apply(choice);
                shaft.value().ifPresent(shafts::add);
                shaft.reason().ifPresent(missing::add);
            }
        }
        return shafts.isEmpty()
                ? Outcome.notEvaluated(missing.isEmpty() ? "no driveshaft is chosen" : String.join(", and ", missing))
                : Outcome.of(whole.apply(shafts, missing));
    }

    /** What the shafts rest on, each once. */
    static <S> List<Assumption> assumptions(List<S> shafts, Function<S, Collection<Assumption>> each) {
        return shafts.stream()
                .flatMap(shaft -> each.apply(shaft).stream())
                .distinct()
                .toList();
    }

    /** The checks of all shafts. */
    static <S> List<Finding> findings(List<S> shafts, Function<S, List<Finding>> each) {
        return shafts.stream().flatMap(shaft -> each.apply(shaft).stream()).toList();
    }
}
