package drivetrain.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.assessment.LoadsAnswer;
import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Power;
import drivetrain.quantity.Speed;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SolveTest {

    private static final Measure RPM = Measures.engineSpeedAt(Speed.ofMilesPerHour(65.0));
    private static final double RPM_2000 = AngularSpeed.ofRpm(2000.0).si();

    private static Solve solve(Lever lever, Measure measure, double target) {
        return Solve.of(TestShelf.ORDER, TestShelf.CATALOG, lever, measure, target);
    }

    /** By hand: 2000 rpm = 65 mph / 2.510 m x 0.67 x axle. */
    @Test
    void solvesForTheAxleThatTheRuleOfThreeGives() {
        double axle = 2000.0 / 60.0 / (65.0 * 0.44704 / 2.510 * 0.67);
        assertThat(solve(Lever.AXLE, RPM, RPM_2000).exact()).isCloseTo(axle, within(1e-9 * axle));
    }

    @Test
    void givesTheWishBackWhenTheSolutionIsTyped() {
        Solve axle = solve(Lever.AXLE, RPM, RPM_2000);
        Specification typed = Place.AXLES.put(TestShelf.ORDER, Double.toString(axle.exact()));
        assertGives(typed, RPM, RPM_2000);
        Solve tire = solve(Lever.TIRE, RPM, AngularSpeed.ofRpm(1800.0).si());
        assertGives(
                TestShelf.ORDER.with(Slot.TIRE, "285/75R16 rollout " + 1000.0 * tire.exact() + " mm"),
                RPM,
                AngularSpeed.ofRpm(1800.0).si());
        Solve low = solve(Lever.TRANSFER_LOW, Measures.CRAWL_RATIO, 60.0);
        assertGives(TestShelf.ORDER.with(Slot.TRANSFER, "1.00 " + low.exact()), Measures.CRAWL_RATIO, 60.0);
        Solve top = solve(Lever.TOP_GEAR, RPM, RPM_2000);
        assertGives(TestShelf.ORDER.with(Slot.TRANSMISSION, "4.03 2.36 1.53 1.15 0.85 " + top.exact()), RPM, RPM_2000);
        Solve first = solve(Lever.FIRST_GEAR, Measures.CRAWL_SPEED, 0.5);
        assertGives(
                TestShelf.ORDER.with(Slot.TRANSMISSION, first.exact() + " 2.36 1.53 1.15 0.85 0.67"),
                Measures.CRAWL_SPEED,
                0.5);
    }

    private static void assertGives(Specification order, Measure measure, double target) {
        assertThat(measure.of(Combination.resolve(order, TestShelf.CATALOG)).orThrow())
                .isCloseTo(target, within(1e-9 * target));
    }

    @Test
    void namesTheNearestPartsOnBothSides() {
        Solve solve = solve(Lever.AXLE, RPM, RPM_2000);
        assertThat(solve.below().orElseThrow().name()).isEqualTo("rp-37-9");
        assertThat(solve.above().orElseThrow().name()).isEqualTo("rp-41-9");
        assertThat(solve.below().orElseThrow().measured()).isLessThan(RPM_2000);
        assertThat(solve(Lever.AXLE, RPM, AngularSpeed.ofRpm(1200.0).si() + 60.0)
                        .below())
                .isPresent();
        assertThat(solve(Lever.TIRE, RPM, AngularSpeed.ofRpm(1700.0).si()).below())
                .isEmpty();
    }

    @Test
    void solvesALeastOfTwo() {
        Solve solve = solve(Lever.AXLE, Measures.SHAFT_SPEED, 500.0);
        assertThat(solve.achieved()).isCloseTo(500.0, within(5e-7));
    }

    @Test
    void solvesForIdleOverdriveAndHubs() {
        assertThat(solve(Lever.IDLE, Measures.CRAWL_SPEED, 0.5).achieved()).isCloseTo(0.5, within(5e-10));
        Specification more = TestShelf.ORDER.with(Slot.OVERDRIVE, "0.78").with(Slot.HUBS, "24/16");
        for (Lever lever : List.of(Lever.OVERDRIVE, Lever.HUBS)) {
            double now = RPM.of(Combination.resolve(more, TestShelf.CATALOG)).orThrow();
            Solve solve = Solve.of(more, TestShelf.CATALOG, lever, RPM, now * 0.98);
            assertThat(solve.exact()).isCloseTo(solve.before() * 0.98, within(1e-9));
        }
    }

    @Test
    void refusesWhatCannotBeSolved() {
        assertThatThrownBy(() -> solve(Lever.TIRE, Measures.CRAWL_RATIO, 60.0)).hasMessageContaining("does not depend");
        assertThatThrownBy(() -> solve(Lever.OVERDRIVE, RPM, RPM_2000)).hasMessageContaining("no overdrive is chosen");
        assertThatThrownBy(() -> solve(Lever.AXLE, RPM, 10_000.0)).hasMessageContaining("out of range");
        assertThatThrownBy(() -> solve(Lever.AXLE, RPM, 0.0)).hasMessageContaining("more than 0");
        assertThatThrownBy(() -> solve(Lever.AXLE, Measures.SPEEDOMETER, 1.0)).hasMessageContaining("not evaluated");
        assertThatThrownBy(() -> Lever.parse("axel")).hasMessageContaining("cannot be changed by itself");
        assertThat(Lever.parse("Transfer Low")).isEqualTo(Lever.TRANSFER_LOW);
        assertThat(Lever.TRANSFER_LOW.key()).isEqualTo("transferLow");
    }

    /** The closed form for a tube of steel alone is checked elsewhere; here the solved diameter must give the wish when it is typed. */
    @Test
    void solvesForTheDiameterOfTheShaft() {
        for (double share : new double[] {0.60, 0.65, 0.75}) {
            Solve solve = solve(Lever.SHAFT_DIAMETER, Measures.CRITICAL_SHARE, share);
            assertThat(solve.achieved()).isCloseTo(share, within(1e-9 * share));
            String shaft = TestShelf.ORDER
                    .choice(Slot.REAR_SHAFT)
                    .orElseThrow()
                    .replace("76.2 mm", 1000.0 * solve.exact() + " mm");
            assertGives(TestShelf.ORDER.with(Slot.REAR_SHAFT, shaft), Measures.CRITICAL_SHARE, share);
            assertThat(solve.below().orElseThrow().measured()).isLessThan(share);
            assertThat(solve.above().orElseThrow().measured()).isGreaterThanOrEqualTo(share);
            assertThat(solve.below().orElseThrow().name()).endsWith("steel");
            assertThat(solve.assumptions()).isNotEmpty();
        }
        Solve speed = solve(
                Lever.SHAFT_DIAMETER,
                Measures.CRITICAL_SPEED,
                AngularSpeed.ofRpm(6500.0).si());
        assertThat(speed.achieved()).isCloseTo(AngularSpeed.ofRpm(6500.0).si(), within(1e-9 * speed.target()));
        assertThat(speed.below().orElseThrow().measured()).isLessThan(speed.target());
    }

    @Test
    void solvesForTheFlowOfThePump() {
        for (double margin : new double[] {1.0, 1.15, 1.4}) {
            Solve solve = Solve.of(PUMPED, TestShelf.CATALOG, Lever.PUMP_FLOW, Measures.FUEL_MARGIN, margin);
            assertThat(solve.achieved()).isCloseTo(margin, within(1e-9 * margin));
            double burned = Measures.FUEL_FLOW
                    .of(Combination.resolve(PUMPED, TestShelf.CATALOG))
                    .orThrow();
            assertThat(solve.exact()).isCloseTo(margin * burned, within(1e-9 * burned));
        }
        Solve power = Solve.of(
                PUMPED,
                TestShelf.CATALOG,
                Lever.PUMP_FLOW,
                Measures.SUPPORTED_POWER,
                Power.ofHorsepower(450.0).si());
        assertThat(power.achieved()).isCloseTo(power.target(), within(1e-9 * power.target()));
        Specification small = PUMPED.with(Slot.INJECTORS, "8 x 42 lb/h at 43.5 psi");
        assertThatThrownBy(() -> Solve.of(
                        small,
                        TestShelf.CATALOG,
                        Lever.PUMP_FLOW,
                        Measures.SUPPORTED_POWER,
                        Power.ofHorsepower(2000.0).si()))
                .hasMessageContaining("stays between");
    }

    @Test
    void keepsTheRatingsOfAChangedPart() {
        Specification rated = TestShelf.ORDER
                .with(Slot.TRANSMISSION, "4.03 2.36 1.53 1.15 0.85 0.67 reverse 3.06 rating 900 lb-ft")
                .with(Slot.TRANSFER, "1.00 2.72 rating 3000 lb-ft output-rating 4500 lb-ft")
                .with(Slot.REAR_AXLE, "41/11 ring-rating 5200 lb-ft shaft-rating 2900 lb-ft");
        Combination before = Combination.resolve(rated, TestShelf.CATALOG);
        Adjusted adjusted = new Adjusted(before);
        long ratings = rated(before);
        assertThat(ratings).isGreaterThan(4);
        for (Lever lever : List.of(Lever.FIRST_GEAR, Lever.TOP_GEAR, Lever.TRANSFER_LOW, Lever.AXLE)) {
            assertThat(rated(adjusted.with(Map.of(lever, 1.01))))
                    .as(lever.word())
                    .isEqualTo(ratings);
        }
    }

    private static long rated(Combination combination) {
        return LoadsAnswer.of(combination).orThrow().path().parts().stream()
                .filter(part -> part.rating().isPresent())
                .count();
    }

    private static final Specification PUMPED = TestShelf.ORDER
            .with(Slot.FUEL_PUMP, "13.5 V, 370 L/h at 20 psi, 280 L/h at 80 psi")
            .with(Slot.FEED_LINE, "5 m of 7.9 mm hose")
            .with(Slot.FUEL_SYSTEM, "return 58 psi, 13.5 V");
}
