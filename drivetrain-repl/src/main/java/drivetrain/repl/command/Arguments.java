package drivetrain.repl.command;

import drivetrain.quantity.AllowedRange;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The words behind a command's word, with their places in the line.
 *
 * @param line the whole line as typed
 * @param words the words behind the command
 */
public record Arguments(String line, List<Word> words) {

    /** Copies the list. */
    public Arguments {
        words = List.copyOf(words);
    }

    /**
     * Returns the arguments of a line whose first words name the command.
     *
     * @param line the line
     * @param count how many words name the command
     * @return the words behind them
     */
    public static Arguments of(Line line, int count) {
        return new Arguments(
                line.text(), line.words().subList(count, line.words().size()));
    }

    /**
     * Tells whether there are none.
     *
     * @return true if the command stands alone
     */
    public boolean isEmpty() {
        return words.isEmpty();
    }

    /**
     * Returns the count of words.
     *
     * @return the count
     */
    public int size() {
        return words.size();
    }

    /**
     * Returns one word.
     *
     * @param index its index, counted from 0
     * @return the word
     */
    public Word get(int index) {
        return words.get(index);
    }

    /**
     * Returns the first word.
     *
     * @return the word, or empty if there is none
     */
    public Optional<Word> first() {
        return words.isEmpty() ? Optional.empty() : Optional.of(words.get(0));
    }

    /**
     * Returns the arguments from one word on.
     *
     * @param index the index of the first word kept
     * @return the rest, which may be empty
     */
    public Arguments from(int index) {
        return new Arguments(line, words.subList(index, words.size()));
    }

    /**
     * Returns the arguments before one word.
     *
     * @param index the index of the first word left out
     * @return the start, which may be empty
     */
    public Arguments until(int index) {
        return new Arguments(line, words.subList(0, index));
    }

    /**
     * Returns the words as one text: as typed, or joined by single blanks where quotes are among them.
     *
     * @return the text; empty if there are no words
     */
    public String text() {
        if (words.isEmpty()) {
            return "";
        }
        if (words.stream().noneMatch(Word::quoted)) {
            return line.substring(
                    words.get(0).start(), words.get(words.size() - 1).end());
        }
        StringBuilder joined = new StringBuilder();
        for (Word word : words) {
            joined.append(joined.length() == 0 ? "" : " ").append(word.text());
        }
        return joined.toString();
    }

    /**
     * Reads the words as one value and places a refusal in the line.
     *
     * @param reader what reads the text
     * @param <T> what it reads
     * @return the value
     * @throws RefusedException with the column of the line at which the fault lies
     */
    public <T> T read(Function<String, T> reader) {
        try {
            return reader.apply(text());
        } catch (RefusedException refused) {
            throw placed(refused).asException();
        }
    }

    /** Places a refusal in the line, its range in the unit that was typed there. */
    private Refusal placed(RefusedException refused) {
        Refusal refusal = refused.refusal();
        if (refusal.place().isPresent()) {
            return refusal;
        }
        int index = indexInLine(refusal);
        return AllowedRange.inUnitOf(refusal.allowed(), line.substring(index))
                .map(refusal::allowing)
                .orElse(refusal)
                .in(Line.place(index));
    }

    /** The fault's index counts in what the reader was given, which starts where the given text is found in the words. */
    private int indexInLine(Refusal refusal) {
        int offset = Math.max(0, text().indexOf(refusal.given()));
        return indexInLine(offset + refusal.position().orElse(0));
    }

    private int indexInLine(int indexInText) {
        if (words.isEmpty()) {
            return line.length();
        }
        if (words.stream().noneMatch(Word::quoted)) {
            return Math.min(words.get(0).start() + indexInText, line.length());
        }
        int left = indexInText;
        for (Word word : words) {
            if (left <= word.text().length()) {
                return word.textStart() + left;
            }
            left -= word.text().length() + 1;
        }
        return words.get(words.size() - 1).end();
    }

    /**
     * Refuses what stands behind the arguments that a command takes.
     *
     * @param most how many words the command takes
     * @param usage how it is used
     * @throws RefusedException if there are more
     */
    public void requireAtMost(int most, String usage) {
        if (words.size() > most) {
            throw refuse(most, "this is one word too many").allowing(usage).asException();
        }
    }

    /**
     * Starts a refusal of one word.
     *
     * @param index the index of the word; the count of words for what is missing behind the last one
     * @param problem what is wrong with it
     * @return the refusal, placed in the line
     */
    public Refusal refuse(int index, String problem) {
        if (index >= words.size()) {
            return Refusal.of("line", line.strip(), problem).in(Line.place(line.length()));
        }
        Word word = words.get(index);
        return Refusal.of("word", word.text(), problem).in(Line.place(word.textStart()));
    }
}
