package drivetrain.fuel;

import drivetrain.finding.Source;
import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;

/**
 * The wires between battery and pump: copper, the same way there and back.
 *
 * <p>Resistance = resistivity x 2 length / area at 20 degC. A gauge number n has the diameter 0.127 mm x 92^((36 - n)/39) by ASTM B258.
 *
 * @param oneWay the length one way, 0.1 to 30 m; the return way through wire or body is taken as the same again
 * @param areaSquareMillimeters the area of the copper, 0.2 to 120 mm2
 */
public record Wire(Length oneWay, double areaSquareMillimeters) {

    /** Where the diameter of a gauge number comes from. */
    public static final Source GAUGE = Source.standard("ASTM B258: diameters of the American wire gauge");

    /** Where the resistivity comes from. */
    static final Source RESISTIVITY = FuelConstant.of("copper-resistivity").source();

    static final Length LEAST = Length.ofMeters(0.1);
    static final Length MOST = Length.ofMeters(30.0);
    static final double LEAST_AREA = 0.2;
    static final double MOST_AREA = 120.0;

    /** The thinnest gauge that is read. */
    public static final int THINNEST_GAUGE = 24;

    /** Diameter of gauge 36 in millimeters, 0.005 in exactly; ASTM B258. */
    private static final double GAUGE_36_MILLIMETERS = 0.127;

    /** Ratio of the diameters of gauges 0000 and 36, which lie 39 steps apart; ASTM B258. */
    private static final double GAUGE_RATIO = 92.0;

    private static final double GAUGE_STEPS = 39.0;

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public Wire {
        oneWay.requireBetween("length of the pump's wire", LEAST, MOST, Length.METER);
        if (!(areaSquareMillimeters >= LEAST_AREA && areaSquareMillimeters <= MOST_AREA)) {
            throw Refusal.of("area of the pump's wire", Double.toString(areaSquareMillimeters), "is out of range")
                    .allowing("0.2 mm2 to 120 mm2")
                    .asException();
        }
    }

    /**
     * Makes wires of a gauge number.
     *
     * @param oneWay the length one way
     * @param gauge the American wire gauge number, 0 to 24
     * @return the wires
     * @throws drivetrain.refusal.RefusedException if a value is out of range
     */
    public static Wire ofGauge(Length oneWay, int gauge) {
        if (gauge < 0 || gauge > THINNEST_GAUGE) {
            throw Refusal.of("wire gauge", Integer.toString(gauge), "is out of range")
                    .allowing("AWG 0 to AWG " + THINNEST_GAUGE)
                    .asException();
        }
        double diameter = GAUGE_36_MILLIMETERS * Math.pow(GAUGE_RATIO, (36.0 - gauge) / GAUGE_STEPS);
        return new Wire(oneWay, Math.PI / 4.0 * diameter * diameter);
    }

    /**
     * Returns the resistance of both ways together at 20 degC.
     *
     * @return the resistance in ohms
     */
    public double ohms() {
        return FuelConstant.of("copper-resistivity").value() * 2.0 * oneWay.toMeters() / (areaSquareMillimeters * 1e-6);
    }
}
