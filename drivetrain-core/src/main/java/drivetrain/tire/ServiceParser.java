package drivetrain.tire;

import java.util.Optional;
import java.util.OptionalInt;

/** Reads a service description: load index, perhaps a dual one, speed symbol. */
final class ServiceParser {

    private final Cursor in;
    private final boolean parenthesized;

    ServiceParser(Cursor in, boolean parenthesized) {
        this.in = in;
        this.parenthesized = parenthesized;
    }

    /** Goes on behind the first load index. */
    ServiceDescription read(Cursor.Numeral first) {
        LoadIndex single = index(first);
        Optional<LoadIndex> dual = Optional.empty();
        if (in.accept('/')) {
            Cursor.Numeral second = in.number("the load index of dual fitment", LoadIndex.allowed());
            dual = Optional.of(index(second));
            if (dual.get().value() > single.value()) {
                throw in.fault(
                        second.start(), "has a dual load index greater than the single one", "at most " + single);
            }
        }
        int symbolAt = in.next();
        SpeedSymbol symbol = symbol();
        if (parenthesized) {
            closeParenthesis(symbol, symbolAt);
        }
        return new ServiceDescription(single, dual, symbol, parenthesized);
    }

    private LoadIndex index(Cursor.Numeral number) {
        OptionalInt index = number.integer();
        if (index.isEmpty() || index.getAsInt() > LoadIndex.MOST) {
            throw in.fault(number.start(), "has load index " + number.text() + ", out of range", LoadIndex.allowed());
        }
        return new LoadIndex(index.getAsInt());
    }

    private SpeedSymbol symbol() {
        String letter = String.valueOf(in.peek());
        if (letter.equals("A")) {
            int at = in.next();
            in.accept('A');
            String symbol = letter + in.peekAttached();
            if (!SpeedSymbol.isKnown(symbol)) {
                throw in.fault(at, "has a speed symbol A without a digit from 1 to 8", SpeedSymbol.allowed());
            }
            in.accept(in.peek());
            return new SpeedSymbol(symbol);
        }
        if (!SpeedSymbol.isKnown(letter)) {
            throw in.unexpected("the speed symbol", SpeedSymbol.allowed());
        }
        in.accept(in.peek());
        return new SpeedSymbol(letter);
    }

    private void closeParenthesis(SpeedSymbol symbol, int symbolAt) {
        if (!ServiceDescription.isOpenEnded(symbol)) {
            throw in.fault(symbolAt, "has parentheses around speed symbol " + symbol, "W or Y in parentheses");
        }
        if (!in.accept(')')) {
            throw in.unexpected("the closing parenthesis", ")");
        }
    }
}
