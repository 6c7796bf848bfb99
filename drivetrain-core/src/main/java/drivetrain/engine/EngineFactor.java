package drivetrain.engine;

import drivetrain.quantity.DecimalText;
import drivetrain.refusal.Refusal;

/**
 * The engine factor fm of ISO 1585: how strongly the air acts on the power of a compression-ignition engine, from the fuel that it burns in each cycle.
 *
 * <p>fm = 0.036 qc - 1.14 for 37.2 to 65 mg/(L cycle), where qc = q / r. Outside, fm keeps the value of the nearer end: 0.2 (0.1992) below, 1.2 above.
 *
 * @param fuelPerCycle q, the fuel burnt in one cycle per liter of displacement, in mg/(L cycle), more than 0 and at most 300
 * @param boostRatio r, the absolute pressure behind the compressor over that of the ambient air; 1 for a naturally aspirated engine, 1 to 10
 */
public record EngineFactor(double fuelPerCycle, double boostRatio) {

    private static final double LEAST_FUEL = 37.2;
    private static final double MOST_FUEL = 65.0;
    private static final double GREATEST_FUEL = 300.0;
    private static final double GREATEST_RATIO = 10.0;

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range or not a number
     */
    public EngineFactor {
        if (!(fuelPerCycle > 0.0 && fuelPerCycle <= GREATEST_FUEL)) {
            throw Refusal.of("fuel per cycle", fuelPerCycle + " mg/(L cycle)", "is out of range")
                    .allowing("more than 0, at most 300 mg/(L cycle)")
                    .asException();
        }
        if (!(boostRatio >= 1.0 && boostRatio <= GREATEST_RATIO)) {
            throw Refusal.of("boost pressure ratio", Double.toString(boostRatio), "is out of range")
                    .allowing("1 to 10")
                    .asException();
        }
    }

    /**
     * Returns the factor.
     *
     * @return fm, 0.2 to 1.2
     */
    public double value() {
        double corrected = fuelPerCycle / boostRatio;
        return 0.036 * Math.min(Math.max(corrected, LEAST_FUEL), MOST_FUEL) - 1.14;
    }

    String formula() {
        return "fm = 0.036 q/r - 1.14, q = " + DecimalText.significant(fuelPerCycle, 4) + " mg/(L cycle), r = "
                + DecimalText.significant(boostRatio, 3) + ", q/r held to 37.2 to 65";
    }
}
