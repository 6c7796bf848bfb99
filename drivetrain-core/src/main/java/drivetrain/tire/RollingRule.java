package drivetrain.tire;

import drivetrain.finding.Assumption;
import drivetrain.finding.Source;

/**
 * How many overall diameters a tire rolls in one turn, by its construction.
 *
 * @param factor rolling circumference over overall diameter
 * @param basis the basis that an answer names
 * @param assumption what an answer rests on when the rule is used
 */
record RollingRule(double factor, RollingBasis basis, Assumption assumption) {

    /** Radial ply: the tire-standard rule (from memory, confirmed by open data). */
    static final double RADIAL_FACTOR = 3.05;

    /** Bias ply over radial ply: effective radius 96 % against 98 % of the free radius (Wong, from memory). */
    static final double BIAS_SHARE = 0.96 / 0.98;

    private static final String SUBJECT = "rolling circumference";

    private static final RollingRule RADIAL = new RollingRule(
            RADIAL_FACTOR,
            RollingBasis.RADIAL_RULE,
            Assumption.of(
                    SUBJECT,
                    "the rolling circumference is taken as 3.05 times the overall diameter, the rule for radial tires; a measured roll-out is surer",
                    Source.fromMemory("ETRTO Standards Manual and UN Global Technical Regulation 15 annex 2;"
                            + " confirmed within 0.5 % by the median of an open data set of 73 cars")));

    private static final Source WONG =
            Source.fromMemory("Wong, Theory of Ground Vehicles: effective rolling radius 96 % of the"
                    + " free radius for bias-ply and 98 % for radial tires");

    private static final RollingRule DIAGONAL = new RollingRule(
            RADIAL_FACTOR * BIAS_SHARE,
            RollingBasis.BIAS_RULE,
            Assumption.of(
                    SUBJECT,
                    "the rolling circumference of a bias-ply tire is taken as 2.988 times the overall diameter, 96/98 of the rule for radial tires;"
                            + " a measured roll-out is much surer",
                    WONG));

    private static final RollingRule BIAS_BELTED = new RollingRule(
            RADIAL_FACTOR * BIAS_SHARE,
            RollingBasis.BIAS_RULE,
            Assumption.of(
                    SUBJECT,
                    "the rolling circumference of a bias-belted tire is taken as that of a bias-ply tire, 2.988 times the overall diameter;"
                            + " its belt may make it up to 2 % more",
                    WONG));

    static RollingRule of(Construction construction) {
        return switch (construction) {
            case RADIAL -> RADIAL;
            case DIAGONAL -> DIAGONAL;
            case BIAS_BELTED -> BIAS_BELTED;
        };
    }
}
