package drivetrain.document;

import drivetrain.finding.Outcome;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Quantity;
import drivetrain.quantity.UnitSystem;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;

/** A tree of named values in the making, its figures in one system of units: {@code {"value": 65.0, "unit": "mph"}}. */
final class FigureTree {

    static final String VALUE = "value";
    static final String UNIT = "unit";
    static final String NOT_EVALUATED = "notEvaluated";

    private final UnitSystem units;
    private final Map<String, Object> values = new LinkedHashMap<>();

    FigureTree(UnitSystem units) {
        this.units = units;
    }

    /** Starts a tree in the same units. */
    FigureTree inner() {
        return new FigureTree(units);
    }

    /** Adds a text, number, flag, list or map. */
    FigureTree with(String name, Object value) {
        values.put(name, value);
        return this;
    }

    FigureTree with(String name, FigureTree inner) {
        return with(name, inner.map());
    }

    FigureTree with(String name, Figure figure) {
        return with(name, inner().with(VALUE, figure.number(units)).with(UNIT, figure.unit(units)));
    }

    <Q extends Quantity<Q>> FigureTree with(String name, Q quantity, Display<Q> display) {
        return with(name, Figure.of(quantity, display));
    }

    /** Adds a value if there is one. */
    <T> FigureTree withOptional(String name, Optional<T> value, BiConsumer<FigureTree, T> writer) {
        value.ifPresent(present -> writer.accept(this, present));
        return this;
    }

    /** Adds what a writer makes of a value, or the reason why there is none. */
    <T> FigureTree withOutcome(String name, Outcome<T> outcome, BiConsumer<FigureTree, T> writer) {
        FigureTree inner = inner();
        outcome.value().ifPresent(value -> writer.accept(inner, value));
        outcome.reason().ifPresent(reason -> inner.with(NOT_EVALUATED, reason));
        return with(name, inner);
    }

    /** Adds a quantity, or the reason why there is none. */
    <Q extends Quantity<Q>> FigureTree withOutcome(String name, Outcome<Q> outcome, Display<Q> display) {
        return withOutcome(name, outcome, (tree, quantity) -> {
            Figure figure = Figure.of(quantity, display);
            tree.with(VALUE, figure.number(units)).with(UNIT, figure.unit(units));
        });
    }

    /** Adds a list of trees. */
    <T> FigureTree withList(String name, Collection<T> items, BiConsumer<FigureTree, T> writer) {
        return with(
                name,
                items.stream()
                        .map(item -> {
                            FigureTree inner = inner();
                            writer.accept(inner, item);
                            return inner.map();
                        })
                        .toList());
    }

    Map<String, Object> map() {
        return values;
    }
}
