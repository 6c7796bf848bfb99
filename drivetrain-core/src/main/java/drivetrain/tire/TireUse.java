package drivetrain.tire;

/** The kind of vehicle that a size designation is marked for. */
public enum TireUse {
    /** Passenger car, marked {@code P} ahead of a metric size. */
    PASSENGER("P"),
    /** Light truck, marked {@code LT} ahead of a metric size and behind any other. */
    LIGHT_TRUCK("LT"),
    /** Trailer only, marked {@code ST}. */
    TRAILER("ST"),
    /** Light commercial vehicle, marked {@code C} behind the rim diameter. */
    COMMERCIAL("C");

    private final String mark;

    TireUse(String mark) {
        this.mark = mark;
    }

    /**
     * Returns the mark in a size designation.
     *
     * @return {@code P}, {@code LT}, {@code ST} or {@code C}
     */
    public String mark() {
        return mark;
    }
}
