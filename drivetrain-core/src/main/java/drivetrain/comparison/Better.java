package drivetrain.comparison;

/** Which way a figure is better, as far as that can be said without knowing what the vehicle is for. */
public enum Better {
    /** A lower figure is what people ask for. */
    LOWER,
    /** A higher figure is what people ask for. */
    HIGHER,
    /** It depends. */
    NEITHER
}
