package drivetrain.driveshaft;

import drivetrain.quantity.Length;

/**
 * How far an axle moves, and where its pinion sits.
 *
 * @param pinion the pinion's joint center, from the middle of the axle at ride height
 * @param bump how far each wheel can go up from ride height, 0 to 600 mm
 * @param droop how far each wheel can go down from ride height, 0 to 600 mm
 * @param track the distance of the wheels of the axle, 0.8 to 3 m
 */
public record AxleTravel(Position pinion, Length bump, Length droop, Length track) {

    private static final Length NONE = Length.ofMeters(0.0);
    private static final Length MOST = Length.ofMillimeters(600.0);
    private static final Length NARROWEST = Length.ofMillimeters(800.0);
    private static final Length WIDEST = Length.ofMeters(3.0);

    /**
     * Checks the figures.
     *
     * @throws drivetrain.refusal.RefusedException if one is out of range
     */
    public AxleTravel {
        requireWay("bump", bump);
        requireWay("droop", droop);
        requireTrack(track);
        SuspensionPoint.requireNear("pinion", pinion);
    }

    /** The way of a wheel up or down. */
    static Length requireWay(String which, Length way) {
        return way.requireBetween(which, NONE, MOST, Length.MILLIMETER);
    }

    static Length requireTrack(Length track) {
        return track.requireBetween("track", NARROWEST, WIDEST, Length.MILLIMETER);
    }

    double heave(double left, double right) {
        return (left + right) / 2.0;
    }

    /** The roll of the axle with its wheels raised by so much, positive with the left side up. */
    double roll(double left, double right) {
        return Math.asin(Math.max(-1.0, Math.min(1.0, (left - right) / track.toMeters())));
    }
}
