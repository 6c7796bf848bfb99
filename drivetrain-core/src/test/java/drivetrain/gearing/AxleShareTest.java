package drivetrain.gearing;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.quantity.Torque;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class AxleShareTest {

    private static final Torque TOTAL = Torque.ofNewtonMeters(8000.0);

    @ParameterizedTest
    @CsvSource({
        "PART_TIME, 8000, 8000, 4000, 4000, 8000",
        "LOCKED, 8000, 8000, 4000, 4000, 8000",
        "OPEN, 4000, 4000, 4000, 2000, 4000",
        "REAR_ONLY, 0, 8000, 8000, 4000, 8000"
    })
    void dividesButNeverDoubles(AxleTie tie, double front, double rear, double even, double wheel, double lockedWheel) {
        AxleShare share = AxleShare.of(tie, TOTAL);
        assertThat(share.greatestFront().toNewtonMeters()).isEqualTo(front);
        assertThat(share.greatestRear().toNewtonMeters()).isEqualTo(rear);
        assertThat(share.even().toNewtonMeters()).isEqualTo(even);
        assertThat(share.greatestAtOneWheel().toNewtonMeters()).isEqualTo(wheel);
        assertThat(share.greatestAtOneWheelLocked().toNewtonMeters()).isEqualTo(lockedWheel);
        assertThat(share.total()).isEqualTo(TOTAL);
    }

    @ParameterizedTest
    @EnumSource(AxleTie.class)
    void saysWhatTheDivisionRestsOn(AxleTie tie) {
        assertThat(AxleShare.of(tie, TOTAL).statement()).contains("axle").doesNotEndWith(".");
    }

    @Test
    void cautionsWhereAxlesCanBeTied() {
        assertThat(GearingCautions.of(AxleTie.PART_TIME)).extracting("hazard").contains("tied axles");
        assertThat(GearingCautions.of(AxleTie.LOCKED)).extracting("hazard").contains("tied axles");
        assertThat(GearingCautions.of(AxleTie.OPEN)).extracting("hazard").containsExactly("wheel torque");
        assertThat(GearingCautions.of(AxleTie.REAR_ONLY)).extracting("hazard").containsExactly("wheel torque");
        assertThat(GearingCautions.all())
                .containsAll(GearingCautions.of(AxleTie.PART_TIME))
                .containsAll(GearingCautions.rotatingShafts())
                .containsAll(GearingCautions.speedometer());
    }
}
