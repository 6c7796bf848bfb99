package drivetrain.refusal;

/** Thrown when an input cannot be used. The message is the refusal's own sentence; nothing has been changed or lost. */
public final class RefusedException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    @SuppressWarnings("serial") // a refusal travels within one process only
    private final Refusal refusal;

    /**
     * Carries a refusal.
     *
     * @param refusal what is refused and why
     */
    public RefusedException(Refusal refusal) {
        super(refusal.sentence());
        this.refusal = refusal;
    }

    /**
     * Returns what is refused and why.
     *
     * @return the refusal
     */
    public Refusal refusal() {
        return refusal;
    }

    /**
     * Returns the same refusal with its file, line and column.
     *
     * @param place where the value was read
     * @return a new exception with this one as its cause
     */
    public RefusedException in(Place place) {
        RefusedException located = new RefusedException(refusal.in(place));
        located.initCause(this);
        return located;
    }
}
