package drivetrain.repl.command.ask;

import drivetrain.quantity.AllowedRange;
import drivetrain.quantity.Kind;
import drivetrain.quantity.Magnitude;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Unit;
import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Arguments;
import java.util.Arrays;
import java.util.List;

/** A quantity above zero that a question is asked at; a number without its unit is refused with the units that it could have. */
final class AskedQuantity {

    /** The most that a road speed is asked at, 500 mph. */
    static final Speed FASTEST = Speed.ofMilesPerHour(500.0);

    private AskedQuantity() {}

    /**
     * Reads the quantity, over a word {@code at} before it.
     *
     * @param kind the kind of quantity
     * @param most the greatest value that the question makes sense for
     * @param arguments the words of the quantity
     * @param units the units that are suggested for a bare number
     */
    static <Q extends Magnitude<Q>> Q read(Kind<Q> kind, Q most, Arguments arguments, String... units) {
        boolean at = arguments.size() > 1 && arguments.get(0).isAny("at");
        return (at ? arguments.from(1) : arguments).read(text -> parse(kind, most, text, units));
    }

    private static <Q extends Magnitude<Q>> Q parse(Kind<Q> kind, Q most, String text, String... units) {
        if (isBareNumber(text)) {
            List<String> near =
                    Arrays.stream(units).map(unit -> text + " " + unit).toList();
            throw Refusal.of(kind.name(), text, "has no unit")
                    .allowing(String.join(" or ", near))
                    .suggesting(near)
                    .at(text.length())
                    .asException();
        }
        Q asked = kind.parse(text);
        Unit<Q> unit =
                AllowedRange.unitOf(kind, text).or(() -> kind.unit(units[0])).orElseThrow();
        if (asked.si() <= 0.0) {
            throw Refusal.of(kind.name(), text, "must be greater than zero")
                    .allowing("more than 0 " + unit.symbol())
                    .at(0)
                    .asException();
        }
        if (asked.si() > most.si()) {
            throw Refusal.of(kind.name(), text, "is more than any road vehicle has")
                    .allowing(AllowedRange.atMost(most, unit))
                    .at(0)
                    .asException();
        }
        return asked;
    }

    private static boolean isBareNumber(String text) {
        return !text.isEmpty() && text.chars().allMatch(c -> (c >= '0' && c <= '9') || c == '.');
    }
}
