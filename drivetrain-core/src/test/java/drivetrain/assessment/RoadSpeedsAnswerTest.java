package drivetrain.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Slot;
import drivetrain.gearing.GearingCautions;
import drivetrain.quantity.AngularSpeed;
import drivetrain.refusal.RefusedException;
import drivetrain.tire.TireCautions;
import org.junit.jupiter.api.Test;

class RoadSpeedsAnswerTest {

    private static final AngularSpeed ENGINE = AngularSpeed.ofRpm(3000.0);

    @Test
    void goesFasterWithEveryRow() {
        RoadSpeedsAnswer answer = RoadSpeedsAnswer.at(Builds.crawler(), ENGINE).orThrow();

        assertThat(answer.rows()).hasSize(12);
        assertThat(answer.rows().subList(2, 12))
                .extracting(RoadSpeedsAnswer.Row::roadSpeed)
                .isSorted();
        assertThat(answer.rows()).extracting(row -> row.gear().reverse()).startsWith(true, true, false);
    }

    @Test
    void undoesTheCruise() {
        RoadSpeedsAnswer answer = RoadSpeedsAnswer.at(Builds.crawler(), ENGINE).orThrow();
        RoadSpeedsAnswer.Row top = answer.rows().get(11);
        CruiseAnswer back = CruiseAnswer.at(Builds.crawler(), top.roadSpeed(), GearChoice.TOP)
                .orThrow();

        assertThat(back.engineSpeed().toRpm()).isCloseTo(3000.0, within(1e-9));
        assertThat(top.driveshaftSpeed().toRpm()).isCloseTo(3000.0 / 0.75, within(1e-9));
    }

    @Test
    void asksAtTheMaximumSpeedOfTheEngine() {
        assertThat(RoadSpeedsAnswer.atMaximum(Builds.crawler())
                        .orThrow()
                        .engineSpeed()
                        .toRpm())
                .isCloseTo(6000.0, within(1e-9));
    }

    @Test
    void saysWhatIsMissing() {
        assertThat(RoadSpeedsAnswer.atMaximum(Builds.of(Builds.CRAWLER.without(Slot.ENGINE)))
                        .reason())
                .contains("no engine is chosen");
        assertThat(RoadSpeedsAnswer.at(Builds.of(Builds.CRAWLER.without(Slot.TIRE)), ENGINE)
                        .reason())
                .contains("no tire is chosen");
        assertThat(RoadSpeedsAnswer.at(Builds.of(Builds.CRAWLER.without(Slot.REAR_AXLE)), ENGINE)
                        .reason())
                .contains("no rear axle is chosen");
    }

    @Test
    void saysWhatItRestsOn() {
        RoadSpeedsAnswer answer = RoadSpeedsAnswer.at(Builds.crawler(), ENGINE).orThrow();

        assertThat(answer.assumptions()).isEqualTo(answer.rolling().assumptions());
        assertThat(answer.findings()).isEmpty();
        assertThat(answer.cautions())
                .containsAll(GearingCautions.rotatingShafts())
                .containsAll(TireCautions.all());
        Whole.assertWorkedOut(answer);
    }

    @Test
    void refusesAnEngineSpeedOfZero() {
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> RoadSpeedsAnswer.at(Builds.crawler(), AngularSpeed.ofRpm(0.0)))
                .withMessageContaining("engine speed");
    }
}
