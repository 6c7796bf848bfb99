package drivetrain.gearing;

import drivetrain.quantity.Torque;

/**
 * How torque divides between the axles. It never exceeds the total: four driven wheels do not double it.
 *
 * <p>It holds at any place behind the transfer case: divide the torque of all driveshafts, of all half-shafts, or of all wheels. The greatest
 * values are those of a straight line on uneven grip; torque that winds up between tied axles in a turn comes on top and is not counted.
 *
 * @param tie how the axles are tied
 * @param total the torque of both axles together
 * @param greatestFront the most that the front axle may have to carry
 * @param greatestRear the most that the rear axle may have to carry
 */
public record AxleShare(AxleTie tie, Torque total, Torque greatestFront, Torque greatestRear) {

    /**
     * Divides a torque.
     *
     * @param tie how the axles are tied
     * @param total the torque of both axles together
     * @return each axle may carry all of it where they are tied; half each through an open differential; all of it at the rear where only the rear
     *     axle is driven
     */
    public static AxleShare of(AxleTie tie, Torque total) {
        if (tie == AxleTie.OPEN) {
            return new AxleShare(tie, total, total.times(0.5), total.times(0.5));
        }
        return new AxleShare(tie, total, tie.isTied() ? total : total.times(0.0), total);
    }

    /**
     * Returns the share of each axle when both grip alike.
     *
     * @return half of the total; all of it where only the rear axle is driven
     */
    public Torque even() {
        return tie == AxleTie.REAR_ONLY ? total : total.times(0.5);
    }

    /**
     * Returns the most that one wheel or half-shaft may have to carry with open differentials in the axles.
     *
     * @return half of what its axle may carry
     */
    public Torque greatestAtOneWheel() {
        return greatestRear.times(0.5);
    }

    /**
     * Returns the most that one wheel or half-shaft may have to carry with the differentials in the axles locked.
     *
     * @return all of what its axle may carry
     */
    public Torque greatestAtOneWheelLocked() {
        return greatestRear;
    }

    /**
     * Says what the division rests on.
     *
     * @return one sentence without a full stop
     */
    public String statement() {
        return switch (tie) {
            case OPEN ->
                "the open center differential gives each axle half of the torque; locked, one axle may carry all of it";
            case PART_TIME ->
                "one axle may have to carry all of the torque: the rear one in two-wheel drive, either one in four-wheel drive";
            case LOCKED -> "one axle may have to carry all of the torque, because the axles are locked together";
            case REAR_ONLY -> "the rear axle carries all of the torque";
        };
    }
}
