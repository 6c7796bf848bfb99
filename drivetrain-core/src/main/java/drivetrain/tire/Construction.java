package drivetrain.tire;

/** How the carcass of a tire is built, which decides how far it rolls for its diameter. */
public enum Construction {
    /** Radial ply, marked {@code R}. */
    RADIAL("R", "radial"),
    /** Diagonal (bias) ply, marked {@code -} or {@code D}. */
    DIAGONAL("-", "diagonal (bias-ply)"),
    /** Bias ply under a belt, marked {@code B}. */
    BIAS_BELTED("B", "bias-belted");

    private final String mark;
    private final String label;

    Construction(String mark, String label) {
        this.mark = mark;
        this.label = label;
    }

    /**
     * Returns the mark in a size designation.
     *
     * @return {@code R}, {@code -} or {@code B}
     */
    public String mark() {
        return mark;
    }

    /**
     * Returns the construction in words.
     *
     * @return the label, in lower case
     */
    public String label() {
        return label;
    }
}
