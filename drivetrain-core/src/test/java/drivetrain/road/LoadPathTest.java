package drivetrain.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Outcome;
import drivetrain.finding.Verdict;
import drivetrain.quantity.Torque;
import drivetrain.quantity.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoadPathTest {

    private static final PartLoad.Path SHAFT = new PartLoad.Path("rear driveshaft", "1st low", 10.0, 3.8, 1.0);
    private static final Outcome<Torque> INPUT = Outcome.of(Torque.ofNewtonMeters(500.0));
    private static final Outcome<Torque> SLIP = Outcome.of(Torque.ofNewtonMeters(7600.0));

    private static Optional<Torque> rating(double newtonMeters) {
        return Optional.of(Torque.ofNewtonMeters(newtonMeters));
    }

    @Test
    void takesTheLesserOfEngineAndSlip() {
        PartLoad slips = PartLoad.of(SHAFT, INPUT, SLIP, Optional.empty());
        assertThat(slips.governing().orThrow().si()).isCloseTo(2000.0, within(1e-9));
        assertThat(slips.limit()).contains(PartLoad.Limit.SLIP);
        PartLoad driven = PartLoad.of(SHAFT, INPUT.map(torque -> torque.times(0.1)), SLIP, Optional.empty());
        assertThat(driven.governing().orThrow().si()).isCloseTo(500.0, within(1e-9));
        assertThat(driven.limit()).contains(PartLoad.Limit.ENGINE);
    }

    /** Wheel torque is torque in the part x ratio x efficiency, so that the torque in the part is wheel torque over both. */
    @Test
    void efficiencyDividesOnTheSlipSide() {
        PartLoad lossless =
                PartLoad.of(new PartLoad.Path("x", "1st low", 1.0, 4.0, 1.0), INPUT, SLIP, Optional.empty());
        PartLoad lossy =
                PartLoad.of(new PartLoad.Path("x", "1st low", 1.0, 4.0 * 0.95, 1.0), INPUT, SLIP, Optional.empty());
        assertThat(lossy.slipLimited()
                        .orThrow()
                        .isGreaterThan(lossless.slipLimited().orThrow()))
                .isTrue();
    }

    @Test
    void oneKnownSideBoundsTheLoad() {
        Outcome<Torque> missing = Outcome.notEvaluated("no axle load is given");
        assertThat(PartLoad.of(SHAFT, INPUT, missing, Optional.empty()).limit()).contains(PartLoad.Limit.ENGINE);
        assertThat(PartLoad.of(SHAFT, missing, SLIP, Optional.empty()).limit()).contains(PartLoad.Limit.SLIP);
        PartLoad nothing = PartLoad.of(SHAFT, missing, missing, rating(1.0));
        assertThat(nothing.governing().reason()).contains("no axle load is given");
        assertThat(nothing.finding().verdict()).isEqualTo(Verdict.NOT_EVALUATED);
        assertThat(nothing.limit()).isEmpty();
        assertThat(nothing.phrase(UnitSystem.METRIC)).contains("not evaluated because");
    }

    @ParameterizedTest
    @CsvSource({"2300, MET", "2100, MARGINAL", "2000, MARGINAL", "1999, EXCEEDED"})
    void holdsTheTorqueAgainstTheRating(double newtonMeters, Verdict verdict) {
        assertThat(PartLoad.of(SHAFT, INPUT, SLIP, rating(newtonMeters))
                        .finding()
                        .verdict())
                .isEqualTo(verdict);
    }

    @Test
    void asksForAMissingRating() {
        PartLoad unrated = PartLoad.of(SHAFT, INPUT, SLIP, Optional.empty());
        assertThat(unrated.finding().verdict()).isEqualTo(Verdict.NOT_EVALUATED);
        assertThat(unrated.finding().statement()).isEqualTo("no torque rating of the rear driveshaft is given");
    }

    @Test
    void namesTheWeakestLink() {
        PartLoad strong = PartLoad.of(SHAFT, INPUT, SLIP, rating(4000.0));
        PartLoad weak = PartLoad.of(new PartLoad.Path("pinion", "1st low", 2.0, 3.8, 1.0), INPUT, SLIP, rating(1100.0));
        PartLoad unrated = PartLoad.of(SHAFT, INPUT, SLIP, Optional.empty());
        LoadPath path = new LoadPath(List.of(strong, weak, unrated));
        assertThat(path.weakest()).contains(weak);
        assertThat(path.findings()).hasSize(3);
        assertThat(new LoadPath(List.of(unrated)).weakest()).isEmpty();
        assertThat(weak.phrase(UnitSystem.METRIC)).contains("set by engine");
        assertThat(weak.finding().statement()).contains("engine");
    }

    /** Tires that slip in the shortest gear hold in a taller one, where a part ahead of the gears then sees all that the engine gives. */
    @Test
    void countsTheGearThatLoadsAPartMost() {
        PartLoad low =
                PartLoad.of(new PartLoad.Path("input", "1st low", 1.0, 40.0, 1.0), INPUT, SLIP, Optional.empty());
        PartLoad high =
                PartLoad.of(new PartLoad.Path("input", "2nd high", 1.0, 8.0, 1.0), INPUT, SLIP, Optional.empty());
        PartLoad unknown = PartLoad.of(
                new PartLoad.Path("input", "reverse", 1.0, 8.0, 1.0),
                Outcome.notEvaluated("no engine"),
                Outcome.notEvaluated("no load"),
                Optional.empty());
        PartLoad worst = LoadPath.worst(List.of(
                        new LoadPath(List.of(low)), new LoadPath(List.of(unknown)), new LoadPath(List.of(high))))
                .parts()
                .get(0);
        assertThat(worst.gear()).isEqualTo("2nd high");
        assertThat(worst.governing().orThrow().si()).isCloseTo(500.0, within(1e-9));
        assertThat(unknown.worse(low)).isEqualTo(low);
        assertThat(low.worse(low.worse(unknown))).isEqualTo(low);
    }

    @Test
    void everyCautionSaysSomething() {
        assertThat(RoadCautions.speed()).hasSize(1);
        assertThat(RoadCautions.grades()).hasSize(1);
        assertThat(RoadCautions.loads()).hasSize(1);
        assertThat(RoadCautions.stall()).hasSize(1);
    }
}
