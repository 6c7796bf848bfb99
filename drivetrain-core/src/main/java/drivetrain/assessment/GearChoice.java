package drivetrain.assessment;

import drivetrain.finding.Outcome;
import drivetrain.gearing.DriveGear;
import drivetrain.gearing.GearTrain;
import drivetrain.gearing.Range;
import drivetrain.refusal.Refusal;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Which gear a question is about.
 *
 * @param number the number of the gear, from 1; empty for the highest gear of the range
 * @param range the range of the transfer case
 * @param auxiliary true with the auxiliary over- or underdrive engaged; not looked at for the highest gear
 */
public record GearChoice(OptionalInt number, Range range, boolean auxiliary) {

    /** The highest gear in the high range. */
    public static final GearChoice TOP = topOf(Range.HIGH);

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
     * Chooses a gear by its number, without the auxiliary unit.
     *
     * @param number the number, from 1
     * @param range the range of the transfer case
     * @return the choice
     * @throws drivetrain.refusal.RefusedException if the number is not at least 1
     */
    public static GearChoice of(int number, Range range) {
        return new GearChoice(OptionalInt.of(number), range, false);
    }

    /**
     * Chooses the highest gear of a range, whichever way the auxiliary unit makes it so.
     *
     * @param range the range of the transfer case
     * @return the choice
     */
    public static GearChoice topOf(Range range) {
        return new GearChoice(OptionalInt.empty(), range, false);
    }

    /**
     * Engages the auxiliary over- or underdrive.
     *
     * @return a copy with the unit engaged
     */
    public GearChoice withAuxiliary() {
        return new GearChoice(number, range, true);
    }

    Outcome<DriveGear> in(GearTrain train) {
        if (range == Range.LOW && train.transferCase().low().isEmpty()) {
            return Outcome.notEvaluated("the transfer case has no low range");
        }
        if (auxiliary && !train.overdrive().isFitted()) {
            return Outcome.notEvaluated("no overdrive is fitted");
        }
        return Outcome.of(
                number.isPresent() ? train.gear(number.getAsInt(), range, auxiliary) : highest(train),
                "the transmission has " + train.transmission().forward().size() + " forward gears");
    }

    private Optional<DriveGear> highest(GearTrain train) {
        DriveGear highest = null;
        for (DriveGear gear : train.gears()) {
            boolean candidate = !gear.reverse() && gear.range() == range;
            if (candidate && (highest == null || gear.totalRatio() < highest.totalRatio())) {
                highest = gear;
            }
        }
        return Optional.ofNullable(highest);
    }
}
