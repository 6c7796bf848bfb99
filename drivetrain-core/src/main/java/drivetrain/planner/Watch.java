package drivetrain.planner;

/** Looks on while a planner works, and can stop it. */
public interface Watch {

    /** Lets the planner work to its end, unless its thread is interrupted. */
    Watch PATIENT = new Watch() {
        @Override
        public boolean isCanceled() {
            return false;
        }

        @Override
        public void progress(double fraction) {}
    };

    /**
     * Tells whether the work is to stop. Asked every few microseconds, from any thread.
     *
     * @return true to stop
     */
    boolean isCanceled();

    /**
     * Hears ahead of a search how long it will take, where that is known.
     *
     * @param seconds the time, nearly
     */
    default void expect(double seconds) {}

    /**
     * Hears how far the work is. Called from any thread, never by two at once, and not for work of a few milliseconds.
     *
     * @param fraction 0 to 1, never falling within one pass over the combinations
     */
    void progress(double fraction);
}
