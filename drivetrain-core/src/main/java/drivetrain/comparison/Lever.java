package drivetrain.comparison;

import drivetrain.combination.Combination;
import drivetrain.combination.Part;
import drivetrain.combination.Slot;
import drivetrain.driveshaft.Driveshaft;
import drivetrain.engine.Engine;
import drivetrain.finding.Assumption;
import drivetrain.finding.Outcome;
import drivetrain.fuel.Pump;
import drivetrain.gearing.AxleRatio;
import drivetrain.gearing.HubReduction;
import drivetrain.gearing.Overdrive;
import drivetrain.gearing.Ratio;
import drivetrain.gearing.TransferCase;
import drivetrain.gearing.Transmission;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.VolumeFlow;
import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.tire.RollingCircumference;
import drivetrain.tire.Tire;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A figure of a part that can be changed by itself: what is solved for, and what tolerances and sensitivities are about. */
public enum Lever {
    /** Rolling radius of the tires of all wheels. */
    TIRE("tire", Slot.TIRE, "rolling circumference") {
        @Override
        Optional<Double> number(Object item) {
            return ((Tire) item)
                    .rolling()
                    .map(RollingCircumference::circumference)
                    .map(Length::si)
                    .value();
        }

        @Override
        Object with(Object item, double number) {
            return ((Tire) item).withRollout(Length.ofMeters(number));
        }

        @Override
        public Figure figure(double number) {
            return Figure.of(Length.ofMeters(number), Display.DIMENSION);
        }
    },
    /** Ratio of both axles. */
    AXLE("axle", Slot.REAR_AXLE, "axle ratio") {
        @Override
        Optional<Double> number(Object item) {
            return Optional.of(((AxleRatio) item).ratio().value());
        }

        @Override
        Object with(Object item, double number) {
            AxleRatio axle = (AxleRatio) item;
            return new AxleRatio(axle.name(), Ratio.of(number), axle.efficiency(), axle.ratings());
        }
    },
    /** First gear of the transmission. */
    FIRST_GEAR("first gear", Slot.TRANSMISSION, "ratio of first gear") {
        @Override
        Optional<Double> number(Object item) {
            return Optional.of(((Transmission) item).forward().get(0).value());
        }

        @Override
        Object with(Object item, double number) {
            return gear((Transmission) item, 0, number);
        }
    },
    /** Top gear of the transmission. */
    TOP_GEAR("top gear", Slot.TRANSMISSION, "ratio of top gear") {
        @Override
        Optional<Double> number(Object item) {
            List<Ratio> gears = ((Transmission) item).forward();
            return Optional.of(gears.get(gears.size() - 1).value());
        }

        @Override
        Object with(Object item, double number) {
            Transmission box = (Transmission) item;
            return gear(box, box.forward().size() - 1, number);
        }
    },
    /** Low range of the transfer case. */
    TRANSFER_LOW("transfer low", Slot.TRANSFER, "ratio of low range") {
        @Override
        Optional<Double> number(Object item) {
            return ((TransferCase) item).low().map(Ratio::value);
        }

        @Override
        Object with(Object item, double number) {
            TransferCase box = (TransferCase) item;
            return new TransferCase(
                    box.name(),
                    box.high(),
                    Optional.of(Ratio.of(number)),
                    box.tie(),
                    box.efficiency(),
                    box.inputRating(),
                    box.outputRating());
        }
    },
    /** Ratio of the auxiliary over- or underdrive. */
    OVERDRIVE("overdrive", Slot.OVERDRIVE, "ratio of the auxiliary unit") {
        @Override
        Optional<Double> number(Object item) {
            Overdrive unit = (Overdrive) item;
            return unit.isFitted() ? Optional.of(unit.ratio().value()) : Optional.empty();
        }

        @Override
        Object with(Object item, double number) {
            Overdrive unit = (Overdrive) item;
            return new Overdrive(unit.name(), Ratio.of(number), unit.efficiency());
        }
    },
    /** Ratio of the hub reductions. */
    HUBS("hubs", Slot.HUBS, "ratio of the hub reduction") {
        @Override
        Optional<Double> number(Object item) {
            HubReduction hubs = (HubReduction) item;
            return hubs.isFitted() ? Optional.of(hubs.ratio().value()) : Optional.empty();
        }

        @Override
        Object with(Object item, double number) {
            HubReduction hubs = (HubReduction) item;
            return new HubReduction(hubs.name(), Ratio.of(number), hubs.efficiency());
        }
    },
    /** Idle speed of the engine. */
    IDLE("idle", Slot.ENGINE, "idle speed") {
        @Override
        Optional<Double> number(Object item) {
            return ((Engine) item).idle().map(AngularSpeed::si);
        }

        @Override
        Object with(Object item, double number) {
            return ((Engine) item).withIdle(AngularSpeed.ofRadiansPerSecond(number));
        }

        @Override
        public Figure figure(double number) {
            return Figure.of(AngularSpeed.ofRadiansPerSecond(number), Display.ROTATION);
        }
    },
    /** Outside diameter of the rear driveshaft's tubes. */
    SHAFT_DIAMETER("shaft diameter", Slot.REAR_SHAFT, "tube diameter") {
        @Override
        Optional<Double> number(Object item) {
            return ((Driveshaft) item).diameter().map(Length::si);
        }

        @Override
        Object with(Object item, double number) {
            return ((Driveshaft) item).withDiameter(Length.ofMeters(number));
        }

        @Override
        public Figure figure(double number) {
            return Figure.of(Length.ofMeters(number), Display.BORE);
        }

        @Override
        List<Assumption> assumptions(Combination solved) {
            return ShaftTubes.assumptions();
        }
    },
    /** Flow of the fuel pump; as a number of the pump alone, the factor on its measured curve. */
    PUMP_FLOW("pump flow", Slot.FUEL_PUMP, "pump flow") {
        @Override
        Optional<Double> number(Object item) {
            return Optional.of(1.0);
        }

        @Override
        Object with(Object item, double number) {
            return PumpFlow.times((Pump) item, number);
        }

        @Override
        public Outcome<Double> number(Combination combination) {
            return PumpFlow.of(combination);
        }

        @Override
        public Figure figure(double number) {
            return Figure.of(VolumeFlow.ofCubicMetersPerSecond(number), Display.VOLUME_FLOW);
        }

        @Override
        List<Assumption> assumptions(Combination solved) {
            return PumpFlow.assumptions(solved);
        }
    };

