package drivetrain.repl.command;

/** What one does with a drivetrain package, in the order of the help. */
public enum Topic {
    /** Choosing the parts of the driveline and what it is driven on. */
    CHOOSE("choosing", "choose the parts"),
    /** Choosing the fuel supply, and asking about it. */
    FUEL("fueling", "choose the fuel supply and ask about it"),
    /** Asking about gears, speeds and forces. */
    ROAD("driving", "ask about gears and road"),
    /** Asking about driveshafts and vibration. */
    SHAFTS("spinning", "ask about driveshafts and vibration"),
    /** Seeing what is chosen, whether it holds and why. */
    WHOLE("checking", "look at the whole"),
    /** Finding the right package. */
    COMPARE("comparing", "find the right package"),
    /** Keeping the work and setting the shell up. */
    KEEP("keeping", "keep the work");

    private final String word;
    private final String heading;

    Topic(String word, String heading) {
        this.word = word;
        this.heading = heading;
    }

    /**
     * Returns the word by which the help shows its commands.
     *
     * @return the word, which runs no command
     */
    public String word() {
        return word;
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
