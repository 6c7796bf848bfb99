package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.finding.Assumption;
import drivetrain.finding.Finding;
import drivetrain.finding.Verdict;
import drivetrain.fuel.FuelCautions;
import drivetrain.fuel.RunOut;
import drivetrain.quantity.Voltage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SupplyAnswerTest {

    private static SupplyAnswer of(Specification order) {
        return SupplyAnswer.of(Builds.of(order)).orThrow();
    }

    private static String reason(Specification order) {
        return SupplyAnswer.of(Builds.of(order)).reason().orElseThrow();
    }

    private static Specification system(String text) {
        return Builds.TOURER.with(Slot.FUEL_SYSTEM, text);
    }

    @Test
    void asksAtTheLowVoltageOfTheOrder() {
        SupplyAnswer answer = of(Builds.TOURER);
        assertThat(answer.supply().voltage()).isEqualTo(Voltage.ofVolts(12.4));
        assertThat(answer.demand().power()).isEqualTo(answer.peak().power());
        assertThat(answer.first().orElseThrow().part()).isEqualTo(RunOut.Part.INJECTORS);
        assertThat(answer.findings()).noneMatch(finding -> finding.verdict() == Verdict.EXCEEDED);
        assertThat(answer.cautions()).isEqualTo(FuelCautions.all());
        assertThat(answer.isLimitedByLines()).isFalse();
    }

    @Test
    void demandFollowsThePowerOverTheEngineSpeed() {
        SupplyAnswer answer = of(Builds.TOURER);
        assertThat(answer.rows()).hasSize(9);
        assertThat(answer.rows()).allSatisfy(row -> {
            assertThat(row.demand().ratioTo(answer.demand().volume()))
                    .isCloseTo(row.power().ratioTo(answer.peak().power()), within(1e-12));
            assertThat(row.demand())
                    .isLessThanOrEqualTo(answer.demand().volume().times(1.0 + 1e-12));
        });
    }

    @Test
    void givesLessAtALowerVoltage() {
        Combination tourer = Builds.tourer();
        SupplyAnswer high = SupplyAnswer.at(tourer, Voltage.ofVolts(13.8)).orThrow();
        SupplyAnswer low = SupplyAnswer.at(tourer, Voltage.ofVolts(12.3)).orThrow();
        assertThat(low.capacity().orThrow().flow())
                .isLessThan(high.capacity().orThrow().flow());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "FUEL; no fuel is chosen; type one",
                "FUEL_PUMP; no pump is chosen",
                "FEED_LINE; no feed line is chosen",
                "FUEL_SYSTEM; the fuel system names no voltage"
            })
    void saysWhatIsMissingAndWhatToType(Slot slot, String words) {
        assertThat(reason(Builds.TOURER.without(slot))).startsWith(words);
    }

    @Test
    void saysThatTheRegulatorIsMissing() {
        assertThat(reason(system("13.5 V"))).contains("such as fuel system return 43.5 psi");
    }

    @Test
    void answersWithoutInjectorsAndReturnLine() {
        SupplyAnswer answer = of(Builds.TOURER.without(Slot.INJECTORS).without(Slot.RETURN_LINE));
        assertThat(answer.injectors().reason()).contains("no injectors are chosen");
        assertThat(answer.findings()).extracting(Finding::checked).doesNotContain("injector duty");
    }

    @Test
    void flagsWhatTheOrderDoesNotSay() {
        SupplyAnswer answer = of(system("return 58 psi, 13.5 V"));
        assertThat(answer.assumptions())
                .filteredOn(Assumption::flagged)
                .extracting(Assumption::subject)
                .contains("temperature of the fuel", "lift", "margin", "voltage at the pump");
        assertThat(answer.suction().reason().orElseThrow()).contains("fuel at 40 degC");
        assertThat(of(system("return 58 psi, 13.5 V, fuel at 40 degC"))
                        .suction()
                        .reason()
                        .orElseThrow())
                .contains("elevation 600 m");
    }

    /** Suction looks at the air pressure there; the fuel system's own elevation comes first. */
    @Test
    void takesTheElevationFromTheAirWhereTheFuelSystemNamesNone() {
        Specification silent = system("return 58 psi, 13.5 V, fuel at 40 degC");
        SupplyAnswer aloft = of(silent.drivenIn("altitude 600 m"));
        SupplyAnswer own = of(system("return 58 psi, 13.5 V, fuel at 40 degC, elevation 600 m"));
        SupplyAnswer both = of(system("return 58 psi, 13.5 V, fuel at 40 degC, elevation 600 m")
                .drivenIn("altitude 2000 m"));

        assertThat(aloft.suction().orThrow()).isEqualTo(own.suction().orThrow());
        assertThat(both.suction().orThrow()).isEqualTo(own.suction().orThrow());
        assertThat(of(silent.drivenIn("temperature 30 degC")).suction().reason().orElseThrow())
                .contains("neither the fuel system nor the air");
        assertThat(elevation(aloft)).contains("the altitude of the air, 600 m (1969 ft), is taken");
        assertThat(elevation(both))
                .contains("fuel system's elevation of 600 m (1969 ft), although the order's air is at 2000 m");
        assertThat(own.assumptions()).extracting(Assumption::subject).doesNotContain("elevation of the fuel system");
    }

    private static String elevation(SupplyAnswer answer) {
        return answer.assumptions().stream()
                .filter(assumption -> assumption.subject().equals("elevation of the fuel system"))
                .findFirst()
                .orElseThrow()
                .statement();
    }

    /** Fuel whose temperature is not told is as warm as the air, where a fuel can be. */
    @Test
    void takesTheTemperatureFromTheAirWhereTheFuelSystemNamesNone() {
        Specification silent = system("return 58 psi, 13.5 V");

        assertThat(temperature(silent.drivenIn("temperature 30 degC"))).contains("30 degC, as the air is");
        assertThat(temperature(silent.drivenIn("altitude 600 m"))).contains("the fuel is at 15 degC, because");
        assertThat(temperature(silent.drivenIn("temperature -45 degC"))).contains("the fuel is at 15 degC, because");
    }

    private static String temperature(Specification order) {
        return of(order).assumptions().stream()
                .filter(assumption -> assumption.subject().equals("temperature of the fuel"))
                .findFirst()
                .orElseThrow()
                .statement();
    }

    @Test
    void takesMarginDutyAndConsumptionFromTheOrder() {
        SupplyAnswer answer =
                of(system("return 58 psi, 13.5 V, margin 30 %, duty 70 %, burns 0.45 lb/(hp-h), lift 0 m"));
        assertThat(answer.margin()).isEqualTo(0.3);
        assertThat(answer.demand().consumption().toPoundsPerHorsepowerHour()).isCloseTo(0.45, within(1e-12));
        assertThat(answer.assumptions())
                .filteredOn(one -> one.subject().equals("margin"))
                .noneMatch(Assumption::flagged);
    }

    @Test
    void aForcedEngineHasToSayItsBoost() {
        Specification blown = Builds.TOURER.with(
                Slot.ENGINE, "600 hp at 6000 rpm, 600 lb-ft at 4000 rpm, max 6600 rpm, supercharged");
        assertThat(reason(blown)).contains("the engine is supercharged and the fuel system names no boost");
        SupplyAnswer included =
                of(blown.with(Slot.FUEL_SYSTEM, "return 43.5 psi, boost-referenced, boost 8 psi, 13.5 V"));
        assertThat(included.assumptions()).anyMatch(one -> one.statement().contains("not counted again"));
        SupplyAnswer unreferenced = of(blown.with(Slot.FUEL_SYSTEM, "return 43.5 psi, boost 8 psi, 13.5 V"));
        assertThat(unreferenced.injectors().orThrow().difference())
                .isLessThan(included.injectors().orThrow().difference());
    }

    /** The power of a driven supercharger is in the consumption, or added to the power at the consumption without it; never both. */
    @Test
    void neverCountsTheSuperchargerTwice() {
        Specification blown = Builds.TOURER.with(
                Slot.ENGINE, "600 hp at 6000 rpm, 600 lb-ft at 4000 rpm, max 6600 rpm, supercharged");
        SupplyAnswer included = of(blown.with(Slot.FUEL_SYSTEM, "return 43.5 psi, boost 8 psi, 13.5 V"));
        SupplyAnswer added = of(blown.with(Slot.FUEL_SYSTEM, "return 43.5 psi, boost 8 psi, 13.5 V, blower 60 hp"));
        assertThat(added.demand().power().minus(included.demand().power()).toHorsepower())
                .isCloseTo(60.0, within(1e-9));
        assertThat(added.demand().consumption()).isLessThan(included.demand().consumption());
    }

    @Test
    void aDieselAndATurboBurnByTheirOwnWindows() {
        Specification diesel = Builds.TOURER
                .with(Slot.ENGINE, "190 hp at 3600 rpm, 350 lb-ft at 2000 rpm, max 4400 rpm, turbocharged, diesel")
                .with(Slot.FUEL, "diesel")
                .without(Slot.INJECTORS);
        SupplyAnswer answer = of(diesel);
        assertThat(answer.demand().consumption().toPoundsPerHorsepowerHour()).isCloseTo(0.42, within(1e-12));
        assertThat(answer.suction().reason()).contains("diesel hardly evaporates");
        Specification turbo = Builds.TOURER
                .with(Slot.ENGINE, "330 hp at 5600 rpm, 335 lb-ft at 3000 rpm, max 7000 rpm, turbocharged")
                .with(Slot.FUEL_SYSTEM, "return 43.5 psi, boost 10 psi, 13.5 V");
        assertThat(of(turbo).demand().consumption().toPoundsPerHorsepowerHour()).isBetween(0.65, 0.70);
    }

    @Test
    void saysThatTheLinesRunOutWhereThePumpAloneWouldDo() {
        Specification narrow = Builds.TOURER.with(Slot.FEED_LINE, "9 m of 3.6 mm tube");
        SupplyAnswer answer = of(narrow);
        assertThat(answer.isLimitedByLines()).isTrue();
        assertThat(answer.first().orElseThrow().part()).isEqualTo(RunOut.Part.PUMP_THROUGH_LINES);
    }

    @Test
    void aPumpOutsideTheTankHasToSayItsSuctionLift() {
        Specification outside = Builds.TOURER.with(Slot.FEED_LINE, "0.8 m of 12.7 mm hose, pump, 5 m of 8 mm tube");
        assertThat(of(outside).suction().reason().orElseThrow()).contains("suction-lift 0.2 m");
        assertThat(of(outside.with(
                                Slot.FUEL_SYSTEM,
                                "return 58 psi, 13.5 V, suction-lift 0.3 m, fuel at 40 degC, elevation 600 m"))
                        .suction()
                        .value())
                .isPresent();
    }

    @Test
    void aPackageWithSomeFuelPartsIsToldWhatIsMissing() {
        Assessment some = Assessment.of(Builds.of(Builds.CRAWLER.with(Slot.FUEL, "E10")));
        assertThat(some.findings())
                .anyMatch(finding -> finding.checked().equals("fuel supply")
                        && finding.statement().startsWith("the fuel system names no voltage"));
        assertThat(Assessment.of(Builds.crawler()).findings())
                .noneMatch(finding -> finding.checked().equals("fuel supply"));
    }
}
