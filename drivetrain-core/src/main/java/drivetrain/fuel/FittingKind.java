package drivetrain.fuel;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A kind of fitting in a fuel line. */
public enum FittingKind {
    /** A 90 degree hose end or elbow. */
    ELBOW("elbow", "elbows"),
    /** A long bend. */
    BEND("bend", "bends"),
    /** A tee, through its branch. */
    TEE("tee", "tees"),
    /** An in-line check valve. */
    CHECK_VALVE("check-valve", "check-valves");

    private final String word;
    private final String plural;

    FittingKind(String word, String plural) {
        this.word = word;
        this.plural = plural;
    }

    /**
     * Returns the word by which a line's text calls it.
     *
     * @return the word
     */
    public String word() {
        return word;
    }

    static Optional<FittingKind> ofWord(String text) {
        return Arrays.stream(values())
                .filter(kind -> kind.word.equalsIgnoreCase(text) || kind.plural.equalsIgnoreCase(text))
                .findFirst();
    }

    static List<String> words() {
        return Arrays.stream(values()).map(kind -> kind.plural).toList();
    }

    /** The pressure that one costs, in dynamic pressures. */
    double lossCoefficient() {
        return FuelConstant.of(word + "-loss").value();
    }
}
