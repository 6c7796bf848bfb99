package drivetrain.engine;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Kind;
import drivetrain.quantity.Power;
import drivetrain.quantity.Quantity;
import drivetrain.quantity.Torque;
import drivetrain.quantity.Volume;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads the literal text of one engine; {@link Engine#parse} says what it may hold. */
final class EngineLiteral {

    private static final String ALLOWED =
            "such as 420 hp at 5700 rpm, 460 lb-ft at 4100 rpm, idle 650 rpm, max 6600 rpm";

    private enum Word {
        AT,
        IDLE,
        MAXIMUM,
        SPEED,
        ASPIRATED,
        NATURAL,
        SUPERCHARGED,
        TURBOCHARGED,
        SPARK,
        COMPRESSION,
        NET,
        GROSS,
        CRANK,
        WHEELS
    }

    private static final Map<String, Word> WORDS = Map.ofEntries(
            Map.entry("at", Word.AT),
            Map.entry("@", Word.AT),
            Map.entry("idle", Word.IDLE),
            Map.entry("max", Word.MAXIMUM),
            Map.entry("maximum", Word.MAXIMUM),
            Map.entry("redline", Word.MAXIMUM),
            Map.entry("speed", Word.SPEED),
            Map.entry("natural", Word.NATURAL),
            Map.entry("naturally", Word.NATURAL),
            Map.entry("aspirated", Word.ASPIRATED),
            Map.entry("supercharged", Word.SUPERCHARGED),
            Map.entry("turbocharged", Word.TURBOCHARGED),
            Map.entry("turbo", Word.TURBOCHARGED),
            Map.entry("spark", Word.SPARK),
            Map.entry("gasoline", Word.SPARK),
            Map.entry("petrol", Word.SPARK),
            Map.entry("compression", Word.COMPRESSION),
            Map.entry("diesel", Word.COMPRESSION),
            Map.entry("net", Word.NET),
            Map.entry("gross", Word.GROSS),
            Map.entry("crank", Word.CRANK),
            Map.entry("wheels", Word.WHEELS));

    private final String given;
    private final List<EngineToken> tokens;
    private int next;

    private final List<OperatingPoint> torques = new ArrayList<>();
    private Optional<Power> powerPeak = Optional.empty();
    private Optional<AngularSpeed> powerPeakSpeed = Optional.empty();
    private Optional<Power> statedPower = Optional.empty();
    private Optional<AngularSpeed> idle = Optional.empty();
    private Optional<AngularSpeed> maximum = Optional.empty();
    private Optional<Volume> displacement = Optional.empty();
    private Optional<Aspiration> aspiration = Optional.empty();
    private Optional<Ignition> ignition = Optional.empty();
    private Optional<Rating> rating = Optional.empty();
    private Optional<MeasuredAt> measuredAt = Optional.empty();

    private EngineLiteral(String given) {
        this.given = given;
        tokens = EngineToken.split(given);
    }

    static Engine read(String given) {
        EngineLiteral literal = new EngineLiteral(given);
        if (literal.tokens.isEmpty()) {
            throw literal.refusal("is empty", 0).allowing(ALLOWED).asException();
        }
        while (literal.next < literal.tokens.size()) {
            literal.readOne();
        }
        return literal.engine();
    }

    private void readOne() {
        EngineToken token = tokens.get(next++);
        if (token.isWord()) {
            readWord(token, word(token));
        } else if (token.measures(Torque.KIND)) {
            Torque torque = quantity(token, Torque.KIND, Plausible::torque, "engine torque");
            AngularSpeed speed = speedAt(token);
            torques.add(located(token.start(), () -> OperatingPoint.of(speed, torque)));
        } else if (token.measures(Power.KIND)) {
            readPower(token);
        } else if (token.measures(Volume.KIND)) {
            Volume volume = quantity(token, Volume.KIND, (subject, v) -> Plausible.displacement(v), "displacement");
            displacement = once(displacement, volume, token, "a displacement");
        } else {
            throw refusal("says not which speed " + token.text() + " is", token.start())
                    .allowing("\"idle\" or \"max\" before a speed, \"at\" between a torque or a power and its speed")
                    .asException();
        }
    }

    private void readPower(EngineToken token) {
        Power power = quantity(token, Power.KIND, Plausible::power, "engine power");
        if (next < tokens.size() && wordAt(next).filter(Word.AT::equals).isPresent() && !measuredWordAt(next + 1)) {
            powerPeak = once(powerPeak, power, token, "a peak power with its speed");
            powerPeakSpeed = Optional.of(speedAt(token));
        } else {
            statedPower = once(statedPower, power, token, "a stated power");
        }
    }

    private void readWord(EngineToken token, Word word) {
        switch (word) {
            case IDLE -> idle = once(idle, speedAfter(token, "idle speed"), token, "an idle speed");
            case MAXIMUM -> maximum = once(maximum, speedAfter(token, "maximum speed"), token, "a maximum speed");
            case NATURAL -> {
                aspiration = once(aspiration, Aspiration.NATURAL, token, "an aspiration");
                skip(Word.ASPIRATED);
            }
            case SUPERCHARGED -> aspiration = once(aspiration, Aspiration.SUPERCHARGED, token, "an aspiration");
            case TURBOCHARGED -> aspiration = once(aspiration, Aspiration.TURBOCHARGED, token, "an aspiration");
            case SPARK -> ignition = once(ignition, Ignition.SPARK, token, "an ignition");
            case COMPRESSION -> ignition = once(ignition, Ignition.COMPRESSION, token, "an ignition");
            case NET -> rating = once(rating, Rating.NET, token, "a rating");
            case GROSS -> rating = once(rating, Rating.GROSS, token, "a rating");
            case CRANK -> measuredAt = once(measuredAt, MeasuredAt.CRANK, token, "a place of measurement");
            case WHEELS -> measuredAt = once(measuredAt, MeasuredAt.WHEELS, token, "a place of measurement");
            case AT, SPEED, ASPIRATED -> {
                if (word != Word.AT || !measuredWordAt(next)) {
                    throw refusal("has \"" + token.text() + "\" out of place", token.start())
                            .allowing(ALLOWED)
                            .asException();
                }
            }
        }
    }

    private Word word(EngineToken token) {
        Word word = WORDS.get(token.text().toLowerCase(Locale.ROOT));
        if (word == null) {
            throw refusal("has \"" + token.text() + "\", which says nothing of an engine", token.start())
                    .allowing(ALLOWED)
                    .suggesting(NearNames.of(token.text(), WORDS.keySet()))
                    .asException();
        }
        return word;
    }

    private Optional<Word> wordAt(int index) {
        return index < tokens.size() && tokens.get(index).isWord()
                ? Optional.ofNullable(WORDS.get(tokens.get(index).text().toLowerCase(Locale.ROOT)))
                : Optional.empty();
    }

    private boolean measuredWordAt(int index) {
        return wordAt(index)
                .filter(word -> word == Word.CRANK || word == Word.WHEELS)
                .isPresent();
    }

    private void skip(Word word) {
        if (wordAt(next).filter(word::equals).isPresent()) {
            next++;
        }
    }

    private AngularSpeed speedAt(EngineToken of) {
        if (!wordAt(next).filter(Word.AT::equals).isPresent()) {
            throw refusal(
                            "says not at which speed " + of.text() + " is made",
                            of.start() + of.text().length())
                    .allowing("\"at\" and a speed, " + ALLOWED)
                    .asException();
        }
        next++;
        return speedAfter(tokens.get(next - 1), "engine speed");
    }

    private AngularSpeed speedAfter(EngineToken word, String subject) {
        skip(Word.SPEED);
        if (next >= tokens.size() || !tokens.get(next).measures(AngularSpeed.KIND)) {
            int at = next < tokens.size() ? tokens.get(next).start() : given.length();
            throw refusal("has no engine speed behind \"" + word.text() + "\"", at)
                    .allowing("a speed with its unit, such as 650 rpm")
                    .asException();
        }
        return quantity(tokens.get(next++), AngularSpeed.KIND, Plausible::speed, subject);
    }

    private interface Check<Q> {
        Q apply(String subject, Q quantity);
    }

    private <Q extends Quantity<Q>> Q quantity(EngineToken token, Kind<Q> kind, Check<Q> check, String subject) {
        Q read = located(token.start(), () -> kind.parse(token.text()));
        located(token.start(), () -> check.apply(subject, read));
        return read;
    }

    private <T> Optional<T> once(Optional<T> before, T now, EngineToken token, String what) {
        if (before.isPresent()) {
            throw refusal("gives " + what + " twice", token.start())
                    .allowing("each once")
                    .asException();
        }
        return Optional.of(now);
    }

    private Engine engine() {
        AngularSpeed maximumSpeed = maximum.orElseThrow(() -> refusal("has no maximum speed", given.length())
                .allowing("\"max\" and a speed, such as max 6600 rpm")
                .asException());
        return located(0, () -> {
            Engine unnamed = new Engine(
                    "engine",
                    aspiration.orElse(Aspiration.NATURAL),
                    ignition.orElse(Ignition.SPARK),
                    displacement,
                    rating.orElse(Rating.NET),
                    measuredAt.orElse(MeasuredAt.CRANK),
                    idle,
                    maximumSpeed,
                    statedPower,
                    torqueSource());
            return unnamed.withName(unnamed.text());
        });
    }

    private TorqueSource torqueSource() {
        if (powerPeak.isPresent() && torques.size() == 1) {
            OperatingPoint peak = torques.get(0);
            return PeakEstimate.of(powerPeak.get(), powerPeakSpeed.orElseThrow(), peak.torque(), peak.speed());
        }
        if (powerPeak.isPresent()) {
            throw refusal("has a power with its speed and " + torques.size() + " torques", 0)
                    .allowing(
                            "both peaks, one power and one torque; or three torques and more, and the power without a speed")
                    .asException();
        }
        if (torques.isEmpty()) {
            return new NoTorque();
        }
        return TorqueCurve.of(torques);
    }

    private Refusal refusal(String problem, int position) {
        return Refusal.of("engine", given, problem).at(position);
    }

    private interface Reading<T> {
        T get();
    }

    private <T> T located(int start, Reading<T> reading) {
        try {
            return reading.get();
        } catch (RefusedException e) {
            Refusal inner = e.refusal();
            if (inner.given().equals(given)) {
                throw e;
            }
            String problem =
                    inner.subject() + (inner.given().isEmpty() ? " " : " \"" + inner.given() + "\" ") + inner.problem();
            RefusedException outer = new RefusedException(
                    refusal(problem, start + inner.position().orElse(0))
                            .allowing(inner.allowed())
                            .suggesting(inner.suggestions()));
            outer.initCause(e);
            throw outer;
        }
    }
}
