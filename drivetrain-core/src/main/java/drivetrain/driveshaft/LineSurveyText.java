package drivetrain.driveshaft;

import drivetrain.quantity.Angle;
import drivetrain.quantity.Length;
import drivetrain.quantity.Quantity;
import drivetrain.quantity.Unit;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads and writes the description of a shaft line. */
final class LineSurveyText {

    private static final String SUBJECT = "shaft line";
    private static final String ALLOWED =
            "output 3.5 deg down, shaft 1185 mm 9.2 deg down 40 mm left, pinion 3 deg down; or points: output x 0 mm y 0 mm z 640 mm 3 deg down, ...";
    private static final List<String> KEYWORDS = List.of(
            "output", "shaft", "pinion", "bearing", "down", "up", "level", "left", "right", "long", "x", "y", "z",
            "joint", "out");

    private final String text;
    private final Phrase phrase;
    private final List<SurveyRun> runs = new ArrayList<>();
    private final List<Position> bearings = new ArrayList<>();
    private Optional<End> output = Optional.empty();
    private Optional<End> pinion = Optional.empty();

    /** An end of the line: its axis, and its point where the line is described by points. */
    private record End(AxisDirection axis, Optional<Position> point, Length toJoint) {
        Flange flange() {
            return new Flange(point.orElseThrow(), axis, toJoint);
        }
    }

    LineSurveyText(String text) {
        this.text = text;
        this.phrase = Phrase.of(SUBJECT, text, ALLOWED, KEYWORDS);
    }

    LineSurvey read() {
        int start;
        do {
            start = phrase.position();
            if (pinion.isPresent()) {
                throw phrase.fault("goes on behind the pinion", start);
            }
            try {
                readClause();
            } catch (RefusedException refused) {
                throw phrase.placed(refused, start);
            }
        } while (phrase.nextClause());
        if (pinion.isEmpty()) {
            throw phrase.fault("ends without the pinion", text.length());
        }
        try {
            return survey(output.orElseThrow(), pinion.get(), start);
        } catch (RefusedException refused) {
            throw phrase.placed(refused, 0);
        }
    }

    private void readClause() {
        if (output.isEmpty()) {
            phrase.require("output");
            output = Optional.of(end());
        } else if (phrase.takes("shaft")) {
            runs.add(run());
        } else if (phrase.takes("bearing")) {
            bearings.add(point());
        } else if (phrase.takes("pinion")) {
            pinion = Optional.of(end());
        } else {
            throw phrase.notUnderstood();
        }
    }

    private LineSurvey survey(End from, End to, int pinionStart) {
        if (from.point().isPresent() != to.point().isPresent()) {
            throw phrase.fault(
                    "gives a point for one end only; give points for both, or shafts between them", pinionStart);
        }
        if (from.point().isEmpty()) {
            if (runs.isEmpty() || !bearings.isEmpty()) {
                throw phrase.fault("has no shaft between output and pinion", pinionStart);
            }
            return new SlopeSurvey(from.axis(), runs, to.axis());
        }
        if (!runs.isEmpty()) {
            throw phrase.fault("gives points and shafts; the points alone tell where the shafts run", pinionStart);
        }
        return new PointSurvey(from.flange(), bearings, to.flange());
    }

    private End end() {
        Optional<Position> point = phrase.isAt("x") ? Optional.of(point()) : Optional.empty();
        Angle down = slope();
        Optional<Angle> left = phrase.atAngle() ? Optional.of(signed(Angle.KIND, "left", "right")) : Optional.empty();
        Length out = Length.ofMeters(0.0);
        if (point.isPresent() && phrase.takes("joint")) {
            out = phrase.quantity(Length.KIND, "a length");
            phrase.require("out");
        }
        return new End(new AxisDirection(down, left), point, out);
    }

    private Angle slope() {
        return phrase.takes("level") ? Angle.ofRadians(0.0) : signed(Angle.KIND, "down", "up");
    }

    private SurveyRun run() {
        Length length = phrase.quantity(Length.KIND, "the length from joint to joint");
        phrase.takes("long");
        Optional<Angle> slope = Optional.empty();
        Optional<Length> fall = Optional.empty();
        if (phrase.atLength()) {
            fall = Optional.of(signed(Length.KIND, "down", "up"));
        } else {
            slope = Optional.of(slope());
        }
        Optional<Length> left = phrase.hasNext() ? Optional.of(signed(Length.KIND, "left", "right")) : Optional.empty();
        return new SurveyRun(length, slope, fall, left);
    }

    private <Q extends Quantity<Q>> Q signed(drivetrain.quantity.Kind<Q> kind, String positive, String negative) {
        Q size = phrase.quantity(kind, "a slope such as 3 deg down, or level");
        if (phrase.takes(negative)) {
            return kind.of(-size.si(), kind.siUnit());
        }
        phrase.require(positive);
        return size;
    }

    private Position point() {
        return new Position(coordinate("x"), coordinate("y"), coordinate("z"));
    }

    private Length coordinate(String axis) {
        phrase.require(axis);
        return phrase.quantity(Length.KIND, "a length");
    }

    static String write(SlopeSurvey survey) {
        List<String> clauses = new ArrayList<>();
        clauses.add("output " + axis(survey.output()));
        for (SurveyRun run : survey.runs()) {
            clauses.add("shaft " + ExactText.of(run.length(), Length.MILLIMETER)
                    + run.slope().map(slope -> " " + slope(slope)).orElse("")
                    + run.fall()
                            .map(fall -> " " + signed(fall, Length.MILLIMETER, " down", " up"))
                            .orElse("")
                    + run.left()
                            .map(left -> " " + signed(left, Length.MILLIMETER, " left", " right"))
                            .orElse(""));
        }
        clauses.add("pinion " + axis(survey.pinion()));
        return String.join(", ", clauses);
    }

    static String write(PointSurvey survey) {
        List<String> clauses = new ArrayList<>();
        clauses.add("output " + flange(survey.output()));
        survey.bearings().forEach(point -> clauses.add("bearing " + point(point)));
        clauses.add("pinion " + flange(survey.pinion()));
        return String.join(", ", clauses);
    }

    private static String flange(Flange flange) {
        String out = flange.toJoint().toMeters() == 0.0
                ? ""
                : " joint " + ExactText.of(flange.toJoint(), Length.MILLIMETER) + " out";
        return point(flange.point()) + " " + axis(flange.axis()) + out;
    }

    private static String point(Position point) {
        return "x " + ExactText.of(point.x(), Length.MILLIMETER) + " y " + ExactText.of(point.y(), Length.MILLIMETER)
                + " z " + ExactText.of(point.z(), Length.MILLIMETER);
    }

    private static String axis(AxisDirection axis) {
        return slope(axis.down())
                + axis.left()
                        .map(left -> " " + signed(left, Angle.DEGREE, " left", " right"))
                        .orElse("");
    }

    private static String slope(Angle down) {
        return down.toRadians() == 0.0 ? "level" : signed(down, Angle.DEGREE, " down", " up");
    }

    private static <Q extends Quantity<Q>> String signed(Q quantity, Unit<Q> unit, String positive, String negative) {
        boolean isNegative = quantity.si() < 0.0;
        Q size = isNegative ? quantity.kind().of(-quantity.si(), quantity.kind().siUnit()) : quantity;
        return ExactText.of(size, unit) + (isNegative ? negative : positive);
    }
}
