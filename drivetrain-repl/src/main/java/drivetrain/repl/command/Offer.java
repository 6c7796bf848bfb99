package drivetrain.repl.command;

import java.util.ArrayList;
import java.util.List;

/**
 * A word that fits the place at which the user asks what could stand there.
 *
 * @param value the word
 * @param meaning what it means, shown beside it; may be empty
 */
public record Offer(String value, String meaning) {

    /**
     * Offers plain words.
     *
     * @param values the words
     * @return the offers, without a meaning
     */
    public static List<Offer> of(String... values) {
        List<Offer> offers = new ArrayList<>();
        for (String value : values) {
            offers.add(new Offer(value, ""));
        }
        return offers;
    }
}
