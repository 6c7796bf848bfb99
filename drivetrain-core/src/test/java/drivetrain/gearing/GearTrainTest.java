package drivetrain.gearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Assumption;
import java.util.Comparator;
import org.junit.jupiter.api.Test;

class GearTrainTest {

    private static final Overdrive OVERDRIVE = Overdrive.parse("0.78");
    private static final Overdrive UNDERDRIVE = Overdrive.parse("1.25");

    @Test
    void listsForwardGearsAndReverseOfBothRanges() {
        assertThat(Trains.fiveSpeed().gears())
                .extracting(DriveGear::label)
                .containsExactly(
                        "1st high",
                        "2nd high",
                        "3rd high",
                        "4th high",
                        "5th high",
                        "reverse high",
                        "1st low",
                        "2nd low",
                        "3rd low",
                        "4th low",
                        "5th low",
                        "reverse low");
    }

    @Test
    void leavesTheRangeOutOfTheLabelWhereThereIsOne() {
        GearTrain train = new GearTrain(
                Trains.FIVE_SPEED, OVERDRIVE, TransferCase.none(), AxleRatio.parse("3.90"), HubReduction.none());
        assertThat(train.gears())
                .extracting(DriveGear::label)
                .contains("1st", "5th with overdrive", "reverse")
                .hasSize(11);
        assertThat(train.gear(1, Range.LOW)).isEmpty();
    }

    @Test
    void multipliesEveryStage() {
        GearTrain train = Trains.with(OVERDRIVE, HubReduction.parse("24/16"));
        DriveGear gear = train.gear(3, Range.LOW, true).orElseThrow();
        assertThat(gear.totalRatio()).isCloseTo(1.53 * 0.78 * 2.72 * 4.1 * 1.5, within(1e-12));
        assertThat(gear.shaftRatio()).isCloseTo(1.53 * 0.78 * 2.72, within(1e-12));
        assertThat(gear.label()).isEqualTo("3rd low with overdrive");
        assertThat(gear.overdrive()).isTrue();
        assertThat(gear.reverse()).isFalse();
    }

    @Test
    void neverReversesThroughAnEngagedAuxiliary() {
        GearTrain train = Trains.with(OVERDRIVE, HubReduction.none());
        assertThat(train.gears()).filteredOn(DriveGear::reverse).hasSize(2).noneMatch(DriveGear::overdrive);
        assertThat(train.gear(0, Range.LOW).orElseThrow().totalRatio()).isCloseTo(3.06 * 2.72 * 4.1, within(1e-12));
    }

    @Test
    void findsTopWithTheOverdriveAndLowestWithout() {
        GearTrain train = Trains.with(OVERDRIVE, HubReduction.none());
        assertThat(train.top().label()).isEqualTo("6th high with overdrive");
        assertThat(train.lowest().label()).isEqualTo("1st low");
    }

    @Test
    void findsLowestWithTheUnderdriveAndTopWithout() {
        GearTrain train = Trains.with(UNDERDRIVE, HubReduction.none());
        assertThat(train.lowest().label()).isEqualTo("1st low with underdrive");
        assertThat(train.top().label()).isEqualTo("6th high");
    }

    @Test
    void sortsForwardGearsShortestFirstOverBothRanges() {
        assertThat(Trains.fiveSpeed().byTotalRatio())
                .isSortedAccordingTo(
                        Comparator.comparingDouble(DriveGear::totalRatio).reversed())
                .hasSize(10)
                .noneMatch(DriveGear::reverse)
                .extracting(DriveGear::label)
                .startsWith("1st low", "2nd low", "1st high", "3rd low");
    }

    @Test
    void keepsItsPartsAndComparesByThem() {
        GearTrain train = Trains.fiveSpeed();
        assertThat(train).isEqualTo(Trains.fiveSpeed()).hasSameHashCodeAs(Trains.fiveSpeed());
        assertThat(train)
                .isNotEqualTo(Trains.with(OVERDRIVE, HubReduction.none()))
                .isNotEqualTo("train");
        assertThat(train.transmission()).isEqualTo(Trains.FIVE_SPEED);
        assertThat(train.overdrive().isFitted()).isFalse();
        assertThat(train.transferCase().tie()).isEqualTo(AxleTie.PART_TIME);
        assertThat(train.rear().ratio()).isEqualTo(Ratio.of(4.0));
        assertThat(train.hubs().isFitted()).isFalse();
        assertThat(train)
                .hasToString("transmission 4.50 2.50 1.50 1.00 0.80 reverse 4.20 clutch efficiency 95 %, "
                        + "overdrive none, transfer case 1.00 2.50 part-time efficiency 98 %, "
                        + "axle 4.00 efficiency 96 %, hubs none");
    }

    @Test
    void saysWhatItsSpeedsRestOn() {
        assertThat(Trains.fiveSpeed().speedAssumptions()).isEmpty();
        GearTrain train = new GearTrain(
                Trains.AUTOMATIC, Overdrive.none(), TransferCase.none(), AxleRatio.parse("3.73"), HubReduction.none());
        assertThat(train.speedAssumptions())
                .extracting(Assumption::subject)
                .containsExactly("torque converter", "axle ratio");
    }

    @Test
    void ordinalsFollowEnglish() {
        assertThat(GearLabel.ordinal(1)).isEqualTo("1st");
        assertThat(GearLabel.ordinal(2)).isEqualTo("2nd");
        assertThat(GearLabel.ordinal(3)).isEqualTo("3rd");
        assertThat(GearLabel.ordinal(10)).isEqualTo("10th");
        assertThat(GearLabel.ordinal(11)).isEqualTo("11th");
        assertThat(GearLabel.ordinal(13)).isEqualTo("13th");
        assertThat(GearLabel.ordinal(16)).isEqualTo("16th");
    }
}
