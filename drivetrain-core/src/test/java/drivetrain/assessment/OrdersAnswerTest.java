package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.driveshaft.ShaftHouse;
import drivetrain.driveshaft.Suspect;
import drivetrain.driveshaft.VibrationOrder;
import drivetrain.finding.Assumption;
import drivetrain.gearing.Range;
import drivetrain.quantity.Frequency;
import drivetrain.quantity.Speed;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class OrdersAnswerTest {

    private static final Speed ROAD = Speed.ofMilesPerHour(40.0);

    private static OrdersAnswer orders(Combination build, GearChoice gear, OptionalInt cylinders) {
        return OrdersAnswer.at(build, ROAD, gear, cylinders).orThrow();
    }

    private static VibrationOrder find(OrdersAnswer answer, String part, double order) {
        return answer.orders().stream()
                .filter(each -> each.part().equals(part) && each.order() == order)
                .findFirst()
                .orElseThrow();
    }

    private static SuspectAnswer suspect(double hertz, OptionalDouble tolerance) {
        return SuspectAnswer.of(
                        Builds.crawler(),
                        Frequency.ofHertz(hertz),
                        ROAD,
                        GearChoice.of(5, Range.HIGH),
                        OptionalInt.of(8),
                        tolerance)
                .orThrow();
    }

    /** The workshop page's example in our terms: shaft frequency is tire frequency times axle ratio. */
    @Test
    void followsTheRatiosFromTheWheelsToTheEngine() {
        OrdersAnswer answer = orders(Builds.crawler(), GearChoice.of(5, Range.HIGH), OptionalInt.of(8));
        double wheel = ROAD.toMetersPerSecond() / 2.673;

        assertThat(find(answer, "tires and wheels", 1).frequency().toHertz()).isCloseTo(wheel, within(1e-9));
        assertThat(find(answer, "driveshafts", 2).frequency().toHertz()).isCloseTo(2 * wheel * 41 / 9, within(1e-9));
        assertThat(find(answer, "engine", 4).frequency().toHertz()).isCloseTo(4 * wheel * 41 / 9 * 0.75, within(1e-9));
        assertThat(answer.working().steps()).hasSizeGreaterThan(answer.orders().size());
        assertThat(answer.cautions()).isNotEmpty();
        assertThat(answer.findings()).isEmpty();
    }

    @Test
    void addsHalfShaftsThatTurnFasterThanTheWheels() {
        Combination portal = Builds.of(Builds.CRAWLER.with(Slot.HUBS, "24/16"));
        OrdersAnswer answer = orders(portal, GearChoice.TOP, OptionalInt.empty());

        assertThat(find(answer, "half-shafts", 1).frequency().toHertz())
                .isCloseTo(1.5 * find(answer, "tires and wheels", 1).frequency().toHertz(), within(1e-9));
        assertThat(answer.orders()).extracting(VibrationOrder::cause).doesNotContain("firing");
    }

    @Test
    void saysWhatIsMissing() {
        Combination nothing = Builds.of(Specification.empty());

        assertThat(OrdersAnswer.at(nothing, ROAD, GearChoice.TOP, OptionalInt.empty())
                        .reason())
                .hasValueSatisfying(reason -> assertThat(reason).contains("tire"));
        assertThatThrownBy(() -> OrdersAnswer.at(nothing, Speed.ofMilesPerHour(0), GearChoice.TOP, OptionalInt.empty()))
                .hasMessageContaining("road speed");
    }

    @Test
    void findsTheSuspects() {
        double shaft = ROAD.toMetersPerSecond() / 2.673 * 41 / 9;
        SuspectAnswer answer = suspect(shaft * 1.01, OptionalDouble.empty());

        assertThat(answer.suspects().get(0).order().part()).isEqualTo("driveshafts");
        assertThat(answer.suspects().get(0).mismatch()).isCloseTo(-0.0099, within(1e-4));
        assertThat(answer.tolerance()).isEqualTo(Suspect.usualTolerance(ShaftHouse.packed()));
        assertThat(answer.assumptions()).extracting(Assumption::subject).contains("tolerance");
        assertThat(answer.working().steps()).isNotEmpty();
        assertThat(answer.cautions()).isNotEmpty();
        assertThat(answer.findings()).isEmpty();
    }

    @Test
    void tellsWhetherAnotherGearTellsThemApart() {
        double firing = ROAD.toMetersPerSecond() / 2.673 * 41 / 9 * 0.75 * 4;

        assertThat(suspect(firing, OptionalDouble.of(0.01)).needsAnotherGear()).isFalse();
        assertThat(suspect(firing, OptionalDouble.of(0.40)).needsAnotherGear()).isTrue();
        assertThat(suspect(firing, OptionalDouble.of(0.01)).assumptions())
                .extracting(Assumption::subject)
                .doesNotContain("tolerance");
    }

    @Test
    void namesTheNearestWhereNothingFits() {
        SuspectAnswer answer = suspect(700, OptionalDouble.of(0.02));

        assertThat(answer.suspects()).isEmpty();
        assertThat(answer.nearest().order().order()).isEqualTo(4.0);
        assertThat(answer.needsAnotherGear()).isFalse();
    }
}
