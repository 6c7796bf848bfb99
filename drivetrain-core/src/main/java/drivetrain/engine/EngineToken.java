package drivetrain.engine;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Kind;
import drivetrain.quantity.Power;
import drivetrain.quantity.Torque;
import drivetrain.quantity.Volume;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One piece of an engine's literal text: a word, or a number with its unit.
 *
 * @param text the piece as typed
 * @param start its index in the whole text
 * @param kind what its unit measures; empty for a word
 */
record EngineToken(String text, int start, Optional<Kind<?>> kind) {

    private static final int LONGEST_TEXT = 40_000;
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?");
    private static final Pattern GAP = Pattern.compile("[\\s,;]+");
    private static final Pattern WORD = Pattern.compile("@|[^\\s,;@]+");
    private static final Pattern SPACE = Pattern.compile("[ \\t]*");
    private static final List<Kind<?>> KINDS = List.of(AngularSpeed.KIND, Torque.KIND, Power.KIND, Volume.KIND);
    private static final int MOST_UNIT_WORDS = 3;

    boolean isWord() {
        return kind.isEmpty();
    }

    boolean measures(Kind<?> wanted) {
        return kind.filter(wanted::equals).isPresent();
    }

    static List<EngineToken> split(String given) {
        if (given.length() > LONGEST_TEXT) {
            throw Refusal.of("engine", given.substring(0, 40) + "...", "is too long")
                    .allowing("at most " + LONGEST_TEXT + " characters")
                    .asException();
        }
        List<EngineToken> tokens = new ArrayList<>();
        Matcher gap = GAP.matcher(given);
        Matcher number = NUMBER.matcher(given);
        Matcher word = WORD.matcher(given);
        int at = 0;
        while (at < given.length()) {
            if (gap.region(at, given.length()).lookingAt()) {
                at = gap.end();
            } else if (number.region(at, given.length()).lookingAt()) {
                EngineToken token = measured(given, at, number.end());
                tokens.add(token);
                at += token.text.length();
            } else {
                word.region(at, given.length()).lookingAt();
                tokens.add(new EngineToken(word.group(), at, Optional.empty()));
                at = word.end();
            }
        }
        return tokens;
    }

    private static EngineToken measured(String given, int start, int numberEnd) {
        if (numberEnd + 1 < given.length()
                && given.charAt(numberEnd) == ','
                && Character.isDigit(given.charAt(numberEnd + 1))) {
            throw Refusal.of(
                            "engine",
                            given,
                            "has a comma; write the decimals after a point and no separator between thousands")
                    .allowing("a decimal point, such as 4.5 L")
                    .at(numberEnd)
                    .asException();
        }
        List<Integer> ends = unitEnds(given, numberEnd);
        for (int i = ends.size() - 1; i >= 0; i--) {
            String unit = given.substring(numberEnd, ends.get(i)).strip();
            for (Kind<?> kind : KINDS) {
                if (kind.unit(unit).isPresent()) {
                    return new EngineToken(given.substring(start, ends.get(i)), start, Optional.of(kind));
                }
            }
        }
        throw unknownUnit(given, numberEnd, ends);
    }

    /** Where the first, the first two and the first three words behind a number end. */
    private static List<Integer> unitEnds(String given, int numberEnd) {
        List<Integer> ends = new ArrayList<>();
        Matcher space = SPACE.matcher(given);
        Matcher word = WORD.matcher(given);
        int at = numberEnd;
        while (ends.size() < MOST_UNIT_WORDS) {
            space.region(at, given.length()).lookingAt();
            at = space.end();
            if (!word.region(at, given.length()).lookingAt()) {
                break;
            }
            at = word.end();
            ends.add(at);
        }
        return ends;
    }

    private static RuntimeException unknownUnit(String given, int numberEnd, List<Integer> ends) {
        String allowed =
                "a speed in rpm, a torque in lb-ft or Nm, a power in hp, PS or kW, a displacement in L or cu in";
        if (ends.isEmpty()) {
            return Refusal.of("engine", given, "has a number without a unit")
                    .allowing(allowed)
                    .at(numberEnd)
                    .asException();
        }
        String unit = given.substring(numberEnd, ends.get(0)).strip();
        int position = given.indexOf(unit, numberEnd);
        List<String> known = new ArrayList<>();
        KINDS.forEach(kind -> kind.units().forEach(one -> known.add(one.asciiSymbol())));
        return Refusal.of(
                        "engine",
                        given,
                        "\"" + unit + "\" is not a unit of an engine's speed, torque, power or displacement")
                .allowing(allowed)
                .at(position)
                .suggesting(NearNames.of(unit, known))
                .asException();
    }
}
