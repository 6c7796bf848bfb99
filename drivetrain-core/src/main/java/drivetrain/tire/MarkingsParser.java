package drivetrain.tire;

import java.util.Optional;

/** Reads what stands behind the rim diameter: use, service description, load range. */
final class MarkingsParser {

    private static final String ALLOWED =
            "a service description such as 116T or 123/120R, a load range such as LRE, 10PR, XL or SL, the use LT, ST or C";
    private static final String UNAMBIGUOUS = "ABDEFG";
    private static final String AMBIGUOUS = "HJLMN";

    private final Cursor in;
    private final int sizeEnd;
    private Optional<TireUse> use;
    private Optional<LoadRange> loadRange = Optional.empty();
    private Optional<ServiceDescription> service = Optional.empty();

    MarkingsParser(Cursor in, Optional<TireUse> prefix) {
        this.in = in;
        this.sizeEnd = in.index();
        this.use = prefix;
    }

    Markings read() {
        in.markWhole();
        while (!in.atEnd()) {
            int at = in.next();
            if (in.atDigit() || in.peek() == '(') {
                readNumber(at);
            } else if (in.accept("LT")) {
                take(TireUse.LIGHT_TRUCK, at);
            } else if (in.acceptWhole("ST")) {
                take(TireUse.TRAILER, at);
            } else {
                readLetters(at);
            }
            in.markWhole();
        }
        return new Markings(use, loadRange, service);
    }

    private void readNumber(int at) {
        boolean parenthesized = in.accept('(');
        Cursor.Numeral number = in.number("the load index", LoadIndex.allowed());
        if (!parenthesized && in.accept("PR")) {
            take(plyRated(number), at);
            return;
        }
        if (service.isPresent()) {
            throw in.fault(at, "has a second service description", "one");
        }
        service = Optional.of(new ServiceParser(in, parenthesized).read(number));
    }

    private LoadRange plyRated(Cursor.Numeral plies) {
        return LoadRange.rated(plies.integer().orElse(0))
                .orElseThrow(() -> in.fault(
                        plies.start(),
                        "has ply rating " + plies.text() + ", which does not exist",
                        "2PR to 24PR, even"));
    }

    private void readLetters(int at) {
        if (in.acceptWhole("XL") || in.acceptWhole("EXTRA LOAD") || in.acceptWhole("REINFORCED")) {
            take(LoadRange.EXTRA_LOAD, at);
        } else if (in.acceptWhole("SL") || in.acceptWhole("STANDARD LOAD")) {
            take(LoadRange.STANDARD_LOAD, at);
        } else if (in.accept("LOAD RANGE") || in.accept("LR")) {
            take(letteredRange(), at);
        } else if (in.acceptWhole("C")) {
            readLoneC(at);
        } else {
            readLoneLetter(at);
        }
    }

    private LoadRange letteredRange() {
        LoadRange range = LoadRange.lettered(in.peek())
                .orElseThrow(() -> in.unexpected("the load range letter", "A to H, J, L, M, N"));
        in.accept(in.peek());
        return range;
    }

    /** {@code C} is the commercial mark where it touches the rim diameter, and a load range where the tire is marked for something else. */
    private void readLoneC(int at) {
        if (use.isPresent() && use.get() != TireUse.PASSENGER) {
            take(LoadRange.C, at);
        } else if (at == sizeEnd) {
            take(TireUse.COMMERCIAL, at);
        } else {
            throw in.fault(
                    at, "has a C that can mean two things", "C right behind the rim diameter (commercial), or LRC");
        }
    }

    private void readLoneLetter(int at) {
        char letter = in.peek();
        if (UNAMBIGUOUS.indexOf(letter) >= 0 && in.acceptWhole(String.valueOf(letter))) {
            if (!in.digitAttached()) {
                take(LoadRange.valueOf(String.valueOf(letter)), at);
                return;
            }
        } else if (AMBIGUOUS.indexOf(letter) >= 0 && in.acceptWhole(String.valueOf(letter))) {
            throw in.fault(
                    at,
                    "has a letter that can be a load range or a speed symbol",
                    "LR" + letter + ", or a load index before the speed symbol");
        }
        throw in.unexpectedAt(at, "a marking", ALLOWED);
    }

    private void take(TireUse marked, int at) {
        if (use.isPresent()) {
            throw in.fault(at, "has a second use mark", "one of P, LT, ST, C");
        }
        use = Optional.of(marked);
    }

    private void take(LoadRange range, int at) {
        if (loadRange.isPresent()) {
            throw in.fault(at, "has a second load range", "one");
        }
        loadRange = Optional.of(range);
    }
}
