package drivetrain.report;

import drivetrain.quantity.Figure;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Names with values.
 *
 * @param key the machine name
 * @param title the words above the list; empty for none
 * @param facts the facts in reading order, each with a key of its own
 */
public record Facts(String key, String title, List<Fact> facts) implements Block {

    /**
     * Copies and checks.
     *
     * @throws IllegalArgumentException if two facts have one key or if the key is no machine name
     */
    public Facts {
        MachineName.require(key);
        facts = List.copyOf(facts);
        Set<String> keys = new HashSet<>();
        for (Fact fact : facts) {
            if (!keys.add(fact.key())) {
                throw new IllegalArgumentException("two facts of " + key + " have the key " + fact.key());
            }
        }
    }

    /**
     * One name with its value.
     *
     * @param key the machine name, such as {@code engineSpeed}
     * @param name the name that people read, such as {@code engine speed}
     * @param value the value
     */
    public record Fact(String key, String name, Cell value) {

        /**
         * Checks the key and the name.
         *
         * @throws IllegalArgumentException if the key is no machine name or the name is blank
         */
        public Fact {
            MachineName.require(key);
            if (name.isBlank()) {
                throw new IllegalArgumentException("fact " + key + " needs a name");
            }
        }

        /**
         * Makes a fact whose value is a figure.
         *
         * @param key the machine name
         * @param name the name that people read
         * @param figure the figure
         * @return the fact
         */
        public static Fact of(String key, String name, Figure figure) {
            return new Fact(key, name, Cell.of(figure));
        }

        /**
         * Makes a fact whose value is text.
         *
         * @param key the machine name
         * @param name the name that people read
         * @param text the text
         * @return the fact
         */
        public static Fact of(String key, String name, String text) {
            return new Fact(key, name, Cell.of(text));
        }
    }

    @Override
    public <R> R layOut(Layout<R> layout) {
        return layout.facts(this);
    }
}
