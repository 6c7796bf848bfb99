package drivetrain.report;

import drivetrain.finding.Outcome;
import drivetrain.quantity.Figure;
import java.util.function.Function;
import java.util.function.Supplier;

/** What stands in one place of a table, or behind the name of a fact. */
public sealed interface Cell {

    /**
     * Makes a cell with a figure.
     *
     * @param figure the figure
     * @return the cell
     */
    static Cell of(Figure figure) {
        return new FigureCell(figure);
    }

    /**
     * Makes a cell with text.
     *
     * @param text the text
     * @return the cell; an empty one if the text is blank
     */
    static Cell of(String text) {
        return text.isBlank() ? new EmptyCell() : new TextCell(text);
    }

    /**
     * Makes a cell with a figure, or with the reason why there is none.
     *
     * @param outcome the figure or the reason
     * @return the cell
     */
    static Cell of(Outcome<? extends Figure> outcome) {
        return outcome.<Cell>fold(FigureCell::new, NotEvaluatedCell::new);
    }

    /**
     * Makes a cell in which nothing belongs, such as the step before the first gear.
     *
     * @return the cell
     */
    static Cell empty() {
        return new EmptyCell();
    }

    /**
     * Makes a cell whose figure is missing.
     *
     * @param reason what is missing, to stand behind "not evaluated because"
     * @return the cell
     */
    static Cell notEvaluated(String reason) {
        return new NotEvaluatedCell(reason);
    }

    /**
     * Handles the cell by its kind.
     *
     * @param figure what to do with a figure
     * @param text what to do with text
     * @param notEvaluated what to do with the reason for a missing figure
     * @param empty what to do where nothing belongs
     * @param <R> the type of the result
     * @return the result
     */
    <R> R fold(
            Function<? super Figure, ? extends R> figure,
            Function<String, ? extends R> text,
            Function<String, ? extends R> notEvaluated,
            Supplier<? extends R> empty);

    /**
     * A figure.
     *
     * @param figure the figure
     */
    record FigureCell(Figure figure) implements Cell {
        @Override
        public <R> R fold(
                Function<? super Figure, ? extends R> onFigure,
                Function<String, ? extends R> onText,
                Function<String, ? extends R> onNotEvaluated,
                Supplier<? extends R> onEmpty) {
            return onFigure.apply(figure);
        }
    }

    /**
     * Text.
     *
     * @param text the text
     */
    record TextCell(String text) implements Cell {
        @Override
        public <R> R fold(
                Function<? super Figure, ? extends R> onFigure,
                Function<String, ? extends R> onText,
                Function<String, ? extends R> onNotEvaluated,
                Supplier<? extends R> onEmpty) {
            return onText.apply(text);
        }
    }

    /**
     * A missing figure.
     *
     * @param reason what is missing
     */
    record NotEvaluatedCell(String reason) implements Cell {
        @Override
        public <R> R fold(
                Function<? super Figure, ? extends R> onFigure,
                Function<String, ? extends R> onText,
                Function<String, ? extends R> onNotEvaluated,
                Supplier<? extends R> onEmpty) {
            return onNotEvaluated.apply(reason);
        }
    }

    /** A place in which nothing belongs. */
    record EmptyCell() implements Cell {
        @Override
        public <R> R fold(
                Function<? super Figure, ? extends R> onFigure,
                Function<String, ? extends R> onText,
                Function<String, ? extends R> onNotEvaluated,
                Supplier<? extends R> onEmpty) {
            return onEmpty.get();
        }
    }
}
