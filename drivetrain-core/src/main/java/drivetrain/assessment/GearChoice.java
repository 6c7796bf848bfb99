package drivetrain.assessment;

import drivetrain.finding.Outcome;
import drivetrain.gearing.DriveGear;
import drivetrain.gearing.GearTrain;
import drivetrain.gearing.Range;
import drivetrain.refusal.Refusal;
import java.util.OptionalInt;

/**
 * Which gear a question is about.
 *
 * @param number the number of the gear, from 1; empty for the top gear
 * @param range the range of the transfer case
 */
public record GearChoice(OptionalInt number, Range range) {

    /** The top gear in the high range. */
    public static final GearChoice TOP = new GearChoice(OptionalInt.empty(), Range.HIGH);

    /**
     * Checks the number.
     *
     * @throws drivetrain.refusal.RefusedException if the number is not at least 1
     */
    public GearChoice {
        if (number.isPresent() && number.getAsInt() < 1) {
            throw Refusal.of("gear", Integer.toString(number.getAsInt()), "is not a forward gear")
                    .allowing("1 up to the number of gears")
                    .asException();
        }
    }

    /**
     * Chooses a gear by its number.
     *
     * @param number the number, from 1
     * @param range the range of the transfer case
     * @return the choice
     * @throws drivetrain.refusal.RefusedException if the number is not at least 1
     */
    public static GearChoice of(int number, Range range) {
        return new GearChoice(OptionalInt.of(number), range);
    }

    /**
     * Chooses the top gear of a range.
     *
     * @param range the range of the transfer case
     * @return the choice
     */
    public static GearChoice topOf(Range range) {
        return new GearChoice(OptionalInt.empty(), range);
    }

    Outcome<DriveGear> in(GearTrain train) {
        int wanted = number.orElseGet(() -> train.transmission().forward().size());
        return Outcome.of(
                train.gear(wanted, range),
                train.transfer().low().isEmpty() && range == Range.LOW
                        ? "the transfer case has no low range"
                        : "the transmission has " + train.transmission().forward().size() + " forward gears");
    }
}
