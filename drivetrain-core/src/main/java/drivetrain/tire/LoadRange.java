package drivetrain.tire;

import java.util.Arrays;
import java.util.Optional;

/**
 * The strength class of a tire: a load range letter of light truck tires with its ply rating, or standard and extra load of passenger car tires.
 *
 * <p>The load range says at which inflation pressure the tire reaches its load; the load itself is told by the load index only. Letters and ply ratings: common
 * practice of the trade, no source.
 */
public enum LoadRange {
    /** Load range A, 2 ply rating. */
    A("LRA", 2),
    /** Load range B, 4 ply rating. */
    B("LRB", 4),
    /** Load range C, 6 ply rating. */
    C("LRC", 6),
    /** Load range D, 8 ply rating. */
    D("LRD", 8),
    /** Load range E, 10 ply rating. */
    E("LRE", 10),
    /** Load range F, 12 ply rating. */
    F("LRF", 12),
    /** Load range G, 14 ply rating. */
    G("LRG", 14),
    /** Load range H, 16 ply rating. */
    H("LRH", 16),
    /** Load range J, 18 ply rating. */
    J("LRJ", 18),
    /** Load range L, 20 ply rating. */
    L("LRL", 20),
    /** Load range M, 22 ply rating. */
    M("LRM", 22),
    /** Load range N, 24 ply rating. */
    N("LRN", 24),
    /** Standard load, {@code SL}. */
    STANDARD_LOAD("SL", 0),
    /** Extra load or reinforced, {@code XL}. */
    EXTRA_LOAD("XL", 0);

    private final String mark;
    private final int plyRating;

    LoadRange(String mark, int plyRating) {
        this.mark = mark;
        this.plyRating = plyRating;
    }

    /**
     * Returns the mark behind a size.
     *
     * @return the mark, such as {@code LRE} or {@code XL}
     */
    public String mark() {
        return mark;
    }

    static Optional<LoadRange> lettered(char letter) {
        return Arrays.stream(values())
                .filter(range -> range.plyRating > 0 && range.name().charAt(0) == letter)
                .findFirst();
    }

    static Optional<LoadRange> rated(int plies) {
        return Arrays.stream(values())
                .filter(range -> range.plyRating > 0 && range.plyRating == plies)
                .findFirst();
    }
}
