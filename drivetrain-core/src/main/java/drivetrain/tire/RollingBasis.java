package drivetrain.tire;

/** What a rolling circumference rests on, best first. */
public enum RollingBasis {
    /** The distance of one wheel turn, measured on the loaded tire. */
    MEASURED_ROLLOUT("measured roll-out"),
    /** Revolutions per mile or kilometre that the tire's maker publishes. */
    MAKER_REVOLUTIONS("the tire maker's revolutions per distance"),
    /** 3.05 times the overall diameter of a radial tire. */
    RADIAL_RULE("tire-standard rule: 3.05 x overall diameter"),
    /** The bias-ply share of the radial rule. */
    BIAS_RULE("estimate for a bias-ply tire: 2.99 x overall diameter");

    private final String label;

    RollingBasis(String label) {
        this.label = label;
    }

    /**
     * Returns the basis in words that can be read out to a customer.
     *
     * @return the label
     */
    public String label() {
        return label;
    }
}
