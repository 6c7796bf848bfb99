package drivetrain.driveshaft;

import drivetrain.quantity.Angle;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Stiffness;
import drivetrain.quantity.Torque;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads and writes the literal of a driveshaft. */
final class DriveshaftText {

    private static final String SUBJECT = "driveshaft";
    private static final String ALLOWED = "clauses such as tube 76.2 mm x 2.1 mm of steel, yokes in phase,"
            + " joints rated 1700 Nm to 30 deg, slip 24 teeth 95 mm engaged 50 mm free";
    private static final List<String> KEYWORDS = List.of(
            "tube",
            "of",
            "length",
            "yokes",
            "long",
            "in",
            "phase",
            "clockwise",
            "counterclockwise",
            "joints",
            "joint",
            "double",
            "at",
            "output",
            "pinion",
            "rated",
            "to",
            "slip",
            "teeth",
            "across",
            "engaged",
            "least",
            "free",
            "flanges",
            "bearing");
    /** The inch is a unit as well as the word of {@code in phase}. */
    private static final List<String> NO_UNITS =
            KEYWORDS.stream().filter(word -> !word.equals("in")).toList();

    private final Phrase phrase;
    private final List<ShaftPiece> pieces = new ArrayList<>();
    private Optional<Ratings> every = Optional.empty();
    private Optional<Ratings> output = Optional.empty();
    private Optional<Ratings> pinion = Optional.empty();
    private Optional<SlipSpline> slip = Optional.empty();
    private Optional<Torque> flanges = Optional.empty();
    private Optional<Stiffness> bearing = Optional.empty();

    private record Ratings(Optional<Torque> torque, Optional<Angle> angle) {
        static final Ratings UNKNOWN = new Ratings(Optional.empty(), Optional.empty());
    }

    DriveshaftText(String text) {
        this.phrase = Phrase.of(SUBJECT, text, ALLOWED, NO_UNITS);
    }

    Driveshaft read() {
        do {
            int start = phrase.position();
            try {
                readClause(start);
            } catch (RefusedException refused) {
                throw phrase.placed(refused, start);
            }
        } while (phrase.nextClause());
        if (pieces.isEmpty()) {
            throw phrase.fault("names no tube", 0);
        }
        try {
            Driveshaft shaft = new Driveshaft("", pieces, joints(), slip, flanges, bearing);
            return shaft.withName(shaft.text());
        } catch (RefusedException refused) {
            throw phrase.placed(refused, 0);
        }
    }

    private void readClause(int start) {
        if (phrase.takes("tube")) {
            readTube();
        } else if (phrase.takes("length")) {
            ShaftPiece piece = lastPiece("length", start);
            requireFirst("length", piece.length().isPresent(), start);
            Length length = ShaftPiece.requireLength(phrase.quantity(Length.KIND, "a length"));
            replace(new ShaftPiece(piece.tube(), piece.material(), Optional.of(length), piece.yoke(), piece.phase()));
        } else if (phrase.takes("yokes")) {
            readYokes(start);
        } else if (phrase.takes("joints")) {
            requireFirst("joints", every.isPresent(), start);
            every = Optional.of(ratings());
        } else if (phrase.takes("double", "joint", "at")) {
            readDouble(start);
        } else if (phrase.takes("slip")) {
            requireFirst("slip", slip.isPresent(), start);
            slip = Optional.of(spline());
        } else if (phrase.takes("flanges")) {
            requireFirst("flanges", flanges.isPresent(), start);
            phrase.require("rated");
            flanges = Optional.of(phrase.quantity(Torque.KIND, "a torque").requirePositive("flange rating"));
        } else if (phrase.takes("bearing")) {
            requireFirst("bearing", bearing.isPresent(), start);
            bearing = Optional.of(phrase.quantity(Stiffness.KIND, "a stiffness"));
        } else {
            throw phrase.notUnderstood();
        }
    }

    private void readTube() {
        Tube tube = phrase.until("of", "a tube such as 76.2 mm x 2.1 mm", Tube::parse);
        phrase.require("of");
        pieces.add(ShaftPiece.of(tube, phrase.until("", "a material such as steel", ShaftMaterial::parse)));
    }

    private void readYokes(int start) {
        ShaftPiece piece = lastPiece("yokes", start);
        requireFirst("yokes", piece.yoke().isPresent() || piece.phase().isPresent(), start);
        Optional<Yoke> yoke = Optional.empty();
        Optional<Angle> phase = phase();
        if (phase.isEmpty()) {
            Mass mass = phrase.quantity(Mass.KIND, "a mass, or in phase");
            Length length = phrase.quantity(Length.KIND, "a length");
            phrase.require("long");
            yoke = Optional.of(new Yoke(mass, length));
            phase = phase();
        }
        replace(new ShaftPiece(piece.tube(), piece.material(), piece.length(), yoke, phase));
    }

    private Optional<Angle> phase() {
        if (phrase.takes("in", "phase")) {
            return Optional.of(Angle.ofRadians(0.0));
        }
        if (!phrase.hasNext() || !phrase.atAngle()) {
            return Optional.empty();
        }
        Angle turn = phrase.quantity(Angle.KIND, "an angle");
        if (phrase.takes("counterclockwise")) {
            return Optional.of(turn.times(-1.0));
        }
        phrase.require("clockwise");
        return Optional.of(turn);
    }

