package drivetrain.repl.shell;

import drivetrain.refusal.RefusedException;
import drivetrain.repl.command.Line;
import drivetrain.repl.command.Word;
import java.util.ArrayList;
import java.util.List;
import org.jline.reader.CompletingParsedLine;

/**
 * A line while it is typed, cut at the cursor for completion.
 *
 * @param line the line
 * @param cursor the index of the cursor
 * @param words the words before the cursor; the last one ends at it and may be empty
 * @param start the index of the first character of the last word, a quote included
 */
record TypedLine(String line, int cursor, List<String> words, int start) implements CompletingParsedLine {

    TypedLine {
        words = List.copyOf(words);
    }

    /** Cuts a line at the cursor; a line that cannot be read has one word. */
    static TypedLine at(String line, int cursor) {
        String before = line.substring(0, cursor);
        List<Word> words = wordsOf(before);
        List<String> texts = new ArrayList<>();
        for (Word word : words) {
            texts.add(word.text());
        }
        int start = cursor;
        if (!words.isEmpty() && words.get(words.size() - 1).end() >= cursor) {
            start = words.get(words.size() - 1).start();
        } else {
            texts.add("");
        }
        return new TypedLine(line, cursor, texts, start);
    }

    private static List<Word> wordsOf(String before) {
        for (String end : List.of("", "\"", "'")) {
            try {
                return Line.parse(before + end).words();
            } catch (RefusedException openQuote) {
                // Try again with the quote closed.
            }
        }
        return List.of();
    }

    @Override
    public String word() {
        return words.get(words.size() - 1);
    }

    @Override
    public int wordCursor() {
        return word().length();
    }

    @Override
    public int wordIndex() {
        return words.size() - 1;
    }

    @Override
    public CharSequence escape(CharSequence candidate, boolean complete) {
        String text = candidate.toString();
        if (text.isEmpty() && !complete) {
            return text;
        }
        boolean plain = !text.isEmpty()
                && !Line.isQuote(text.charAt(0))
                && text.charAt(0) != '#'
                && text.chars().noneMatch(sign -> Line.isBlank((char) sign));
        if (plain) {
            return text;
        }
        char quote = text.indexOf('"') < 0 ? '"' : '\'';
        return complete ? quote + text + quote : quote + text;
    }

    @Override
    public int rawWordCursor() {
        return cursor - start;
    }

    @Override
    public int rawWordLength() {
        return cursor - start;
    }
}
