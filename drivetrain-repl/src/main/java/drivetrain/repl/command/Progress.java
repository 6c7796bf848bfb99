package drivetrain.repl.command;

/** Where a command that takes long says how far it is. */
public interface Progress {

    /** Says nothing. */
    Progress NONE = line -> {};

    /**
     * Says how far the work is. Called from any thread, never by two at once.
     *
     * @param line one line
     */
    void tell(String line);
}
