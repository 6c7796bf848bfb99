package drivetrain.driveshaft;

import drivetrain.quantity.Angle;
import drivetrain.quantity.Kind;
import drivetrain.quantity.Length;
import drivetrain.quantity.Quantity;
import drivetrain.refusal.RefusedException;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Reads and writes the description of a suspension. */
final class SuspensionText {

    private static final String SUBJECT = "suspension";
    private static final String ALLOWED =
            "radius arms ..., four links, lower from ... to ..., upper from ... to ..., or leaf springs ...;"
                    + " then pinion 260 mm ahead 30 mm above, bump 90 mm, droop 120 mm, track 1490 mm";
    private static final List<String> KEYWORDS = List.of(
            "radius", "arms", "four", "links", "leaf", "springs", "lower", "upper", "from", "to", "panhard", "pinion",
            "bump", "droop", "track", "ahead", "behind", "above", "below", "left", "right", "apart", "turning", "up",
            "down", "per");
    private static final Length TURN_OVER = Length.parse("100 mm");
    private static final Length NONE = Length.ofMeters(0.0);

    private final String text;
    private final Phrase phrase;
    private Optional<Guide> guide = Optional.empty();
    private Optional<Position> guidePoints = Optional.empty();
    private Optional<Angle> turn = Optional.empty();
    private Optional<LinkPair> lower = Optional.empty();
    private Optional<LinkPair> upper = Optional.empty();
    private Optional<PanhardRod> panhard = Optional.empty();
    private Optional<Position> pinion = Optional.empty();
    private Optional<Length> bump = Optional.empty();
    private Optional<Length> droop = Optional.empty();
    private Optional<Length> track = Optional.empty();

    private enum Guide {
        ARMS,
        LINKS,
        SPRINGS
    }

    SuspensionText(String text) {
        this.text = text;
        this.phrase = Phrase.of(SUBJECT, text, ALLOWED, KEYWORDS);
    }

    Suspension read() {
        do {
            int start = phrase.position();
            try {
                readClause(start);
            } catch (RefusedException refused) {
                throw phrase.placed(refused, start);
            }
        } while (phrase.nextClause());
        try {
            return suspension();
        } catch (RefusedException refused) {
            throw phrase.placed(refused, 0);
        }
    }

    private void readClause(int start) {
        if (guide.isEmpty()) {
            readGuide();
        } else if (guide.get() == Guide.LINKS && phrase.takes("lower")) {
            lower = once("lower", lower, links(), start);
        } else if (guide.get() == Guide.LINKS && phrase.takes("upper")) {
            upper = once("upper", upper, links(), start);
        } else if (guide.get() != Guide.SPRINGS && phrase.takes("panhard")) {
            panhard = once("panhard", panhard, rod(), start);
        } else if (phrase.takes("pinion")) {
            Position center = point();
            SuspensionPoint.requireNear("pinion", center);
            pinion = once("pinion", pinion, center, start);
        } else if (phrase.takes("bump")) {
            bump = once("bump", bump, length(way -> AxleTravel.requireWay("bump", way)), start);
        } else if (phrase.takes("droop")) {
            droop = once("droop", droop, length(way -> AxleTravel.requireWay("droop", way)), start);
        } else if (phrase.takes("track")) {
            track = once("track", track, length(AxleTravel::requireTrack), start);
        } else {
            throw phrase.notUnderstood();
        }
    }

    private <T> Optional<T> once(String clause, Optional<T> before, T now, int start) {
        if (before.isPresent()) {
            throw phrase.fault("has " + clause + " twice", start);
        }
        return Optional.of(now);
    }

    private Length length(UnaryOperator<Length> check) {
        return phrase.quantity(Length.KIND, "a length", check);
    }

    private void readGuide() {
        if (phrase.takes("radius", "arms")) {
            guide = Optional.of(Guide.ARMS);
            guidePoints = Optional.of(pair());
        } else if (phrase.takes("four", "links")) {
            guide = Optional.of(Guide.LINKS);
        } else {
            phrase.require("leaf", "springs");
            guide = Optional.of(Guide.SPRINGS);
            guidePoints = Optional.of(pair());
            if (phrase.takes("turning")) {
                Angle angle = signed(Angle.KIND, "up", "down", value -> value);
                phrase.require("per");
                Length over = phrase.quantity(Length.KIND, "a length").requirePositive("bump");
                turn = Optional.of(angle.times(TURN_OVER.ratioTo(over)));
            }
        }
    }

