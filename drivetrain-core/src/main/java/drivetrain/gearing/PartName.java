package drivetrain.gearing;

import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Torque;
import drivetrain.quantity.Unit;
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

    /** Reads a torque behind its keyword if it stands there. */
    static Optional<Torque> takeTorque(Literal literal, String keyword) {
        return literal.takes(keyword)
                ? Optional.of(literal.quantity(Torque.KIND, "a torque such as 1500 lb-ft"))
                : Optional.empty();
    }

    /** Writes a torque rating behind its keyword so that it reads back as the same torque. */
    static String torqueWords(String keyword, Optional<Torque> rating) {
        return rating.map(torque -> " " + keyword + " " + exact(torque)).orElse("");
    }

    private static String exact(Torque torque) {
        for (Unit<Torque> unit : List.of(Torque.POUND_FOOT, Torque.NEWTON_METER)) {
            String brief = DecimalText.significant(torque.in(unit), 10) + " " + unit.asciiSymbol();
            if (Torque.parse(brief).equals(torque)) {
                return brief;
            }
        }
        return DecimalText.shortest(torque.si()) + " " + Torque.NEWTON_METER.asciiSymbol();
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
