package drivetrain.driveshaft;

import drivetrain.finding.HouseLimit;
import drivetrain.finding.HouseRange;
import drivetrain.finding.HouseRule;
import drivetrain.finding.HouseSet;
import drivetrain.finding.Source;
import drivetrain.quantity.Angle;
import drivetrain.quantity.Length;
import java.util.Optional;

/**
 * The limits of driveshafts that a shop can set for itself. The packed ones are those of {@code reference-tables/driveshaft/line-limits.csv} and
 * {@code reference-tables/driveshaft/speed-limits.csv}. What a part's maker allows is not among them and comes first.
 *
 * @param limits what is set for every rule
 */
public record ShaftHouse(HouseSet<Rule> limits) {

    private static final HouseRange SHARE = HouseRange.above(0.0, 1.0);
    private static final HouseRange RESERVE = HouseRange.between(0.0, 0.9);
    private static final HouseRange ACCELERATION = HouseRange.above(0.0, 10_000.0);
    private static final HouseRange DEGREES = HouseRange.above(0.0, 45.0);
    private static final HouseRange MILLIMETERS = HouseRange.above(0.0, 200.0);

    /** What a shop can set. */
    public enum Rule implements HouseRule {
        /** The torsional acceleration at the driven end that is good, in rad/s2. */
        TORSIONAL_GOOD("torsionalAccelerationGoodRadiansPerSecondSquared", "torsional-good", ACCELERATION),
        /** The torsional acceleration at the driven end above which it is too much, in rad/s2. */
        TORSIONAL_MOST("torsionalAccelerationMostRadiansPerSecondSquared", "torsional-most", ACCELERATION),
        /** The inertial acceleration of a piece that is good, in rad/s2. */
        INERTIAL_GOOD("inertialAccelerationGoodRadiansPerSecondSquared", "inertial-good", ACCELERATION),
        /** The inertial acceleration of a piece above which it is too much, in rad/s2. */
        INERTIAL_MOST("inertialAccelerationMostRadiansPerSecondSquared", "inertial-most", ACCELERATION),
        /** How far a single joint has to bend at ride height for its needles to roll, in degrees. */
        JOINT_LEAST("jointAngleLeastDegrees", "joint-angle-least", DEGREES),
        /** How far a single joint may bend at ride height, in degrees. */
        JOINT_MOST("jointAngleMostDegrees", "joint-angle-rule", DEGREES),
        /** How much the angles of a shaft's two joints may differ, in degrees. */
        JOINT_DIFFERENCE("jointAngleDifferenceMostDegrees", "joint-difference-rule", DEGREES),
        /** The share of a joint's greatest angle to spare over the travel. */
        JOINT_RESERVE("jointAngleReserveLeast", "joint-angle-reserve", RESERVE),
        /** How much of a spline has to stay engaged where its maker does not say, in diameters of its stub. */
        ENGAGEMENT("splineEngagementLeastDiameters", "spline-engagement", HouseRange.above(0.0, 5.0)),
        /** How far a shaft has to stay from bottoming, in mm. */
        SLIP_RESERVE("slipTravelLeastMillimeters", "slip-reserve", MILLIMETERS),
        /** How far the bushes of a suspension give, in mm. */
        BUSH_GIVE("bushGiveMostMillimeters", "bush-give", MILLIMETERS),
        /** How much the length given with a shaft may differ from that of its line, in mm. */
        LENGTH_DIFFERENCE("shaftLengthDifferenceMostMillimeters", "length-differs", MILLIMETERS),
        /** The share of the critical speed that is good on the road. */
        CRITICAL_GOOD("criticalSpeedShareGood", "critical-fraction", SHARE),
        /** The share of the critical speed above which it is too much. */
        CRITICAL_MOST("criticalSpeedShareMost", "critical-fraction-most", SHARE),
        /** How far a speed that is held has to stay from half the critical speed, as a share of that half. */
        HALF_CRITICAL("halfCriticalDistanceLeast", "half-critical-band", HouseRange.above(0.0, 0.5)),
        /** How far the joints may bend near half the critical speed, in degrees. */
        HALF_CRITICAL_ANGLE("halfCriticalJointAngleMostDegrees", "half-critical-angle", DEGREES),
        /** The factor to keep between the greatest torque and that at which the tube yields. */
        YIELD_FACTOR("tubeYieldFactorLeast", "yield-factor", HouseRange.between(1.0, 10.0)),
        /** The share of a supplier's torque rating to spare. */
        RATING_RESERVE("torqueRatingReserveLeast", "rating-reserve", RESERVE),
        /** How far the frequency of a vibration may be off and still fits, as a fraction. */
        ORDER_TOLERANCE("vibrationToleranceMost", "order-tolerance", HouseRange.above(0.0, 0.5));

        private final String key;
        private final String row;

        @SuppressWarnings("ImmutableEnumChecker") // HouseRange is a record of numbers
        private final HouseRange range;

        Rule(String key, String row, HouseRange range) {
            this.key = key;
            this.row = row;
            this.range = range;
        }

        @Override
        public String key() {
            return key;
        }

        @Override
        public HouseRange range() {
            return range;
        }

        /** The name of its row in the table. */
        String row() {
            return row;
        }

        @Override
        public HouseLimit packed() {
            return ShaftLimit.of(row);
        }

        @Override
        public Optional<HouseRule> ceiling() {
            return switch (this) {
                case TORSIONAL_GOOD -> Optional.of(TORSIONAL_MOST);
                case INERTIAL_GOOD -> Optional.of(INERTIAL_MOST);
                case JOINT_LEAST -> Optional.of(JOINT_MOST);
                case CRITICAL_GOOD -> Optional.of(CRITICAL_MOST);
                default -> Optional.empty();
            };
        }
    }

    private static final class Packed {
        static final ShaftHouse HOUSE = new ShaftHouse(HouseSet.packed(Rule.class));

        private Packed() {}
    }

    /**
     * Returns the limits that come with the library.
     *
     * @return the packed limits
     */
    public static ShaftHouse packed() {
        return Packed.HOUSE;
    }

    /**
     * Returns what is set for a rule.
     *
     * @param rule the rule
     * @return the number with who set it
     */
    public HouseLimit of(Rule rule) {
        return limits.of(rule);
    }

    /** The number of a rule, in its unit. */
    double number(Rule rule) {
        return of(rule).value();
    }

    /** Where a limit comes from. */
    Source source(Rule rule) {
        return of(rule).source();
    }

    /** The angle of a rule in degrees. */
    Angle angle(Rule rule) {
        return Angle.ofDegrees(of(rule).value());
    }

    /** The length of a rule in mm. */
    Length length(Rule rule) {
        return Length.ofMillimeters(of(rule).value());
    }
}
