package drivetrain.engine;

import drivetrain.finding.Source;

/** Where the formulas of this package come from. */
final class EngineSources {

    static final Source POWER = Source.derived("power is torque times angular speed");

    static final Source INTERPOLATION = Source.handbook(
            "Fritsch and Carlson, Monotone Piecewise Cubic Interpolation,"
                    + " SIAM J. Numer. Anal. 17 (1980) 238-246; slopes by Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304");

    static final Source PEAK_SHAPE = Source.commonPractice("a full-load curve drawn through the two stated peaks;"
            + " outside them the cubic power curve of Jazar, Vehicle Dynamics, ch. 4 (from memory)");

    static final Source GIVEN = Source.given("the engine's data");

    private EngineSources() {}
}
