package drivetrain.engine;

/** Where torque and power were measured. */
public enum MeasuredAt {
    /** At the crankshaft: on an engine test bench. */
    CRANK("crank"),
    /** At the driven wheels, divided by the ratio: on a chassis dynamometer, less the losses of that drivetrain. */
    WHEELS("wheels");

    private final String word;

    MeasuredAt(String word) {
        this.word = word;
    }

    /**
     * Returns the one word by which it is written in a catalog.
     *
     * @return the word
     */
    public String word() {
        return word;
    }
}
