package drivetrain.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.assessment.LoadsAnswer;
import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.finding.Verdict;
import drivetrain.planner.Objective.Goal;
import drivetrain.planner.Planner;
import drivetrain.planner.Watch;
import drivetrain.quantity.Speed;
import drivetrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SweepTest {

    private static final Measure RPM = Measures.engineSpeedAt(Speed.ofMilesPerHour(65.0));

    private static PartList all(String place) {
        return PartList.read(Place.ofWord(place).orElseThrow(), "all", TestShelf.CATALOG);
    }

    private static List<PartList> lists() {
        return List.of(all("engine"), all("transmission"), all("transfer case"), all("axle"), all("tire"));
    }

    private static Sweep sweep(List<Wish> wishes, List<Aim> aims, int best) {
        return new Sweep(TestShelf.ORDER, TestShelf.CATALOG, lists(), wishes, aims, best);
    }

    private static SweepResult run(Sweep sweep) {
        return sweep.run(Planner.on(1), Watch.PATIENT);
    }

    /** Every package assessed one by one. */
    private record Found(List<String> parts, List<Double> numbers) {}

    private static List<Found> assessAll(List<Measure> measures) {
        List<Found> all = new ArrayList<>();
        for (String engine : lists().get(0).choices()) {
            for (String box : lists().get(1).choices()) {
                for (String transfer : lists().get(2).choices()) {
                    for (String axle : lists().get(3).choices()) {
                        for (String tire : lists().get(4).choices()) {
                            Specification order = TestShelf.ORDER
                                    .with(Slot.ENGINE, engine)
                                    .with(Slot.TRANSMISSION, box)
                                    .with(Slot.TRANSFER, transfer)
                                    .with(Slot.REAR_AXLE, axle)
                                    .with(Slot.FRONT_AXLE, axle)
                                    .with(Slot.TIRE, tire);
                            Combination combination = Combination.resolve(order, TestShelf.CATALOG);
                            all.add(new Found(
                                    List.of(engine, box, transfer, axle, tire),
                                    measures.stream()
                                            .map(measure -> measure.of(combination)
                                                    .value()
                                                    .orElse(Double.NaN))
                                            .toList()));
                        }
                    }
                }
            }
        }
        return all;
    }

    @Test
    void findsWhatAssessingEveryPackageFinds() {
        List<Wish> wishes = List.of(
                new Wish(RPM, 180.0, 240.0),
                Wish.atLeast(Measures.CRAWL_RATIO, 50.0),
                Wish.atMost(Measures.SHAFT_SPEED, 480.0),
                Wish.atMost(Measures.CRAWL_SPEED, 0.8));
        List<Aim> aims = List.of(
                Aim.of(Measures.WHEEL_TORQUE, Goal.HIGHEST),
                Aim.near(RPM, 200.0).weighing(3.0));
        SweepResult result = run(sweep(wishes, aims, 15));
        List<Found> all = assessAll(
                List.of(RPM, Measures.CRAWL_RATIO, Measures.SHAFT_SPEED, Measures.CRAWL_SPEED, Measures.WHEEL_TORQUE));
        List<Found> passing = all.stream()
                .filter(found -> wishes.get(0).isKeptBy(found.numbers().get(0))
                        && wishes.get(1).isKeptBy(found.numbers().get(1))
                        && wishes.get(2).isKeptBy(found.numbers().get(2))
                        && wishes.get(3).isKeptBy(found.numbers().get(3)))
                .sorted(Comparator.comparingDouble(found ->
                        -Math.log(found.numbers().get(4))
                                + 3.0 * Math.abs(Math.log(found.numbers().get(0) / 200.0))))
                .toList();
        assertThat(result.combinations())
                .isEqualTo(all.size())
                .isEqualTo(sweep(wishes, aims, 15).combinations());
        assertThat(result.passing()).isEqualTo(passing.size()).isGreaterThan(15);
        assertThat(result.rows())
                .extracting(SweepResult.Row::parts)
                .containsExactlyElementsOf(
                        passing.subList(0, 15).stream().map(Found::parts).toList());
        assertThat(result.rows().get(0).behind()).isZero();
        assertThat(result.rows()).extracting(SweepResult.Row::behind).isSorted();
        assertThat(result.conflict().wishes()).isEmpty();
    }

    @Test
    void isTheSameForAllFigures() {
        Set<Measure> missing = Set.of(
                Measures.SPEEDOMETER,
                Measures.JOINT_ANGLE,
                Measures.RESIDUAL_ANGLE,
                Measures.LOAD_MARGIN,
                Measures.FUEL_MARGIN,
                Measures.SUPPORTED_POWER);
        for (Measure measure : Measures.all(TestShelf.order())) {
            assertThat(measure.of(TestShelf.order()).value().isEmpty())
                    .as(measure.word())
                    .isEqualTo(missing.contains(measure));
            if (missing.contains(measure)) {
                continue;
            }
            List<Found> all = assessAll(List.of(measure));
            double middle = all.stream()
                    .mapToDouble(found -> found.numbers().get(0))
                    .filter(number -> !Double.isNaN(number))
                    .sorted()
                    .skip(all.size() / 3)
                    .findFirst()
                    .orElseThrow();
            long expected = all.stream()
                    .filter(found -> found.numbers().get(0) >= middle * (1.0 - 1e-12))
                    .count();
            assertThat(run(sweep(List.of(Wish.atLeast(measure, middle)), List.of(), 0))
                            .passing())
                    .as(measure.word())
                    .isEqualTo(expected);
        }
    }

    @Test
    void keepsAWishThatIsMetExactly() {
        double own = Measures.CRAWL_RATIO.of(TestShelf.order()).orThrow();
        Sweep sweep = new Sweep(
                TestShelf.ORDER,
                TestShelf.CATALOG,
                List.of(all("engine"), PartList.read(Place.AXLES, "41/11 or 41/10", TestShelf.CATALOG)),
                List.of(new Wish(Measures.CRAWL_RATIO, own, own)),
                List.of(),
                5);
        assertThat(run(sweep).passing()).isEqualTo(3);
    }

    @Test
    void namesTheWishesThatCannotBeKeptTogether() {
        Wish tall = Wish.atMost(RPM, 180.0);
        Wish torque = Wish.atLeast(Measures.PEAK_TORQUE, 1.0);
        Wish axleLike = Wish.atLeast(Measures.SHAFT_SPEED, 600.0);
        SweepResult pair = run(sweep(List.of(torque, tall, axleLike), List.of(), 5));
        assertThat(pair.passing()).isZero();
        assertThat(pair.conflict().wishes()).containsExactly(tall, axleLike);
        assertThat(pair.alone()).extracting(SweepResult.Alone::passing).allMatch(count -> count > 0);
        Wish never = Wish.atLeast(Measures.CRAWL_RATIO, 1e6);
        assertThat(run(sweep(List.of(tall, never), List.of(), 5)).conflict().wishes())
                .containsExactly(never);
    }

    @Test
    void passesNoPackageThatLacksTheFigure() {
        SweepResult result = run(sweep(List.of(Wish.atLeast(Measures.CRAWL_SPEED, 0.0)), List.of(), 1));
        assertThat(result.passing() * 3).isEqualTo(result.combinations() * 2);
    }

    @Test
    void asksForEachPackageWhatIsNoProduct() {
        Measure sum = Measure.of(
                "sum",
                "sum",
                Better.LOWER,
                Scale.plain(1),
                Measures.CRAWL_RATIO::ground,
                combination -> Measures.CRAWL_RATIO
                        .of(combination)
                        .then(crawl -> RPM.of(combination).map(rpm -> crawl + rpm)));
        SweepResult result = run(sweep(List.of(Wish.atMost(sum, 260.0)), List.of(Aim.better(sum)), 3));
        List<Found> all = assessAll(List.of(sum));
        assertThat(result.passing())
                .isEqualTo(all.stream()
                        .filter(found -> found.numbers().get(0) <= 260.0)
                        .count())
                .isPositive();
        assertThat(result.rows().get(0).numbers().get(0).orThrow())
                .isEqualTo(all.stream()
                        .mapToDouble(found -> found.numbers().get(0))
                        .min()
                        .orElseThrow());
    }

    @Test
    void drawsTheFront() {
        Sweep sweep = sweep(List.of(), List.of(Aim.better(RPM), Aim.better(Measures.CRAWL_RATIO)), 1);
        List<SweepResult.Row> front = sweep.front(Planner.on(1), Watch.PATIENT);
        assertThat(front).hasSizeGreaterThan(2);
        for (int i = 1; i < front.size(); i++) {
            assertThat(front.get(i).numbers().get(0).orThrow())
                    .isGreaterThan(front.get(i - 1).numbers().get(0).orThrow());
            assertThat(front.get(i).numbers().get(1).orThrow())
                    .isGreaterThan(front.get(i - 1).numbers().get(1).orThrow());
        }
        assertThat(front.get(0).numbers().get(0).orThrow())
                .isEqualTo(assessAll(List.of(RPM)).stream()
                        .mapToDouble(found -> found.numbers().get(0))
                        .min()
                        .orElseThrow());
    }

    @Test
    void choosesTheShaftThatStaysBelowItsCriticalSpeed() {
        List<String> lengths = List.of("1000 mm", "1290 mm", "1700 mm");
        List<String> shafts = lengths.stream()
                .map(length -> TestShelf.SHAFT + " length " + length + ", yokes 1.3 kg 60 mm long in phase")
                .toList();
        PartList list = new PartList(Place.ofWord("rear shaft").orElseThrow(), shafts);
        List<Found> found = new ArrayList<>();
        for (String shaft : shafts) {
            for (String axle : all("axle").choices()) {
                Combination combination = Combination.resolve(
                        Place.AXLES.put(TestShelf.ORDER.with(Slot.REAR_SHAFT, shaft), axle), TestShelf.CATALOG);
                found.add(new Found(
                        List.of(shaft, axle),
                        List.of(Measures.CRITICAL_SHARE.of(combination).value().orElse(Double.NaN))));
            }
        }
        Wish wish = Wish.atMost(Measures.CRITICAL_SHARE, 0.7);
        SweepResult result = run(new Sweep(
                TestShelf.ORDER,
                TestShelf.CATALOG,
                List.of(list, all("axle")),
                List.of(wish),
                List.of(Aim.better(Measures.CRITICAL_SHARE)),
                3));
        List<Found> passing = found.stream()
                .filter(one -> wish.isKeptBy(one.numbers().get(0)))
                .sorted(Comparator.comparingDouble(one -> one.numbers().get(0)))
                .toList();
        assertThat(result.passing()).isEqualTo(passing.size()).isBetween(3L, 20L);
        assertThat(result.rows())
                .extracting(SweepResult.Row::parts)
                .containsExactlyElementsOf(
                        passing.subList(0, 3).stream().map(Found::parts).toList());
    }

    @Test
    void refusesWhatCannotBeSwept() {
        assertThatThrownBy(() -> new Sweep(TestShelf.ORDER, TestShelf.CATALOG, List.of(), List.of(), List.of(), 1))
                .hasMessageContaining("no list");
        assertThatThrownBy(() -> new Sweep(
                        TestShelf.ORDER,
                        TestShelf.CATALOG,
                        List.of(
                                PartList.read(Place.AXLES, "4.10", TestShelf.CATALOG),
                                PartList.read(Place.ofWord("rear axle").orElseThrow(), "4.10", TestShelf.CATALOG)),
                        List.of(),
                        List.of(),
                        1))
                .hasMessageContaining("two lists");
        assertThatThrownBy(() -> sweep(List.of(), List.of(), 5000)).hasMessageContaining("rows");
        Sweep noSpeedometer = sweep(List.of(Wish.atLeast(Measures.SPEEDOMETER, 1.0)), List.of(), 1);
        assertThatThrownBy(() -> run(noSpeedometer)).hasMessageContaining("speedometer is not described");
    }

    @Test
    void saysWishesAndAims() {
        assertThat(Wish.atLeast(Measures.CRAWL_RATIO, 60.0).text(UnitSystem.US)).isEqualTo("crawl ratio at least 60.0");
        assertThat(Wish.atMost(Measures.CRAWL_SPEED, 0.44704).text(UnitSystem.US))
                .isEqualTo("crawl speed at most 1.00 mph");
        assertThat(new Wish(Measures.CRAWL_RATIO, 60.0, 70.0).text(UnitSystem.US))
                .isEqualTo("crawl ratio between 60.0 and 70.0");
        assertThat(Aim.better(Measures.CRAWL_RATIO).weighing(2.0).text(UnitSystem.US))
                .isEqualTo("highest crawl ratio weight 2");
        assertThat(Aim.near(Measures.CRAWL_RATIO, 60.0).weighing(0.5).text(UnitSystem.US))
                .isEqualTo("crawl ratio near 60.0 weight 0.5");
        assertThat(Aim.better(Measures.CRAWL_SPEED).text(UnitSystem.US)).isEqualTo("lowest crawl speed");
        assertThatThrownBy(() -> Aim.better(Measures.GEARED_SPEED)).hasMessageContaining("one way or the other");
        assertThatThrownBy(() -> Aim.near(Measures.CRAWL_RATIO, 0.0)).hasMessageContaining("aimed at");
        assertThatThrownBy(() -> Aim.better(Measures.CRAWL_RATIO).weighing(0.0)).hasMessageContaining("weight");
        assertThat(Wish.atLeast(Measures.CRAWL_RATIO, 1.0).isKeptBy(Double.NaN)).isFalse();
        assertThat(Wish.atMost(Measures.CRAWL_RATIO, 1.0).isKeptBy(Double.NaN)).isFalse();
    }

    /** No part below its rating: the packages whose weakest part, by the loads of the assessment, is within its rating. */
    @Test
    void asksForNoPartBelowItsRating() {
        List<String> cases = List.of("1.00 2.72 rating 1200 lb-ft", "1.00 2.72 rating 2500 lb-ft", "deep", "two-speed");
        Sweep sweep = new Sweep(
                TestShelf.ORDER.with(Slot.TRANSFER, cases.get(0)),
                TestShelf.CATALOG,
                List.of(new PartList(new Place("transfer case", List.of(Slot.TRANSFER)), cases)),
                List.of(Wish.atLeast(Measures.LOAD_MARGIN, 1.0)),
                List.of(Aim.better(Measures.LOAD_MARGIN)),
                4);
        long expected = cases.stream()
                .map(box -> Combination.resolve(TestShelf.ORDER.with(Slot.TRANSFER, box), TestShelf.CATALOG))
                .map(order -> LoadsAnswer.of(order).orThrow().path())
                .filter(path -> path.weakest().isPresent()
                        && path.findings().stream().noneMatch(finding -> finding.verdict() == Verdict.EXCEEDED))
                .count();
        SweepResult result = run(sweep);
        assertThat(result.passing()).isEqualTo(expected).isEqualTo(1);
        assertThat(result.rows().get(0).parts()).containsExactly("1.00 2.72 rating 2500 lb-ft");
    }
}
