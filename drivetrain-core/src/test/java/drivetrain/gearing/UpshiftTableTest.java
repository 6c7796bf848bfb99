package drivetrain.gearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import drivetrain.quantity.AngularSpeed;
import drivetrain.refusal.RefusedException;
import org.junit.jupiter.api.Test;

class UpshiftTableTest {

    private static final AngularSpeed SHIFT = AngularSpeed.ofRpm(5000.0);

    @Test
    void dropsTheEngineSpeedByTheStep() {
        UpshiftTable table = UpshiftTable.of(Trains.fiveSpeed(), Range.HIGH, SHIFT);
        assertThat(table.shifts()).hasSize(4);
        Upshift first = table.shifts().get(0);
        assertThat(first.step()).isCloseTo(1.8, within(1e-12));
        assertThat(first.before()).isEqualTo(SHIFT);
        assertThat(first.after().toRpm()).isCloseTo(5000.0 / 1.8, within(1e-9));
        assertThat(table.spread()).isCloseTo(4.5 / 0.8, within(1e-12));
    }

    @Test
    void endsWithTheOverdriveButNotWithAnUnderdrive() {
        UpshiftTable over =
                UpshiftTable.of(Trains.with(Overdrive.parse("0.78"), HubReduction.none()), Range.LOW, SHIFT);
        assertThat(over.shifts()).hasSize(6).last().satisfies(shift -> {
            assertThat(shift.to().label()).isEqualTo("6th low with overdrive");
            assertThat(shift.step()).isCloseTo(1.0 / 0.78, within(1e-12));
        });
        UpshiftTable under =
                UpshiftTable.of(Trains.with(Overdrive.parse("1.25"), HubReduction.none()), Range.LOW, SHIFT);
        assertThat(under.shifts()).hasSize(5);
    }

    @Test
    void isEmptyWithoutTheRangeOrASecondGear() {
        GearTrain single = new GearTrain(
                Transmission.parse("1.00"),
                Overdrive.none(),
                TransferCase.none(),
                AxleRatio.parse("41/10"),
                HubReduction.none());
        assertThat(UpshiftTable.of(single, Range.HIGH, SHIFT).shifts()).isEmpty();
        assertThat(UpshiftTable.of(single, Range.LOW, SHIFT))
                .satisfies(table -> assertThat(table.shifts()).isEmpty())
                .satisfies(table -> assertThat(table.spread()).isEqualTo(1.0));
    }

    @Test
    void refusesAShiftSpeedOfZero() {
        GearTrain train = Trains.fiveSpeed();
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> UpshiftTable.of(train, Range.HIGH, AngularSpeed.ofRpm(0.0)));
    }

    @Test
    void explainsEveryShift() {
        UpshiftTable table = UpshiftTable.of(Trains.fiveSpeed(), Range.HIGH, SHIFT);
        assertThat(table.working().question()).isEqualTo("engine speed after each upshift in high range");
        assertThat(table.working().steps())
                .hasSize(8)
                .first()
                .satisfies(step -> assertThat(step.name()).isEqualTo("step, 1st high to 2nd high"));
    }
}
