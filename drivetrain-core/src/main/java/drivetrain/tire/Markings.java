package drivetrain.tire;

import java.util.Optional;

/**
 * What is marked around a size.
 *
 * @param use the kind of vehicle, where the size is marked for one
 * @param loadRange the strength class, where given
 * @param service the service description, where given
 */
public record Markings(Optional<TireUse> use, Optional<LoadRange> loadRange, Optional<ServiceDescription> service) {

    /** No marking at all. */
    public static final Markings NONE = new Markings(Optional.empty(), Optional.empty(), Optional.empty());

    boolean is(TireUse asked) {
        return use.isPresent() && use.get() == asked;
    }

    /** The use where it stands behind the rim diameter. */
    String suffix(boolean metric) {
        return use.filter(marked -> marked == TireUse.COMMERCIAL || !metric)
                .map(TireUse::mark)
                .orElse("");
    }

    /** Service description and load range, each with a space ahead. */
    String tail() {
        return service.map(described -> " " + described.text()).orElse("")
                + loadRange.map(range -> " " + range.mark()).orElse("");
    }
}
