package drivetrain.tire;

import drivetrain.quantity.Length;
import drivetrain.quantity.RevolutionsPerDistance;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a size designation followed by what was measured on the tire. */
final class TireParser {

    private static final String SUBJECT = "tire";
    private static final int LONGEST_TEXT = 300;
    private static final String BLANKS = " \t\n\u000B\f\r";
    private static final Pattern BARE_PER = Pattern.compile("\\s*[0-9.]+\\s*(?=/)");
    private static final String REV = " rev";

    private final String text;
    private final List<Part> parts = new ArrayList<>();

    private TireParser(String text) {
        this.text = text;
    }

    /** One word and the text behind it, up to the next word. */
    private record Part(String word, int at, int from, int to) {}

    static Tire parse(String text) {
        if (text.length() > LONGEST_TEXT) {
            throw Refusal.of(SUBJECT, text.substring(0, LONGEST_TEXT) + "...", "is too long")
                    .allowing("at most " + LONGEST_TEXT + " signs")
                    .at(LONGEST_TEXT)
                    .asException();
        }
        return new TireParser(text).read();
    }

    private Tire read() {
        int sizeEnd = split();
        TireDesignation designation = designation(sizeEnd);
        Tire tire = Tire.of(designation);
        for (Part part : parts) {
            tire = with(tire, part);
        }
        return tire;
    }

    /** Finds the words, each between blanks; the first text is always the size. */
    private int split() {
        int sizeEnd = text.length();
        int end = blankFrom(0);
        while (end < text.length()) {
            int start = end + 1;
            end = blankFrom(start);
            String word = word(text.substring(start, end));
            if (word.isEmpty()) {
                continue;
            }
            if (parts.isEmpty()) {
                sizeEnd = start;
            } else {
                Part last = parts.remove(parts.size() - 1);
                parts.add(new Part(last.word, last.at, last.from, start));
            }
            parts.add(new Part(word, start, end, text.length()));
        }
        return sizeEnd;
    }

    private int blankFrom(int start) {
        int at = start;
        while (at < text.length() && BLANKS.indexOf(text.charAt(at)) < 0) {
            at++;
        }
        return at;
    }

    private static String word(String typed) {
        return switch (typed.toLowerCase(Locale.ROOT)) {
            case "rollout", "roll-out" -> TireMeasurements.ROLLOUT;
            case "revs", "revolutions" -> TireMeasurements.REVOLUTIONS;
            case "diameter" -> TireMeasurements.DIAMETER;
            default -> "";
        };
    }

    private TireDesignation designation(int end) {
        try {
            return TireDesignation.parse(text.substring(0, end));
        } catch (RefusedException refused) {
            Refusal why = refused.refusal();
            List<String> near = why.suggestions().stream()
                    .map(size -> (size + " " + text.substring(end)).strip())
                    .toList();
            throw whole(DesignationParser.SUBJECT, why, why.position().orElse(0))
                    .suggesting(near)
                    .asException();
        }
    }

    private Tire with(Tire tire, Part part) {
        return switch (part.word) {
            case TireMeasurements.ROLLOUT -> {
                require(tire.rollout().isEmpty(), part);
                yield located(part, 0, given -> tire.withRollout(Length.parse(given)));
            }
            case TireMeasurements.REVOLUTIONS -> {
                require(tire.revolutions().isEmpty(), part);
                yield located(part, bareUnit(part), given -> tire.withRevolutions(RevolutionsPerDistance.parse(given)));
            }
            default -> {
                require(tire.diameter().isEmpty(), part);
                yield located(part, 0, given -> tire.withDiameter(Length.parse(given)));
            }
        };
    }

    private void require(boolean first, Part part) {
        if (!first) {
            throw Refusal.of(SUBJECT, text, "has a second " + part.word)
                    .allowing("one")
                    .at(part.at)
                    .asException();
        }
    }

    /** Where the unit is written {@code /mile} for {@code rev/mile}: the index in the part at which to put {@code rev} in; else 0. */
    private int bareUnit(Part part) {
        Matcher bare = BARE_PER.matcher(text.substring(part.from, part.to));
        return bare.lookingAt() ? bare.end() : 0;
    }

    private Tire located(Part part, int putIn, Function<String, Tire> reader) {
        String typed = text.substring(part.from, part.to);
        String read = putIn == 0 ? typed : typed.substring(0, putIn) + REV + typed.substring(putIn);
        try {
            return reader.apply(read);
        } catch (RefusedException refused) {
            Refusal why = refused.refusal();
            int at = why.position().orElse(typed.length() - typed.stripLeading().length());
            int inTyped = putIn == 0 || at <= putIn ? at : Math.max(putIn, at - REV.length());
            throw whole(why.subject(), why, Math.min(part.from + inTyped, text.length()))
                    .asException();
        }
    }

    private Refusal whole(String subject, Refusal why, int at) {
        return Refusal.of(subject, text, why.problem()).allowing(why.allowed()).at(at);
    }
}
