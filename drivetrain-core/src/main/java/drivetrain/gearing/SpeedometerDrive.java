package drivetrain.gearing;

/** What turns the speedometer. */
public enum SpeedometerDrive {
    /** The output of the transmission or transfer case: axle ratio, hub reduction and tire matter. */
    DRIVESHAFT("driveshaft"),
    /** Sensors at the wheels: only the tire matters. */
    WHEELS("wheels");

    private final String label;

    SpeedometerDrive(String label) {
        this.label = label;
    }

    /**
     * Returns the word by which a catalog names it.
     *
     * @return the label, in lower case
     */
    public String label() {
        return label;
    }
}
