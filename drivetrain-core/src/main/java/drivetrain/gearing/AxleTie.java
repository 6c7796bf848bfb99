package drivetrain.gearing;

/** How the transfer case ties the front axle to the rear one. */
public enum AxleTie {
    /** The front axle is engaged when wanted, and then turns with the rear one. */
    PART_TIME("part-time"),
    /** An open differential between the axles gives each half of the torque. */
    OPEN("open"),
    /** Both axles always turn together. */
    LOCKED("locked"),
    /** Only the rear axle is driven. */
    REAR_ONLY("rear-only");

    private final String label;

    AxleTie(String label) {
        this.label = label;
    }

    /**
     * Returns the word by which a transfer case literal names it.
     *
     * @return the label, in lower case
     */
    public String label() {
        return label;
    }

    /**
     * Tells whether both driveshafts can be forced to turn at one speed.
     *
     * @return true for part-time and locked
     */
    public boolean isTied() {
        return this == PART_TIME || this == LOCKED;
    }
}
