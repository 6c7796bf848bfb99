package drivetrain.fuel;

import drivetrain.quantity.Pressure;

/**
 * The pressure regulator.
 *
 * @param layout where it sits
 * @param setting the pressure that it holds above its reference, 0.1 to 10 bar
 * @param referenced true if its reference is the manifold, false if it is the air outside
 */
public record Regulator(Layout layout, Pressure setting, boolean referenced) {

    static final Pressure LEAST = Pressure.ofBar(0.1);
    static final Pressure MOST = Pressure.ofBar(10.0);

    /** Where the regulator sits. */
    public enum Layout {
        /** At the rail: what the engine does not burn flows back, and the feed line carries the whole pump flow. */
        RETURN("return"),
        /** At the tank: the feed line carries only what the engine burns, and its loss is missing at the rail. */
        RETURNLESS("returnless");

        private final String word;

        Layout(String word) {
            this.word = word;
        }

        /**
         * Returns the word by which a fuel system's text calls it.
         *
         * @return the word
         */
        public String word() {
            return word;
        }
    }

    /**
     * Checks the setting.
     *
     * @throws drivetrain.refusal.RefusedException if it is out of range
     */
    public Regulator {
        setting.requireBetween("setting of the regulator", LEAST, MOST, Pressure.PSI);
    }

    /**
     * Returns the pressure that it holds above the air outside.
     *
     * @param boost the pressure in the manifold above the air outside
     * @return the gauge pressure
     */
    public Pressure held(Pressure boost) {
        return referenced ? setting.plus(boost) : setting;
    }
}
