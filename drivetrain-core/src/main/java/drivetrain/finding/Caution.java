package drivetrain.finding;

/**
 * A warning that belongs to a result because acting on the result can hurt someone.
 *
 * @param hazard the hazard in a word or two, such as {@code tire}
 * @param text the warning, one or two sentences
 */
public record Caution(String hazard, String text) {}
