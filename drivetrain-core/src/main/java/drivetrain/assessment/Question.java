package drivetrain.assessment;

import drivetrain.combination.Combination;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Speed;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The questions that can be asked of a combination as it stands, by the words that people ask them with. */
public enum Question {
    /** Engine speed at the cruise speed of the order. */
    CRUISE("cruise", "engine speed at the order's cruise speed", Question::cruise),
    /** Road speed in each gear at the engine's maximum speed. */
    SPEEDS("speeds", "road speed in each gear at the engine's maximum speed", RoadSpeedsAnswer::atMaximum),
    /** Crawl ratio and crawl speed. */
    CRAWL("crawl", "crawl ratio and crawl speed at idle", CrawlAnswer::of),
    /** Wheel torque in each gear. */
    TORQUE("torque", "wheel torque in each gear", WheelTorqueAnswer::of),
    /** Steps between the gears. */
    SHIFTS("shifts", "engine speed after each upshift", ShiftAnswer::atMaximum),
    /** What the speedometer shows. */
    SPEEDOMETER("speedometer", "what the speedometer shows", SpeedometerAnswer::of),
    /** Greatest torque and power of the engine. */
    ENGINE("engine", "greatest torque and power of the engine", EngineAnswer::of),
    /** Size and rolling circumference of the tire. */
    TIRE("tire", "size and rolling circumference of the tire", TireAnswer::of),
    /** Angles and motion of the driveshafts. */
    SHAFTS("shafts", "angles, motion and couples of the driveshafts", ShaftsAnswer::of),
    /** How near the driveshafts come to whirling. */
    CRITICAL("critical", "how near the driveshafts come to whirling", CriticalSpeedAnswer::of),
    /** Whether the driveshafts carry their greatest torque. */
    TORSION("torsion", "whether the driveshafts carry their greatest torque", StrengthAnswer::of),
    /** The driveshafts over the travel of their axles. */
    TRAVEL("travel", "length and angles of the driveshafts over the suspension travel", TravelAnswer::of),
    /** Whether the engine holds the order's cruise speed, and in which gear. */
    PULL("pull", "which gear holds the order's cruise speed, and what grade it holds", PullAnswer::of),
    /** The speed that the vehicle really reaches. */
    TOP("top", "top speed in each gear by power, gearing and speed limiter", TopAnswer::of),
    /** What the tires put on the ground. */
    GRIP("grip", "what the tires put on the ground, and how steep that climbs", GripAnswer::of),
    /** Torque in every part. */
    LOADS("loads", "greatest torque in every part, held against its rating", LoadsAnswer::of),
    /** The torque converter behind the engine. */
    CONVERTER("converter", "stall, creep and open cruise of the torque converter", ConverterAnswer::of),
    /** Whether the fuel supply keeps up. */
    SUPPLY("supply", "whether the fuel supply keeps up and what runs out first", SupplyAnswer::of),
    /** Range and vapor of the tank. */
    TANK("tank", "range, expansion and vapor of the tank", TankAnswer::of);

    private final String word;
    private final String meaning;

    @SuppressWarnings("ImmutableEnumChecker") // a method reference to a pure function
    private final Function<Combination, Outcome<? extends Answer>> asked;

    Question(String word, String meaning, Function<Combination, Outcome<? extends Answer>> asked) {
        this.word = word;
        this.meaning = meaning;
        this.asked = asked;
    }

    private static Outcome<? extends Answer> cruise(Combination combination) {
        Outcome<Speed> speed = Outcome.of(combination.cruise(), "the order names no cruise speed");
        return speed.then(known -> CruiseAnswer.at(combination, known, GearChoice.TOP));
    }

    /**
     * Returns the word by which it is asked.
     *
     * @return the word
     */
    public String word() {
        return word;
    }

    /**
     * Returns what it asks.
     *
     * @return a phrase
     */
    public String meaning() {
        return meaning;
    }

    /**
     * Asks.
     *
     * @param combination the drivetrain package
     * @return the answer, or what is missing
     */
    public Outcome<? extends Answer> of(Combination combination) {
        return asked.apply(combination);
    }

    /**
     * Finds a question by its word.
     *
     * @param word the word
     * @return the question, or empty
     */
    public static Optional<Question> ofWord(String word) {
        return Arrays.stream(values())
                .filter(question -> question.word.equals(word))
                .findFirst();
    }

    /**
     * Lists the words.
     *
     * @return the words, in the order of the questions
     */
    public static List<String> words() {
        return Arrays.stream(values()).map(Question::word).toList();
    }
}
