package drivetrain.road;

/** Which wheels drive, and how front and rear axle share the force. */
public enum DriveLayout {
    /** Only the rear axle drives. */
    REAR("rear-wheel drive"),
    /** Only the front axle drives. */
    FRONT("front-wheel drive"),
    /** Both axles drive through an open center differential: each gives what the lighter one can hold. */
    OPEN("four-wheel drive, center differential open"),
    /** Both axles drive and turn together. */
    LOCKED("four-wheel drive, axles tied");

    private final String label;

    DriveLayout(String label) {
        this.label = label;
    }

    /**
     * Returns the words for it.
     *
     * @return the label, in lower case
     */
    public String label() {
        return label;
    }
}
