package drivetrain.fuel;

import drivetrain.quantity.Mass;
import drivetrain.quantity.Temperature;
import drivetrain.quantity.Volume;
import drivetrain.refusal.Refusal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A fuel tank.
 *
 * @param name the literal text, or the name in a catalog
 * @param volume how much it holds, 1 to 1000 L
 * @param usable how much of it the pump reaches, where it is known
 * @param canister the working capacity of the vapor canister, 1 to 2000 g, where one is fitted
 * @param fill how full it stands while it breathes, 0 to 1, where it is given
 * @param day the coldest and the hottest temperature of the fuel on the day that it breathes, where they are given
 */
public record Tank(
        String name,
        Volume volume,
        Optional<Volume> usable,
        Optional<Mass> canister,
        OptionalDouble fill,
        Optional<Day> day) {

    private static final Volume LEAST = Volume.ofLiters(1.0);
    private static final Volume MOST = Volume.ofLiters(1000.0);
    private static final Mass LEAST_CANISTER = Mass.ofGrams(1.0);
    private static final Mass MOST_CANISTER = Mass.ofGrams(2000.0);
    private static final String ALLOWED = "such as 90 L, usable 82 L, canister 75 g, fill 40 %, day 22 degC to 36 degC";
    private static final List<String> KEYWORDS = List.of("usable", "canister", "fill", "day", "to");

    /**
     * The temperatures of a day.
     *
     * @param coldest the coldest
     * @param hottest the hottest, above the coldest
     */
    public record Day(Temperature coldest, Temperature hottest) {

        /**
         * Checks the order and the range.
         *
         * @throws drivetrain.refusal.RefusedException if the hottest is not above the coldest or one is out of range
         */
        public Day {
            Fuel.requireCarried(coldest);
            Fuel.requireCarried(hottest);
            if (!hottest.isGreaterThan(coldest)) {
                throw Refusal.of("day", hottest.format(Temperature.CELSIUS, 1), "is not above the coldest temperature")
                        .allowing("the coldest first, then the hottest")
                        .asException();
            }
        }
    }

    /**
     * Checks the ranges.
     *
     * @throws drivetrain.refusal.RefusedException if a value is out of range or more is usable than it holds
     */
    public Tank {
        volume.requireBetween("volume of the tank", LEAST, MOST, Volume.LITER);
        usable.ifPresent(part -> part.requireBetween("usable volume of the tank", LEAST, volume, Volume.LITER));
        canister.ifPresent(capacity ->
                capacity.requireBetween("capacity of the canister", LEAST_CANISTER, MOST_CANISTER, Mass.GRAM));
        fill.ifPresent(Tank::requireFill);
    }

    private static void requireFill(double fill) {
        if (!(fill >= 0.0 && fill <= 1.0)) {
            throw Refusal.of("fill of the tank", Double.toString(fill), "is out of range")
                    .allowing("0 % to 100 %")
                    .asException();
        }
    }

    /**
     * Reads a tank from its literal text: its volume, then, each behind a comma and only where it is known, {@code usable 82 L}, {@code canister 75 g}, {@code fill 40 %},
     * {@code day 22 degC to 36 degC}.
     *
     * @param text the text
     * @return the tank, named by the text
     * @throws drivetrain.refusal.RefusedException if the text cannot be read, with the index of the fault
     */
    public static Tank parse(String text) {
        FuelWords words = FuelWords.of("tank", text, ALLOWED, KEYWORDS);
        Volume volume = words.take(Volume.KIND, "volume of the tank", LEAST, MOST);
        Optional<Volume> usable = Optional.empty();
        Optional<Mass> canister = Optional.empty();
        Optional<Double> fill = Optional.empty();
        Optional<Day> day = Optional.empty();
        while (words.nextClause()) {
            int start = words.position();
            if (words.takes("usable")) {
                usable = words.once(
                        usable, words.take(Volume.KIND, "usable volume", LEAST, volume), start, "the usable volume");
            } else if (words.takes("canister")) {
                Mass capacity = words.take(Mass.KIND, "capacity of the canister", LEAST_CANISTER, MOST_CANISTER);
                canister = words.once(canister, capacity, start, "the canister");
            } else if (words.takes("fill")) {
                fill = words.once(fill, words.percent("fill", 0.0, 100.0), start, "the fill");
            } else if (words.takes("day")) {
                day = words.once(day, day(words), start, "the day");
            } else {
                throw words.notUnderstood();
            }
        }
        Optional<Volume> reached = usable;
        Optional<Mass> capacity = canister;
        Optional<Day> breathing = day;
        OptionalDouble standing = fill.isPresent() ? OptionalDouble.of(fill.get()) : OptionalDouble.empty();
        return words.located(0, () -> new Tank(text.strip(), volume, reached, capacity, standing, breathing));
    }

    private static Day day(FuelWords words) {
        int start = words.position();
        Temperature coldest = words.take(Temperature.KIND, "coldest temperature");
        if (!words.takes("to")) {
            throw words.refusal("says not how hot the day gets", words.position());
        }
        Temperature hottest = words.take(Temperature.KIND, "hottest temperature");
        return words.located(start, () -> new Day(coldest, hottest));
    }

    /**
     * Returns how much of the tank can be burned.
     *
     * @return the usable volume, else the whole
     */
    public Volume burnable() {
        return usable.orElse(volume);
    }
}
