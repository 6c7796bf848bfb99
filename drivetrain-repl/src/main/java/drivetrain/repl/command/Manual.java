package drivetrain.repl.command;

import java.util.ArrayList;
import java.util.List;

/**
 * What a command says about itself.
 *
 * @param topic what it is for
 * @param word the word that runs it
 * @param synonyms other words that run it; one of them may be two words with a blank
 * @param usage how it is used, with what may be left out in brackets
 * @param summary what it does, as a phrase without a full stop
 * @param examples whole lines that show its use
 */
public record Manual(
        Topic topic, String word, List<String> synonyms, String usage, String summary, List<String> examples) {

    /** Copies the lists. */
    public Manual {
        synonyms = List.copyOf(synonyms);
        examples = List.copyOf(examples);
    }

    /**
     * Starts a manual.
     *
     * @param topic what the command is for
     * @param usage how it is used; its first word is the word that runs it
     * @param summary what it does
     * @return the manual, without synonyms and examples
     */
    public static Manual of(Topic topic, String usage, String summary) {
        int blank = usage.indexOf(' ');
        String word = blank < 0 ? usage : usage.substring(0, blank);
        return new Manual(topic, word, List.of(), usage, summary, List.of());
    }

    /**
     * Adds other words that run the command.
     *
     * @param words the words
     * @return a copy with them
     */
    public Manual alias(String... words) {
        return new Manual(topic, word, List.of(words), usage, summary, examples);
    }

    /**
     * Adds lines that show the use of the command.
     *
     * @param lines the lines
     * @return a copy with them
     */
    public Manual example(String... lines) {
        return new Manual(topic, word, synonyms, usage, summary, List.of(lines));
    }

    /**
     * Returns every word that runs the command.
     *
     * @return the word and its synonyms
     */
    public List<String> names() {
        List<String> names = new ArrayList<>();
        names.add(word);
        names.addAll(synonyms);
        return names;
    }
}
