package drivetrain.engine;

import drivetrain.finding.Source;

/** The published rules that correct engine power for the air. */
public enum CorrectionRule {
    /** SAE J1349 for spark ignition: 1.18 (99/pd) sqrt(T/298) - 0.18. */
    SAE_J1349("SAE J1349", "spark-correction"),
    /** ISO 1585 for spark ignition: (99/pd)^1.2 (T/298)^0.6. */
    ISO_1585_SPARK("ISO 1585, spark ignition", "spark-correction"),
    /** ISO 1585 for compression ignition: fa^fm. */
    ISO_1585_COMPRESSION("ISO 1585, compression ignition", "compression-correction");

    private final String label;
    private final String limit;

    CorrectionRule(String label, String limit) {
        this.label = label;
        this.limit = limit;
    }

    /**
     * Returns the name of the rule.
     *
     * @return the label, such as {@code SAE J1349}
     */
    public String label() {
        return label;
    }

    /**
     * Returns where the rule comes from.
     *
     * @return the source
     */
    public Source source() {
        return switch (this) {
            case SAE_J1349 -> Source.standard("SAE J1349 (June 1990), as quoted on public pages");
            case ISO_1585_SPARK -> Source.standard("ISO 1585, spark ignition, as quoted in public code");
            case ISO_1585_COMPRESSION ->
                Source.standard("ISO 1585, compression ignition, as quoted in a diesel engine maker's service manual;"
                        + " exponents of the air factor from memory");
        };
    }

    EngineLimit validity() {
        return EngineLimit.of(limit);
    }
}
