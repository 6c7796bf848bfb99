package drivetrain.tire;

import drivetrain.finding.Outcome;
import drivetrain.quantity.Length;
import drivetrain.quantity.RevolutionsPerDistance;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A tire: its size, and what was measured or published about it.
 *
 * @param name the name by which a catalog or an order calls it
 * @param designation the size as marked
 * @param rollout the distance of one turn, measured on the loaded tire
 * @param revolutions the maker's revolutions per distance
 * @param diameter the overall diameter, measured or published by the maker
 */
public record Tire(
        String name,
        TireDesignation designation,
        Optional<Length> rollout,
        Optional<RevolutionsPerDistance> revolutions,
        Optional<Length> diameter) {

    /**
     * Checks that each measurement is possible for a road tire and, where the size tells a diameter, within 25 % of what the size tells: more is taken for a slip of the unit.
     *
     * @throws drivetrain.refusal.RefusedException if a measurement is impossible
     */
    public Tire {
        TireMeasurements.require(designation, rollout, revolutions, diameter);
    }

    /**
     * Makes a tire of which nothing but the size is known; its name is the size.
     *
     * @param designation the size
     * @return the tire
     */
    public static Tire of(TireDesignation designation) {
        return new Tire(designation.text(), designation, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * Reads a tire: a size designation, then, each at most once and in any order, {@code rollout} and a length, {@code revs} and the
     * revolutions per mile or kilometre, {@code diameter} and a length.
     *
     * @param text the text, such as {@code 285/75R16 122/119Q rollout 2510 mm} or {@code 285/75R16 revs 632/mile}
     * @return the tire, named by its size
     * @throws drivetrain.refusal.RefusedException if the text is not a tire, with the index of the fault in the text as typed
     */
    public static Tire parse(String text) {
        return TireParser.parse(text);
    }

    /**
     * Returns the tire under another name.
     *
     * @param other the name
     * @return a copy that is called so
     */
    public Tire withName(String other) {
        return new Tire(other, designation, rollout, revolutions, diameter);
    }

    /**
     * Returns the tire with a measured roll-out.
     *
     * @param length the distance of one turn
     * @return a copy that has it
     */
    public Tire withRollout(Length length) {
        return new Tire(name, designation, Optional.of(length), revolutions, diameter);
    }

    /**
     * Returns the tire with its maker's revolutions.
     *
     * @param turns the revolutions per distance
     * @return a copy that has them
     */
    public Tire withRevolutions(RevolutionsPerDistance turns) {
        return new Tire(name, designation, rollout, Optional.of(turns), diameter);
    }

    /**
     * Returns the tire with a measured or published overall diameter.
     *
     * @param length the diameter
     * @return a copy that has it
     */
    public Tire withDiameter(Length length) {
        return new Tire(name, designation, rollout, revolutions, Optional.of(length));
    }

    /**
     * Returns the tire as one types it.
     *
     * @return the text, without the name, which {@link #parse} reads back as an equal tire named by its size
     */
    public String text() {
        return designation.text() + TireMeasurements.text(rollout, revolutions, diameter);
    }

    /**
     * Returns the overall diameter: the one given, else what the size tells.
     *
     * @return the diameter with its basis, or why there is none
     */
    public Outcome<OverallDiameter> overallDiameter() {
        return diameter.isPresent()
                ? Outcome.of(new OverallDiameter(diameter.get(), DiameterBasis.GIVEN, designation, List.of()))
                : designation.overallDiameter();
    }

    /**
     * Returns the rolling circumference: the measured roll-out, else from the maker's revolutions, else by the rule for the construction from the overall diameter.
     *
     * @return the circumference with its basis, or why there is none
     */
    public Outcome<RollingCircumference> rolling() {
        if (rollout.isPresent()) {
            return Outcome.of(measured(rollout.get(), RollingBasis.MEASURED_ROLLOUT));
        }
        if (revolutions.isPresent()) {
            return Outcome.of(measured(revolutions.get().perRevolution(), RollingBasis.MAKER_REVOLUTIONS));
        }
        return overallDiameter().map(Tire::byRule);
    }

    private static RollingCircumference measured(Length circumference, RollingBasis basis) {
        return new RollingCircumference(circumference, basis, Optional.empty(), List.of());
    }

    static RollingCircumference byRule(OverallDiameter overall) {
        RollingRule rule = RollingRule.of(overall.designation().construction());
        return new RollingCircumference(
                overall.diameter().times(rule.factor()),
                rule.basis(),
                Optional.of(overall),
                Stream.concat(overall.assumptions().stream(), Stream.of(rule.assumption()))
                        .toList());
    }
}
