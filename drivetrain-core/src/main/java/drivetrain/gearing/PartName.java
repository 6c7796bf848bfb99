package drivetrain.gearing;

import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.Optional;

/** What the literals of single-ratio parts share: the word for an absent part, and the trailing efficiency. */
final class PartName {

    static final String NONE = "none";
    static final List<String> KEYWORDS = List.of("efficiency", NONE);

    private PartName() {}

    /** Reads {@code efficiency 96 %} if it stands there. */
    static Optional<Efficiency> takeEfficiency(Literal literal) {
        return literal.takes("efficiency") ? Optional.of(Efficiency.take(literal)) : Optional.empty();
    }

    static String efficiencyWords(Optional<Efficiency> efficiency) {
        return efficiency.map(value -> " " + value.words()).orElse("");
    }

    /** A part that is fitted has a ratio other than one; the absent part has exactly one. */
    static void requireNoneIffOne(String subject, String name, Ratio ratio) {
        if (name.equals(NONE) != (ratio.value() == 1.0)) {
            throw Refusal.of(subject, ratio.text(), "changes nothing, or is called \"none\" and changes something")
                    .allowing("a ratio other than 1, or none")
                    .asException();
        }
    }

    /** Refuses a written ratio of one where it stands. */
    static void requireNotOne(Literal literal, Ratio ratio) {
        if (ratio.value() == 1.0) {
            throw literal.refusal("is 1 and changes nothing; write none where the part is not fitted", 0);
        }
    }
}
