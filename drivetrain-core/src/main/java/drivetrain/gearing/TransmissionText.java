package drivetrain.gearing;

import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.CapacityFactor;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Torque;
import drivetrain.refusal.RefusedException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Reads and writes a transmission as one line of words. */
final class TransmissionText {

    private static final String ALLOWED =
            "the forward ratios from first to top, then reverse RATIO, clutch, converter, "
                    + "stall RATIO, stall-speed RPM, curve SPEED:TORQUE:K ..., lockup, no lockup, slip PERCENT, efficiency PERCENT, rating TORQUE, "
                    + "clutch-rating TORQUE, output-rating TORQUE";

    private static final List<String> KEYWORDS = List.of(
            "reverse",
            "clutch",
            "clutch-rating",
            "converter",
            "stall",
            "stall-speed",
            "curve",
            "lockup",
            "no lockup",
            "slip",
            "speed-ratio",
            "efficiency",
            "rating",
            "output-rating");

    private static final List<String> CONVERTER_KEYWORDS =
            List.of("stall", "stall-speed", "curve", "lockup", "lock-up", "no", "slip", "speed-ratio");

    private static final String CONVERTER_ALLOWED =
            "stall RATIO, stall-speed RPM, curve SPEED:TORQUE:K ..., lockup, no lockup, slip PERCENT";

    private final Literal literal;
    private final List<Ratio> forward = new ArrayList<>();
    private Optional<Ratio> reverse = Optional.empty();
    private Optional<Boolean> converter = Optional.empty();
    private OptionalDouble stall = OptionalDouble.empty();
    private Optional<Boolean> lockUp = Optional.empty();
    private OptionalDouble speedRatio = OptionalDouble.empty();
    private Optional<Efficiency> efficiency = Optional.empty();
    private Optional<AngularSpeed> stallSpeed = Optional.empty();
    private Optional<ConverterCurve> curve = Optional.empty();
    private Optional<Torque> rating = Optional.empty();
    private Optional<Torque> outputRating = Optional.empty();
    private Optional<Torque> clutchRating = Optional.empty();

    private TransmissionText(Literal literal) {
        this.literal = literal;
    }

    static Transmission parse(String text) {
        TransmissionText reader = new TransmissionText(Literal.of("transmission", text, ALLOWED, KEYWORDS));
        reader.readForward();
        while (reader.literal.hasNext()) {
            reader.readWord();
        }
        return reader.build();
    }

    static Converter converter(String text) {
        TransmissionText reader =
                new TransmissionText(Literal.of("converter", text, CONVERTER_ALLOWED, CONVERTER_KEYWORDS));
        reader.converter = Optional.of(true);
        while (reader.literal.hasNext()) {
            reader.readConverterWord(reader.literal.position());
        }
        return reader.readConverter();
    }

    static String text(Transmission transmission) {
        List<String> words = new ArrayList<>();
        transmission.forward().forEach(ratio -> words.add(ratio.text()));
        transmission.reverse().ifPresent(ratio -> words.add("reverse " + ratio.text()));
        words.add(transmission.coupling().text());
        transmission.efficiency().ifPresent(value -> words.add(value.words()));
        words.add(PartName.torqueWords("rating", transmission.inputRating()).strip());
        words.add(PartName.torqueWords("output-rating", transmission.outputRating())
                .strip());
        words.removeIf(String::isEmpty);
        return String.join(" ", words);
    }

    private void readForward() {
        do {
            int position = literal.position();
            if (forward.size() == Transmission.MOST_GEARS) {
                throw literal.refusal("has more than " + Transmission.MOST_GEARS + " forward gears", position);
            }
            forward.add(RatioText.take(literal, RatioLimits.GEAR));
            OptionalInt fault = Transmission.firstOutOfOrder(forward);
            if (fault.isPresent()) {
                throw literal.refusal(Transmission.outOfOrder(forward, fault.getAsInt()), position);
            }
        } while (literal.atNumber());
    }

    private void readWord() {
        int position = literal.position();
        if (literal.takes("reverse")) {
            requireFirst(reverse.isEmpty(), "reverse", position);
            reverse = Optional.of(RatioText.take(literal, RatioLimits.GEAR));
        } else if (literal.takes("clutch")) {
            requireFirst(converter.isEmpty(), "the coupling", position);
            converter = Optional.of(false);
        } else if (literal.takes("converter")) {
            requireFirst(converter.isEmpty(), "the coupling", position);
            converter = Optional.of(true);
        } else if (literal.takes("efficiency")) {
            requireFirst(efficiency.isEmpty(), "the efficiency", position);
            efficiency = Optional.of(Efficiency.take(literal));
        } else if (literal.takes("rating")) {
            requireFirst(rating.isEmpty(), "the rating", position);
            rating = Optional.of(literal.quantity(Torque.KIND, "a torque such as 650 lb-ft"));
        } else if (literal.takes("output-rating")) {
            requireFirst(outputRating.isEmpty(), "the output rating", position);
            outputRating = Optional.of(literal.quantity(Torque.KIND, "a torque such as 1900 lb-ft"));
        } else if (!converter.orElse(true) && literal.takes("clutch-rating")) {
            requireFirst(clutchRating.isEmpty(), "the clutch rating", position);
            clutchRating = Optional.of(literal.quantity(Torque.KIND, "a torque such as 650 lb-ft"));
        } else if (converter.orElse(false)) {
            readConverterWord(position);
        } else if (CONVERTER_KEYWORDS.stream().anyMatch(literal::takes)) {
            throw literal.refusal("has a word that wants \"converter\" ahead of it", position);
        } else {
            throw literal.notUnderstood();
        }
    }

