package drivetrain.fuel;

import drivetrain.quantity.Length;
import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the literal text of a fuel line; {@link FuelLine#parse} says what it may hold. */
final class LineText {

    private static final String ALLOWED =
            "pieces such as 4.5 m of 8 mm tube, 0.6 m of 5/16 in hose, 3 elbows, filter 8 kPa at 200 L/h, pump";
    private static final int MOST_PIECES = 60;

    private final String text;
    private final FuelLine.Shelves shelves;
    private final FuelWords words;
    private final List<LinePiece> ahead = new ArrayList<>();
    private final List<LinePiece> pieces = new ArrayList<>();
    private final List<Waiting> waiting = new ArrayList<>();
    private Optional<Length> bore = Optional.empty();
    private boolean pumpPlaced;

    /** Fittings ahead of the first run, whose bore is not known yet. */
    private record Waiting(FittingKind kind, int number, int index) {}

    LineText(String text, FuelLine.Shelves shelves) {
        this.text = text;
        this.shelves = shelves;
        List<String> keywords = new ArrayList<>(List.of("of", "filter", "pump", "tube", "hose", "at"));
        keywords.addAll(FittingKind.words());
        words = FuelWords.of("fuel line", text, ALLOWED, keywords);
    }

    FuelLine read() {
        int count = 0;
        do {
            if (++count > MOST_PIECES) {
                throw words.refusal("has more than " + MOST_PIECES + " pieces", words.position());
            }
            readOne();
        } while (words.nextClause());
        if (bore.isEmpty()) {
            throw words.refusal("has no run of tube or hose", 0);
        }
        return new FuelLine(text.strip(), pumpPlaced ? ahead : List.of(), pieces, pumpPlaced);
    }

    private void readOne() {
        int start = words.position();
        if (words.takes("pump")) {
            placePump(start);
        } else if (words.takes("filter")) {
            pieces.add(new LinePiece.Filtered(filter()));
        } else if (words.atNumber()) {
            Optional<Length> length = words.find(Length.KIND);
            if (length.isPresent()) {
                words.requireTyped(
                        Length.KIND, length.get(), "length of the line", LinePiece.Run.LEAST, LinePiece.Run.MOST);
                run(length.get(), start);
            } else {
                fittings();
            }
        } else {
            throw words.notUnderstood();
        }
    }

    private void placePump(int start) {
        if (pumpPlaced) {
            throw words.refusal("places the pump twice", start);
        }
        if (!waiting.isEmpty()) {
            throw words.refusal("has fittings ahead of the pump that belong to no run", start);
        }
        pumpPlaced = true;
        ahead.addAll(pieces);
        pieces.clear();
    }

    private FuelFilter filter() {
        int start = words.position();
        Optional<FuelFilter> known = shelves.filters().apply(words.peekClause());
        if (known.isPresent()) {
            words.clauseRest();
            return known.get();
        }
        if (words.atNumber()) {
            return FuelFilter.read(words, "filter");
        }
        throw Refusal.of("fuel line", text, "\"" + words.clauseRest() + "\" is not a filter on the shelf")
                .allowing("a name that \"parts fuel filter\" lists, or a loss such as filter 8 kPa at 200 L/h")
                .at(start)
                .asException();
    }

    private void run(Length length, int start) {
        if (!words.takes("of")) {
            throw words.refusal("says not what this length is of", words.position());
        }
        int conduitStart = words.position();
        Conduit conduit = conduit(conduitStart);
        pieces.add(words.located(start, () -> new LinePiece.Run(conduit, length)));
        bore = Optional.of(conduit.bore());
        int settled = 0;
        for (Waiting one : waiting) {
            pieces.add(one.index() + settled, new LinePiece.Fittings(one.kind(), one.number(), conduit.bore()));
            settled++;
        }
        waiting.clear();
    }

    private Conduit conduit(int start) {
        Optional<Conduit> known = shelves.hoses().apply(words.peekClause());
        if (known.isPresent()) {
            words.clauseRest();
            return known.get();
        }
        if (words.atNumber() || text.startsWith("-", start)) {
            Conduit typed = Conduit.read(words, "line");
            return new Conduit(
                    text.substring(start, words.position()).strip(),
                    typed.material(),
                    typed.bore(),
                    typed.workingPressure());
        }
        String name = words.clauseRest();
        throw Refusal.of("fuel line", text, "\"" + name + "\" is not a tube or hose on the shelf")
                .allowing("a name that \"parts fuel hose\" lists, or a bore such as 8 mm tube")
                .at(start)
                .asException();
    }

    private void fittings() {
        int number = words.integer("number of fittings", 1, LinePiece.Fittings.MOST_FITTINGS);
        int wordStart = words.position();
        String word = words.word("kind of fitting");
        FittingKind kind = FittingKind.ofWord(word)
                .orElseThrow(() -> Refusal.of(
                                "fuel line", text, "\"" + word + "\" is not a fitting and no unit of length")
                        .allowing(String.join(", ", FittingKind.words()) + "; a length needs its unit and \"of\"")
                        .at(wordStart)
                        .asException());
        if (bore.isPresent()) {
            pieces.add(new LinePiece.Fittings(kind, number, bore.get()));
        } else {
            waiting.add(new Waiting(kind, number, pieces.size()));
        }
    }
}
