package drivetrain.tire;

import drivetrain.finding.Outcome;
import drivetrain.quantity.Length;
import java.util.Optional;

/**
 * A tire size as it is marked on the sidewall.
 *
 * <p>Three systems are read; upper and lower case, spaces and {@code ×} are all the same:
 *
 * <ul>
 *   <li>{@link MetricDesignation}: {@code 265/75R16}, {@code LT265/75R16}, {@code P265/70R17}, {@code 285/35ZR19}, without an aspect ratio {@code 205R16};
 *   <li>{@link FlotationDesignation}: {@code 35x12.50R17LT}, {@code 35x12.50-15};
 *   <li>{@link NumericDesignation}: {@code 7.50R16}, {@code 7.50-16}, {@code 6.50R16C}.
 * </ul>
 *
 * Behind the size may stand, once each and in any order, a service description ({@code 116T}, {@code 123/120R}, {@code (100Y)}) and a load
 * range ({@code E}, {@code LRE}, {@code load range E}, {@code 10PR}, {@code XL}, {@code extra load}, {@code SL}).
 */
public sealed interface TireDesignation permits MetricDesignation, FlotationDesignation, NumericDesignation {

    /**
     * Reads a designation.
     *
     * @param text the designation as typed
     * @return the designation
     * @throws drivetrain.refusal.RefusedException if the text is not a designation, with the index of the fault in the text as typed and, where there is one, the nearest valid reading
     */
    static TireDesignation parse(String text) {
        return DesignationParser.parse(text);
    }

    /**
     * Returns the nominal rim diameter.
     *
     * @return the rim diameter code in inches
     */
    Length rimDiameter();

    /**
     * Returns how the carcass is built.
     *
     * @return the construction
     */
    Construction construction();

    /**
     * Returns what is marked around the size.
     *
     * @return use, load range and service description
     */
    Markings markings();

    /**
     * Returns the service description.
     *
     * @return load index and speed symbol, where marked
     */
    default Optional<ServiceDescription> service() {
        return markings().service();
    }

    /**
     * Returns the size alone, with its use mark and without service description and load range.
     *
     * @return the canonical size, such as {@code LT265/75R16}
     */
    String size();

    /**
     * Returns the designation as one writes it.
     *
     * @return the canonical text, which {@link #parse} reads back as an equal designation
     */
    default String text() {
        return size() + markings().tail();
    }

    /**
     * Returns the overall diameter of a new tire of this size, inflated and not loaded.
     *
     * @return the design diameter with its basis, or why the size does not tell it
     */
    Outcome<OverallDiameter> overallDiameter();
}