    private void readConverterWord(int position) {
        if (literal.takes("stall")) {
            requireFirst(stall.isEmpty(), "the stall torque ratio", position);
            stall = OptionalDouble.of(readStall());
        } else if (literal.takes("stall-speed")) {
            requireFirst(stallSpeed.isEmpty(), "the stall speed", position);
            stallSpeed = Optional.of(readStallSpeed());
        } else if (literal.takes("curve")) {
            requireFirst(curve.isEmpty(), "the curve", position);
            curve = Optional.of(readCurve());
        } else if (literal.takes("lockup") || literal.takes("lock-up")) {
            requireFirst(lockUp.isEmpty(), "lock-up", position);
            lockUp = Optional.of(true);
        } else if (literal.takes("no")) {
            requireFirst(lockUp.isEmpty(), "lock-up", position);
            if (!literal.takes("lockup") && !literal.takes("lock-up")) {
                throw literal.refusal("wants \"lockup\" behind \"no\"", literal.position());
            }
            lockUp = Optional.of(false);
        } else if (literal.takes("slip")) {
            requireFirst(speedRatio.isEmpty(), "the slip", position);
            readSpeedRatio(true);
        } else if (literal.takes("speed-ratio")) {
            requireFirst(speedRatio.isEmpty(), "the slip", position);
            readSpeedRatio(false);
        } else {
            throw literal.notUnderstood();
        }
    }

    private double readStall() {
        int position = literal.position();
        double ratio = literal.number("a stall torque ratio from 1 to 5 such as 2.0");
        if (!Converter.allowsStallRatio(ratio)) {
            throw literal.refusal("has a stall torque ratio outside 1 to 5", position);
        }
        return ratio;
    }

    private AngularSpeed readStallSpeed() {
        int position = literal.position();
        AngularSpeed speed = literal.quantity(AngularSpeed.KIND, "a stall speed such as 2200 rpm");
        if (!Converter.allowsStallSpeed(speed)) {
            throw literal.refusal("has a stall speed outside 500 to 8000 rpm", position);
        }
        return speed;
    }

    private ConverterCurve readCurve() {
        int position = literal.position();
        List<ConverterCurve.Point> points = new ArrayList<>();
        while (literal.atNumberWith(':')) {
            points.add(readPoint());
        }
        try {
            return new ConverterCurve(points);
        } catch (RefusedException refused) {
            throw literal.refusal(
                    "has a converter curve in which " + refused.refusal().given() + " "
                            + refused.refusal().problem(),
                    position);
        }
    }

    private ConverterCurve.Point readPoint() {
        Literal.Word word = literal.take("a point");
        String[] parts = word.text().split(":", -1);
        double[] numbers = new double[3];
        for (int i = 0; i < 3; i++) {
            OptionalDouble number = parts.length == 3 ? DecimalText.parse(parts[i]) : OptionalDouble.empty();
            if (number.isEmpty()) {
                throw literal.refusal(
                        "\"" + word.text() + "\" is not SPEED RATIO:TORQUE RATIO:K, such as 0.5:1.5:160", word.start());
            }
            numbers[i] = number.getAsDouble();
        }
        return new ConverterCurve.Point(numbers[0], numbers[1], CapacityFactor.ofRpmPerRootPoundFoot(numbers[2]));
    }

    private void readSpeedRatio(boolean slip) {
        int position = literal.position();
        double number = slip ? literal.fraction("a slip, such as 3 %") : literal.number("a speed ratio, such as 0.97");
        double ratio = slip ? 1.0 - number : number;
        if (!Converter.allowsSpeedRatio(ratio)) {
            throw literal.refusal("has a converter slip outside 0 % to 50 %", position);
        }
        speedRatio = OptionalDouble.of(ratio);
    }

    private Transmission build() {
        Coupling coupling = converter.orElse(false) ? readConverter() : new Clutch(converter.isPresent(), clutchRating);
        Transmission unnamed = new Transmission("", forward, reverse, coupling, efficiency, rating, outputRating);
        return new Transmission(unnamed.text(), forward, reverse, coupling, efficiency, rating, outputRating);
    }

    private Converter readConverter() {
        if (curve.isPresent()
                && stall.isPresent()
                && stall.getAsDouble() != curve.get().stallTorqueRatio()) {
            throw literal.refusal("has a stall torque ratio that is not the first one of its curve", 0);
        }
        return new Converter(stall, lockUp.orElse(false), speedRatio, stallSpeed, curve);
    }

    private void requireFirst(boolean first, String what, int position) {
        if (!first) {
            throw literal.refusal("names " + what + " twice", position);
        }
    }
}
