package drivetrain.quantity;

/** In which units figures are shown. Input is read in any unit whatever the system. */
public enum UnitSystem {
    /** What a shop in the United States uses: inches, mph, lb, lb·ft, hp. */
    US,
    /** Millimeters, km/h, kg, N·m, kW. */
    METRIC,
    /** The US figure with the metric one in parentheses. */
    BOTH
}
