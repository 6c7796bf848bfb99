package drivetrain.driveshaft;

/** Which axle a shaft drives, and with it whether it runs forward or rearward from the transfer case. */
public enum ShaftPlace {
    /** To the front axle. */
    FRONT("front", 1.0),
    /** To the rear axle. */
    REAR("rear", -1.0);

    private final String label;
    private final double forward;

    ShaftPlace(String label, double forward) {
        this.label = label;
        this.forward = forward;
    }

    /**
     * Returns the word for it.
     *
     * @return {@code front} or {@code rear}
     */
    public String label() {
        return label;
    }

    /** Which way the shaft runs along the x axis of ISO 8855: 1 forward, -1 rearward. */
    double forward() {
        return forward;
    }
}
