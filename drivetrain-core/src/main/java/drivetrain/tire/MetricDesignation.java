package drivetrain.tire;

import drivetrain.finding.Outcome;
import drivetrain.quantity.Length;
import java.util.List;
import java.util.OptionalInt;

/**
 * A metric size: {@code 265/75R16}, or {@code 205R16} without an aspect ratio.
 *
 * @param sectionWidth nominal section width in millimetres, 105 to 455
 * @param aspect nominal aspect ratio (section height over section width) in percent, 20 to 100; empty where the size does not state it
 * @param construction how the carcass is built
 * @param zr true where a radial is marked {@code ZR}: meant for more than 240 km/h
 * @param rimCode nominal rim diameter in inches, 8 to 30 in halves
 * @param markings use, load range and service description
 */
public record MetricDesignation(
        int sectionWidth, OptionalInt aspect, Construction construction, boolean zr, double rimCode, Markings markings)
        implements TireDesignation {

    /**
     * Checks every part.
     *
     * @throws drivetrain.refusal.RefusedException if a part is out of range, or {@code ZR} is not radial
     */
    public MetricDesignation {
        SizeRange.METRIC_WIDTH.require(sectionWidth);
        aspect.ifPresent(SizeRange.ASPECT::require);
        SizeRange.RIM.require(rimCode);
        SizeRange.requireRadialZr(zr, construction);
    }

    @Override
    public Length rimDiameter() {
        return Length.ofInches(rimCode);
    }

    @Override
    public String size() {
        String prefix = markings.is(TireUse.COMMERCIAL)
                ? ""
                : markings.use().map(TireUse::mark).orElse("");
        return prefix + bareSize() + markings.suffix(true);
    }

    /** The size without any use mark, by which tables list it. */
    String bareSize() {
        String ratio = aspect.isPresent() ? "/" + aspect.getAsInt() : "";
        return sectionWidth + ratio + (zr ? "Z" : "") + construction.mark() + SizeText.number(rimCode);
    }

    @Override
    public Outcome<OverallDiameter> overallDiameter() {
        if (aspect.isEmpty()) {
            return SizeDiameters.of(
                    this, List.of(bareSize()), "states no aspect ratio, and the table of sizes has no row for it");
        }
        double height = sectionWidth * (aspect.getAsInt() / 100.0);
        Length diameter = Length.ofMillimeters(rimDiameter().toMillimeters() + 2.0 * height);
        return Outcome.of(new OverallDiameter(diameter, DiameterBasis.SIZE_FORMULA, this, List.of()));
    }
}
