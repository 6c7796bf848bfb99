package drivetrain.driveshaft;

/** What turns the corner at a joint. */
public enum JointKind {
    /** One cross and two yokes (a universal joint): the driven side speeds up and slows down twice a turn. */
    SINGLE("single"),
    /** Two crosses with a centering device (a double joint, a constant-velocity pair): both sides turn alike. */
    DOUBLE("double");

    private final String label;

    JointKind(String label) {
        this.label = label;
    }

    /**
     * Returns the word by which the joint is called.
     *
     * @return the label, in lower case
     */
    public String label() {
        return label;
    }
}
