package drivetrain.repl.session;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The form in which answers are written. */
public enum OutputForm {
    /** Sentences and tables for a screen. */
    TABLE,
    /** One {@code name: value unit} a line, for screen readers and for searching. */
    PLAIN,
    /** Comma-separated values by RFC 4180. */
    CSV,
    /** One JSON document a line. */
    JSON,
    /** Markdown, for a letter or a web page. */
    MARKDOWN;

    /**
     * Returns the word by which the form is chosen.
     *
     * @return the word, in lower case
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Finds a form by its word.
     *
     * @param word the word, upper and lower case alike
     * @return the form, or empty
     */
    public static Optional<OutputForm> ofWord(String word) {
        return Arrays.stream(values())
                .filter(form -> form.word().equalsIgnoreCase(word))
                .findFirst();
    }

    /**
     * Lists the words.
     *
     * @return the words in the order of the forms
     */
    public static List<String> words() {
        return Arrays.stream(values()).map(OutputForm::word).toList();
    }
}
