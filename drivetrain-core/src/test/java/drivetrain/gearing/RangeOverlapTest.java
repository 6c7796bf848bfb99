package drivetrain.gearing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class RangeOverlapTest {

    @Test
    void findsThirdLowBetweenFirstAndSecondHigh() {
        assertThat(RangeOverlap.of(Trains.fiveSpeed()).places())
                .extracting(RangeOverlap.Place::statement)
                .containsExactly(
                        "3rd low lies between 1st high and 2nd high",
                        "4th low is as tall as 2nd high",
                        "5th low lies between 2nd high and 3rd high");
    }

    @Test
    void looksAtGearsWithoutTheAuxiliaryUnit() {
        assertThat(RangeOverlap.of(Trains.with(Overdrive.parse("0.78"), HubReduction.none()))
                        .places())
                .extracting(place -> place.low().label())
                .containsExactly("4th low", "5th low", "6th low");
    }

    @Test
    void isEmptyWithoutLowRangeOrOverlap() {
        assertThat(RangeOverlap.of(train("3.00 1.00", "1.00")).places()).isEmpty();
        assertThat(RangeOverlap.of(train("1.50 1.00", "1.00 4.00")).places()).isEmpty();
    }

    @Test
    void namesAGearThatIsTallerThanTheTopOfHighRange() {
        assertThat(RangeOverlap.of(train("9.00 0.50", "1.00 1.50")).places())
                .extracting(RangeOverlap.Place::statement)
                .containsExactly("2nd low lies between 1st high and 2nd high");
        GearTrain single = train("1.00", "1.00 1.50");
        DriveGear high = single.gear(1, Range.HIGH).orElseThrow();
        DriveGear low = Trains.fiveSpeed().gear(5, Range.LOW).orElseThrow();
        assertThat(new RangeOverlap.Place(low, high, Optional.empty()).statement())
                .isEqualTo("5th low is taller than 1st high");
    }

    private static GearTrain train(String transmission, String transfer) {
        return new GearTrain(
                Transmission.parse(transmission),
                Overdrive.none(),
                TransferCase.parse(transfer),
                AxleRatio.parse("41/10"),
                HubReduction.none());
    }
}