    private Ratings ratings() {
        Optional<Torque> torque =
                phrase.takes("rated") ? Optional.of(phrase.quantity(Torque.KIND, "a torque")) : Optional.empty();
        Optional<Angle> angle =
                phrase.takes("to") ? Optional.of(phrase.quantity(Angle.KIND, "an angle")) : Optional.empty();
        if (torque.isEmpty() && angle.isEmpty() && phrase.hasNext()) {
            throw phrase.notUnderstood();
        }
        new Joint(JointKind.SINGLE, torque, angle);
        return new Ratings(torque, angle);
    }

    private void readDouble(int start) {
        if (phrase.takes("output")) {
            requireFirst("double joint at output", output.isPresent(), start);
            output = Optional.of(ratings());
        } else {
            phrase.require("pinion");
            requireFirst("double joint at pinion", pinion.isPresent(), start);
            pinion = Optional.of(ratings());
        }
    }

    private SlipSpline spline() {
        int teeth = phrase.whole("a count of teeth", SlipSpline.FEWEST_TEETH, SlipSpline.MOST_TEETH);
        phrase.require("teeth");
        return new SlipSpline(teeth, given("across"), given("long"), given("engaged"), given("least"), given("free"));
    }

    /** Takes a length if the word behind it is the wanted one. */
    private Optional<Length> given(String word) {
        return phrase.quantityBefore(word, Length.KIND);
    }

    private ShaftPiece lastPiece(String clause, int start) {
        if (pieces.isEmpty()) {
            throw phrase.fault("has " + clause + " before the tube that they belong to", start);
        }
        return pieces.get(pieces.size() - 1);
    }

    private void requireFirst(String clause, boolean given, int start) {
        if (given) {
            throw phrase.fault("has " + clause + " twice", start);
        }
    }

    private void replace(ShaftPiece piece) {
        pieces.set(pieces.size() - 1, piece);
    }

    private List<Joint> joints() {
        List<Joint> joints = new ArrayList<>();
        for (int i = 0; i <= pieces.size(); i++) {
            Optional<Ratings> doubled = i == 0 ? output : i == pieces.size() ? pinion : Optional.empty();
            Ratings ratings = doubled.orElseGet(() -> every.orElse(Ratings.UNKNOWN));
            JointKind kind = doubled.isPresent() ? JointKind.DOUBLE : JointKind.SINGLE;
            joints.add(new Joint(kind, ratings.torque(), ratings.angle()));
        }
        return joints;
    }

    static String write(Driveshaft shaft) {
        List<String> clauses = new ArrayList<>();
        for (ShaftPiece piece : shaft.pieces()) {
            clauses.add("tube " + ExactText.of(piece.tube().diameter(), Length.MILLIMETER) + " x "
                    + ExactText.of(piece.tube().wall(), Length.MILLIMETER) + " of "
                    + piece.material().text());
            piece.length().ifPresent(length -> clauses.add("length " + ExactText.of(length, Length.MILLIMETER)));
            yokes(piece).ifPresent(clauses::add);
        }
        Joint single = shaft.joints().stream()
                .filter(joint -> !joint.isDouble())
                .findFirst()
                .orElse(Joint.of(JointKind.SINGLE));
        String rated = rated(single);
        if (!rated.isEmpty()) {
            clauses.add("joints" + rated);
        }
        Joint first = shaft.joints().get(0);
        Joint last = shaft.joints().get(shaft.joints().size() - 1);
        if (first.isDouble()) {
            clauses.add("double joint at output" + rated(first));
        }
        if (last.isDouble()) {
            clauses.add("double joint at pinion" + rated(last));
        }
        shaft.slip().ifPresent(slip -> clauses.add(spline(slip)));
        shaft.flangeRating()
                .ifPresent(torque -> clauses.add("flanges rated " + ExactText.of(torque, Torque.NEWTON_METER)));
        shaft.bearing()
                .ifPresent(mount -> clauses.add("bearing " + ExactText.of(mount, Stiffness.NEWTON_PER_MILLIMETER)));
        return String.join(", ", clauses);
    }

    private static Optional<String> yokes(ShaftPiece piece) {
        if (piece.yoke().isEmpty() && piece.phase().isEmpty()) {
            return Optional.empty();
        }
        StringBuilder words = new StringBuilder("yokes");
        piece.yoke()
                .ifPresent(yoke -> words.append(' ')
                        .append(ExactText.of(yoke.mass(), Mass.KILOGRAM))
                        .append(' ')
                        .append(ExactText.of(yoke.length(), Length.MILLIMETER))
                        .append(" long"));
        piece.phase().ifPresent(phase -> words.append(' ').append(phaseWords(phase)));
        return Optional.of(words.toString());
    }

    static String phaseWords(Angle phase) {
        if (phase.toRadians() == 0.0) {
            return "in phase";
        }
        boolean clockwise = phase.toRadians() > 0.0;
        return ExactText.of(clockwise ? phase : phase.times(-1.0), Angle.DEGREE)
                + (clockwise ? " clockwise" : " counterclockwise");
    }

    private static String rated(Joint joint) {
        return joint.rating()
                        .map(torque -> " rated " + ExactText.of(torque, Torque.NEWTON_METER))
                        .orElse("")
                + joint.mostAngle()
                        .map(angle -> " to " + ExactText.of(angle, Angle.DEGREE))
                        .orElse("");
    }

    private static String spline(SlipSpline slip) {
        return "slip " + slip.teeth() + " teeth" + length(slip.diameter(), "across") + length(slip.stub(), "long")
                + length(slip.engaged(), "engaged") + length(slip.least(), "least") + length(slip.free(), "free");
    }

    private static String length(Optional<Length> length, String word) {
        return length.map(known -> " " + ExactText.of(known, Length.MILLIMETER) + " " + word)
                .orElse("");
    }
}
