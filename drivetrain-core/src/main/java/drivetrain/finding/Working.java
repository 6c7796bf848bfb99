package drivetrain.finding;

import drivetrain.quantity.Figure;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * How an answer was worked out.
 *
 * @param question what was asked, such as {@code engine speed at 65 mph}
 * @param inputs what went in, each once
 * @param steps the formulas in the order of evaluation, each with its result
 * @param sources where the formulas and the constants come from, each once
 */
public record Working(String question, List<Input> inputs, List<Step> steps, List<Source> sources) {

    /** Copies the lists. */
    public Working {
        inputs = List.copyOf(inputs);
        steps = List.copyOf(steps);
        sources = List.copyOf(sources);
    }

    /**
     * One input.
     *
     * @param name what it is
     * @param symbol the symbol that stands for it in the formulas
     * @param figure its value
     * @param origin where it comes from: given, the catalog, a default
     */
    public record Input(String name, String symbol, Figure figure, String origin) {}

    /**
     * One step.
     *
     * @param name what it gives
     * @param formula the formula, such as {@code n = v / r · i}
     * @param result its value
     */
    public record Step(String name, String formula, Figure result) {}

    /**
     * Starts a working.
     *
     * @param question what was asked
     * @return an empty builder
     */
    public static Builder of(String question) {
        return new Builder(question);
    }

    /** Collects inputs, steps and sources in order; each input and source is kept once. */
    public static final class Builder {

        private final String question;
        private final Set<Input> inputs = new LinkedHashSet<>();
        private final List<Step> steps = new ArrayList<>();
        private final Set<Source> sources = new LinkedHashSet<>();

        private Builder(String question) {
            this.question = question;
        }

        /**
         * Adds an input.
         *
         * @param name what it is
         * @param symbol its symbol in the formulas
         * @param figure its value
         * @param origin where it comes from
         * @return this builder
         */
        public Builder input(String name, String symbol, Figure figure, String origin) {
            inputs.add(new Input(name, symbol, figure, origin));
            return this;
        }

        /**
         * Adds a step.
         *
         * @param name what it gives
         * @param formula the formula
         * @param result its value
         * @return this builder
         */
        public Builder step(String name, String formula, Figure result) {
            steps.add(new Step(name, formula, result));
            return this;
        }

        /**
         * Adds a source.
         *
         * @param source the source
         * @return this builder
         */
        public Builder source(Source source) {
            sources.add(source);
            return this;
        }

        /**
         * Adds all that another working has, ahead of what comes next. An input that an earlier step has worked out is no input here,
         * and a step that stands here already is not repeated.
         *
         * @param other the working of a value that this one starts from
         * @return this builder
         */
        public Builder from(Working other) {
            other.inputs().stream().filter(input -> !isWorkedOut(input)).forEach(inputs::add);
            other.steps().stream().filter(step -> !steps.contains(step)).forEach(steps::add);
            sources.addAll(other.sources());
            return this;
        }

        private boolean isWorkedOut(Input input) {
            return steps.stream()
                    .anyMatch(step ->
                            step.name().equals(input.name()) && step.result().equals(input.figure()));
        }

        /**
         * Ends the working.
         *
         * @return the working
         */
        public Working build() {
            return new Working(question, List.copyOf(inputs), steps, List.copyOf(sources));
        }
    }
}
