package drivetrain.repl.command.ask;

import drivetrain.combination.Combination;
import drivetrain.quantity.Speed;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Offer;
import drivetrain.repl.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A road speed that may be named in the line or by the order, and what can stand behind it. */
final class RoadSpeedWords {

    private RoadSpeedWords() {}

    /** Reads the speed; without words it is the order's cruise speed. */
    static Speed speed(Combination combination, Arguments line, Arguments words, String example) {
        return words.isEmpty()
                ? combination
                        .cruise()
                        .orElseThrow(() -> line.refuse(line.size(), "no road speed is named, and the order names none")
                                .allowing("a speed with its unit, such as " + example)
                                .asException())
                : AskedQuantity.read(Speed.KIND, AskedQuantity.FASTEST, words, "mph", "km/h");
    }

    /** Offers units, gears, and what the command takes behind them. */
    static List<Offer> offers(Session session, List<String> before, List<Offer> behind) {
        String last = before.get(before.size() - 1).toLowerCase(Locale.ROOT);
        if (before.contains("with") || before.contains("within")) {
            return behind;
        }
        if (last.equals("in")) {
            return GearOffers.of(session);
        }
        boolean lacksUnit = last.chars().allMatch(c -> (c >= '0' && c <= '9') || c == '.');
        if (lacksUnit && !before.contains("in")) {
            return Offer.of("mph", "km/h");
        }
        List<Offer> offers = new ArrayList<>();
        if (!last.equals("low") && !last.equals("high")) {
            offers.addAll(before.contains("in") ? Offer.of("low", "high") : Offer.of("in", "low"));
        }
        offers.addAll(behind);
        return offers;
    }
}
