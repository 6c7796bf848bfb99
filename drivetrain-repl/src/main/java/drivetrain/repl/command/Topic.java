package drivetrain.repl.command;

/** What one does with a drivetrain package, in the order of the help. */
public enum Topic {
    /** Choosing the parts of the driveline and what it is driven on. */
    CHOOSE("choose the parts"),
    /** Choosing the fuel supply, and asking about it. */
    FUEL("choose the fuel supply and ask about it"),
    /** Asking about gears, speeds and forces. */
    ROAD("ask about gears and road"),
    /** Asking about driveshafts and vibration. */
    SHAFTS("ask about driveshafts and vibration"),
    /** Seeing what is chosen, whether it holds and why. */
    WHOLE("look at the whole"),
    /** Finding the right package. */
    COMPARE("find the right package"),
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
