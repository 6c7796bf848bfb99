package drivetrain.repl.command;

/** The three things that one does with a drivetrain package, in the order of the help. */
public enum Topic {
    /** Choosing parts. */
    CHOOSE("choose the parts"),
    /** Asking for answers. */
    ASK("ask about them"),
    /** Keeping the work and setting the shell up. */
    KEEP("keep the work");

    private final String heading;

    Topic(String heading) {
        this.heading = heading;
    }

    /**
     * Returns the heading of the help.
     *
     * @return the heading, in lower case
     */
    public String heading() {
        return heading;
    }
}
