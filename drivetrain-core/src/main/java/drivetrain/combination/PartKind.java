package drivetrain.combination;

import drivetrain.engine.Engine;
import drivetrain.gearing.AxleRatio;
import drivetrain.gearing.HubReduction;
import drivetrain.gearing.Overdrive;
import drivetrain.gearing.TransferCase;
import drivetrain.gearing.Transmission;
import drivetrain.tire.Tire;
import java.util.List;
import java.util.function.Function;

/**
 * A kind of part: its name in the singular and in a catalog, and how a literal of it is read.
 *
 * @param <T> the type of the part
 */
public final class PartKind<T> {

    /** A vehicle: masses, axle loads, speedometer. */
    public static final PartKind<Vehicle> VEHICLE = new PartKind<>(
            "vehicle", "vehicles", "mass 2150 kg front 1250 kg rear 1700 kg drag 1.4 m2", Vehicle::parse);

    /** An engine. */
    public static final PartKind<Engine> ENGINE = new PartKind<>(
            "engine",
            "engines",
            "420 hp at 5700 rpm, 460 lb-ft at 4100 rpm, idle 650 rpm, max 6600 rpm",
            Engine::parse);

    /** A transmission, manual or automatic. */
    public static final PartKind<Transmission> TRANSMISSION = new PartKind<>(
            "transmission", "transmissions", "4.03 2.36 1.53 1.15 0.85 0.67 reverse 3.06", Transmission::parse);

    /** An auxiliary over- or underdrive. */
    public static final PartKind<Overdrive> OVERDRIVE =
            new PartKind<>("overdrive", "overdrives", "0.78 or none", Overdrive::parse);

    /** A transfer case. */
    public static final PartKind<TransferCase> TRANSFER_CASE =
            new PartKind<>("transfer case", "transferCases", "1.00 2.72 or none", TransferCase::parse);

    /** An axle's ring and pinion. */
    public static final PartKind<AxleRatio> AXLE = new PartKind<>("axle", "axles", "41/10 or 4.10", AxleRatio::parse);

    /** A reduction in the wheel hubs. */
    public static final PartKind<HubReduction> HUB_REDUCTION =
            new PartKind<>("hub reduction", "hubReductions", "24/16 or none", HubReduction::parse);

    /** A tire on its rim. */
    public static final PartKind<Tire> TIRE =
            new PartKind<>("tire", "tires", "285/75R16 122/119Q rollout 2510 mm", Tire::parse);

    private static final List<PartKind<?>> ALL =
            List.of(VEHICLE, ENGINE, TRANSMISSION, OVERDRIVE, TRANSFER_CASE, AXLE, HUB_REDUCTION, TIRE);

    private final String word;
    private final String key;
    private final String example;
    private final Function<String, T> literal;

    private PartKind(String word, String key, String example, Function<String, T> literal) {
        this.word = word;
        this.key = key;
        this.example = example;
        this.literal = literal;
    }

    /**
     * Returns every kind, in the order from engine to tire, the vehicle first.
     *
     * @return the kinds
     */
    public static List<PartKind<?>> all() {
        return ALL;
    }

    /**
     * Returns the name of one such part, such as {@code transfer case}.
     *
     * @return the word
     */
    public String word() {
        return word;
    }

    /**
     * Returns the key under which a catalog file lists such parts, such as {@code transferCases}.
     *
     * @return the key
     */
    public String key() {
        return key;
    }

    /**
     * Returns a literal as a user may type it.
     *
     * @return the example
     */
    public String example() {
        return example;
    }

    /**
     * Reads a part from a literal.
     *
     * @param text the literal
     * @return the part
     * @throws drivetrain.refusal.RefusedException if the text is no such literal
     */
    public T parse(String text) {
        return literal.apply(text);
    }

    /**
     * Returns the word.
     *
     * @return the word
     */
    @Override
    public String toString() {
        return word;
    }
}