    private static final int DECIMALS = 4;

    private final String word;
    private final Slot slot;
    private final String meaning;

    Lever(String word, Slot slot, String meaning) {
        this.word = word;
        this.slot = slot;
        this.meaning = meaning;
    }

    /** Reads the number of a part; empty if it has none. */
    abstract Optional<Double> number(Object item);

    /** Makes a part that differs from another one in that number alone. */
    abstract Object with(Object item, double number);

    /** What a part with another number of it has in common with the one that is chosen, where that is not plain. */
    List<Assumption> assumptions(Combination solved) {
        return List.of();
    }

    private static Transmission gear(Transmission box, int index, double number) {
        List<Ratio> gears = new ArrayList<>(box.forward());
        gears.set(index, Ratio.of(number));
        return new Transmission(
                box.name(),
                gears,
                box.reverse(),
                box.coupling(),
                box.efficiency(),
                box.inputRating(),
                box.outputRating());
    }

    /**
     * Returns the word by which it is named.
     *
     * @return the word
     */
    public String word() {
        return word;
    }

    /**
     * Returns what its number is.
     *
     * @return a phrase, such as {@code rolling circumference}
     */
    public String meaning() {
        return meaning;
    }

    /**
     * Returns the slot of the part.
     *
     * @return the slot
     */
    public Slot slot() {
        return slot;
    }

    /**
     * Returns the machine name.
     *
     * @return a lower-case letter, then letters
     */
    public String key() {
        StringBuilder key = new StringBuilder();
        boolean isStart = false;
        for (char letter : name().toCharArray()) {
            if (letter != '_') {
                key.append(isStart ? letter : Character.toLowerCase(letter));
            }
            isStart = letter == '_';
        }
        return key.toString();
    }

    /**
     * Shows a number of it.
     *
     * @param number the number, in the SI unit or plain
     * @return the figure
     */
    public Figure figure(double number) {
        return Figure.plain(number, DECIMALS);
    }

    /**
     * Reads its number in a package.
     *
     * @param combination the package
     * @return the number in the SI unit or plain, or what is missing
     */
    public Outcome<Double> number(Combination combination) {
        Optional<Part<?>> part = combination.part(slot);
        return Outcome.of(part, "no " + slot.word() + " is chosen")
                .then(known -> Outcome.of(number(known.item()), "the " + slot.word() + " has no " + meaning));
    }

    /**
     * Finds a lever by its word.
     *
     * @param text the word, upper and lower case alike
     * @return the lever
     * @throws drivetrain.refusal.RefusedException if there is none, with near words
     */
    public static Lever parse(String text) {
        String wanted = text.strip().toLowerCase(Locale.ROOT);
        String known = switch (wanted) {
            case "transfer", "transfer case", "low range", "transfer case low" -> "transfer low";
            case "tires", "tyre", "tire diameter", "tire radius" -> "tire";
            case "axle ratio", "axles", "diff", "rear axle" -> "axle";
            case "top", "transmission top gear" -> "top gear";
            case "first", "1st gear" -> "first gear";
            case "hub", "hub reduction" -> "hubs";
            case "tube diameter", "rear shaft diameter", "driveshaft diameter", "rear shaft" -> "shaft diameter";
            case "pump", "fuel pump", "fuel pump flow" -> "pump flow";
            default -> wanted;
        };
        return Arrays.stream(values())
                .filter(lever -> lever.word.equals(known))
                .findFirst()
                .orElseThrow(() -> Refusal.of("part", text.strip(), "cannot be changed by itself")
                        .allowing(String.join(", ", words()))
                        .suggesting(NearNames.of(wanted, words()))
                        .at(0)
                        .asException());
    }

    /**
     * Lists the words.
     *
     * @return the words, in the order of the levers
     */
    public static List<String> words() {
        return Arrays.stream(values()).map(Lever::word).toList();
    }
}
