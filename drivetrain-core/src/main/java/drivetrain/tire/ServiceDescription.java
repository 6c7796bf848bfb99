package drivetrain.tire;

import drivetrain.refusal.Refusal;
import java.util.Optional;

/**
 * The service description behind a size: load index, or two of them for single and dual fitment, and speed symbol.
 *
 * @param single the load index of a tire fitted singly
 * @param dual the load index of each tire of a dual wheel, where the tire may be fitted so
 * @param speed the speed symbol
 * @param parenthesized true for {@code (100Y)} or {@code (100W)}: the tire is meant for more than the speed of its symbol
 */
public record ServiceDescription(LoadIndex single, Optional<LoadIndex> dual, SpeedSymbol speed, boolean parenthesized) {

    /**
     * Checks that the parts fit together.
     *
     * @throws drivetrain.refusal.RefusedException if the dual index is the greater one, or the parentheses go with a symbol other than W and Y
     */
    public ServiceDescription {
        if (dual.isPresent() && dual.get().value() > single.value()) {
            throw Refusal.of("dual load index", dual.get().toString(), "is greater than the single load index")
                    .allowing("at most " + single)
                    .asException();
        }
        if (parenthesized && !isOpenEnded(speed)) {
            throw Refusal.of("speed symbol", speed.text(), "stands in parentheses")
                    .allowing("W or Y in parentheses")
                    .asException();
        }
    }

    /**
     * Describes a tire for single fitment.
     *
     * @param single the load index
     * @param speed the speed symbol
     * @return the service description
     */
    public static ServiceDescription of(LoadIndex single, SpeedSymbol speed) {
        return new ServiceDescription(single, Optional.empty(), speed, false);
    }

    /** Tells whether parentheses around the symbol have a meaning. */
    static boolean isOpenEnded(SpeedSymbol symbol) {
        return symbol.text().equals("W") || symbol.text().equals("Y");
    }

    /**
     * Returns the description as a tire is marked.
     *
     * @return the text, such as {@code 123/120R}, which {@link TireDesignation#parse} reads behind a size
     */
    public String text() {
        String plain = single + dual.map(index -> "/" + index).orElse("") + speed;
        return parenthesized ? "(" + plain + ")" : plain;
    }
}
