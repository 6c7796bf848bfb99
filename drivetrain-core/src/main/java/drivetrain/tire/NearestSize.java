package drivetrain.tire;

import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks for the nearest valid reading of a refused size.
 *
 * <p>Where the fault lies behind a whole size, that is the text ahead of the marking at fault. Where it lies within the size, it is the text with one
 * separating sign changed, put in or left out at the fault, or with the digit that a letter looks like. No figure is made up.
 */
final class NearestSize {

    private static final String SEPARATORS = "R/-x.";
    private static final int PLACES_FOR_A_POINT = 2;

    private NearestSize() {}

    /**
     * Looks for the nearest reading.
     *
     * @param text the text as typed
     * @param whole the part of it that can stand by itself, or empty
     * @param fault the index of the fault
     */
    static Optional<String> of(String text, String whole, int fault) {
        return whole.isEmpty() ? first(edited(text, fault)) : reading(whole);
    }

    private static List<String> edited(String text, int fault) {
        List<String> tried = new ArrayList<>();
        String before = text.substring(0, fault);
        String rest = text.substring(fault);
        if (!rest.isEmpty() && !isDigit(rest.charAt(0))) {
            String after = rest.substring(1);
            digitMeant(rest.charAt(0)).ifPresent(digit -> tried.add(before + digit + after));
            SEPARATORS.chars().forEach(sign -> tried.add(before + (char) sign + after));
            tried.add(before + after);
        }
        SEPARATORS.chars().forEach(sign -> tried.add(before + (char) sign + rest));
        for (int at = 1; at <= Math.min(PLACES_FOR_A_POINT, rest.length()); at++) {
            tried.add(before + rest.substring(0, at) + "." + rest.substring(at));
        }
        return tried;
    }

    private static boolean isDigit(char sign) {
        return sign >= '0' && sign <= '9';
    }

    private static Optional<Character> digitMeant(char typed) {
        return switch (typed) {
            case 'o', 'O' -> Optional.of('0');
            case 'l', 'I', '|' -> Optional.of('1');
            default -> Optional.empty();
        };
    }

    private static Optional<String> first(List<String> candidates) {
        return candidates.stream()
                .flatMap(candidate -> reading(candidate).stream())
                .findFirst();
    }

    private static Optional<String> reading(String candidate) {
        try {
            return Optional.of(DesignationParser.read(candidate).text());
        } catch (RefusedException refused) {
            return Optional.empty();
        }
    }
}
