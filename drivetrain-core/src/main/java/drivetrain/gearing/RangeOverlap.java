package drivetrain.gearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The gears of low range that are as tall as a gear of high range or taller, so that the ranges overlap.
 *
 * @param places where each such gear lies, shortest first; empty if low range ends below first gear of high range
 */
public record RangeOverlap(List<Place> places) {

    /** Copies the places. */
    public RangeOverlap {
        places = List.copyOf(places);
    }

    /**
     * Where a gear of low range lies among those of high range.
     *
     * @param low the gear of low range
     * @param shorter the tallest gear of high range that is not taller than it
     * @param taller the next gear of high range, or empty if there is none
     */
    public record Place(DriveGear low, DriveGear shorter, Optional<DriveGear> taller) {

        /**
         * Says where the gear lies.
         *
         * @return a sentence without a full stop, such as {@code 3rd low lies between 1st high and 2nd high}
         */
        public String statement() {
            if (low.totalRatio() == shorter.totalRatio()) {
                return low.label() + " is as tall as " + shorter.label();
            }
            return taller.map(next -> low.label() + " lies between " + shorter.label() + " and " + next.label())
                    .orElseGet(() -> low.label() + " is taller than " + shorter.label());
        }
    }

    /**
     * Compares the forward gears of both ranges, the auxiliary unit disengaged.
     *
     * @param train the gear train
     * @return the overlap; empty without a low range
     */
    public static RangeOverlap of(GearTrain train) {
        List<DriveGear> sorted = train.byTotalRatio().stream()
                .filter(gear -> !gear.auxiliaryEngaged())
                .toList();
        List<DriveGear> high =
                sorted.stream().filter(gear -> gear.range() == Range.HIGH).toList();
        List<Place> places = new ArrayList<>();
        for (DriveGear low : sorted) {
            if (low.range() == Range.LOW && low.totalRatio() <= high.get(0).totalRatio()) {
                places.add(place(low, high));
            }
        }
        return new RangeOverlap(places);
    }

    private static Place place(DriveGear low, List<DriveGear> high) {
        int next = 0;
        while (next < high.size() && high.get(next).totalRatio() >= low.totalRatio()) {
            next++;
        }
        Optional<DriveGear> taller = next < high.size() ? Optional.of(high.get(next)) : Optional.empty();
        return new Place(low, high.get(next - 1), taller);
    }
}