    private LinkPair links() {
        phrase.require("from");
        Position axle = pair();
        phrase.require("to");
        return new LinkPair(axle, pair());
    }

    private PanhardRod rod() {
        phrase.require("from");
        Position axle = point();
        phrase.require("to");
        return new PanhardRod(axle, point());
    }

    private Position pair() {
        Length x = aside("ahead", "behind");
        Length z = aside("above", "below");
        Length y = phrase.quantity(Length.KIND, "the distance apart");
        phrase.require("apart");
        return new Position(x, y, z);
    }

    private Position point() {
        Length x = aside("ahead", "behind");
        Length z = aside("above", "below");
        Length y = phrase.atNumber() ? aside("left", "right") : NONE;
        return new Position(x, y, z);
    }

    /** A coordinate of a point, to one side or the other. */
    private Length aside(String positive, String negative) {
        return signed(Length.KIND, positive, negative, size -> Position.require(positive, size));
    }

    private <Q extends Quantity<Q>> Q signed(Kind<Q> kind, String positive, String negative, UnaryOperator<Q> check) {
        Q size = phrase.quantity(kind, "a figure with \"" + positive + "\" or \"" + negative + "\"", check);
        if (phrase.takes(negative)) {
            return kind.of(-size.si(), kind.siUnit());
        }
        phrase.require(positive);
        return size;
    }

    private Suspension suspension() {
        AxleTravel travel = new AxleTravel(
                needed(pinion, "pinion"), needed(bump, "bump"), needed(droop, "droop"), needed(track, "track"));
        return switch (guide.orElseThrow()) {
            case ARMS -> new RadiusArms(guidePoints.orElseThrow(), panhard, travel);
            case LINKS -> new FourLinks(needed(lower, "lower"), needed(upper, "upper"), panhard, travel);
            case SPRINGS -> new LeafSprings(guidePoints.orElseThrow(), turn, travel);
        };
    }

    private <T> T needed(Optional<T> clause, String name) {
        return clause.orElseThrow(() -> phrase.fault("does not tell its " + name, text.length()));
    }

    static String write(RadiusArms arms) {
        return "radius arms " + pair(arms.pivots()) + rod(arms.panhard()) + travel(arms.travel());
    }

    static String write(FourLinks links) {
        return "four links, lower " + links(links.lower()) + ", upper " + links(links.upper()) + rod(links.panhard())
                + travel(links.travel());
    }

    static String write(LeafSprings springs) {
        String turning = springs.turn().map(SuspensionText::turning).orElse("");
        return "leaf springs " + pair(springs.eyes()) + turning + travel(springs.travel());
    }

    private static String turning(Angle turn) {
        boolean down = turn.toRadians() < 0.0;
        return " turning " + ExactText.of(down ? turn.times(-1.0) : turn, Angle.DEGREE) + (down ? " down" : " up")
                + " per 100 mm";
    }

    private static String links(LinkPair links) {
        return "from " + pair(links.axle()) + " to " + pair(links.chassis());
    }

    private static String rod(Optional<PanhardRod> rod) {
        return rod.map(present -> ", panhard from " + point(present.axle()) + " to " + point(present.chassis()))
                .orElse("");
    }

    private static String travel(AxleTravel travel) {
        return ", pinion " + point(travel.pinion()) + ", bump " + length(travel.bump()) + ", droop "
                + length(travel.droop()) + ", track " + length(travel.track());
    }

    private static String pair(Position pair) {
        return signed(pair.x(), " ahead", " behind") + " " + signed(pair.z(), " above", " below") + " "
                + length(pair.y()) + " apart";
    }

    private static String point(Position point) {
        String aside = point.y().toMeters() == 0.0 ? "" : " " + signed(point.y(), " left", " right");
        return signed(point.x(), " ahead", " behind") + " " + signed(point.z(), " above", " below") + aside;
    }

    private static String signed(Length length, String positive, String negative) {
        boolean isNegative = length.toMeters() < 0.0;
        return length(isNegative ? length.times(-1.0) : length) + (isNegative ? negative : positive);
    }

    private static String length(Length length) {
        return ExactText.of(length, Length.MILLIMETER);
    }
}
