package drivetrain.combination;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SlotTest {

    @ParameterizedTest
    @EnumSource(Slot.class)
    void isFoundByItsKey(Slot slot) {
        assertThat(Slot.ofKey(slot.key())).contains(slot);
    }

    @Test
    void isNotFoundByAnythingElse() {
        assertThat(Slot.ofKey("rear axle")).isEmpty();
        assertThat(Slot.ofKey("")).isEmpty();
        assertThat(Slot.ofKey("TIRE")).isEmpty();
    }

    @Test
    void hasWordsAndKeysOfItsOwn() {
        assertThat(Arrays.stream(Slot.values()).map(Slot::word)).doesNotHaveDuplicates();
        assertThat(Arrays.stream(Slot.values()).map(Slot::key)).doesNotHaveDuplicates();
    }

    @Test
    void sharesAKindBetweenFrontAndRear() {
        assertThat(Slot.FRONT_AXLE.kind()).isSameAs(Slot.REAR_AXLE.kind());
        assertThat(Slot.FRONT_TIRE.kind()).isSameAs(Slot.TIRE.kind());
    }

    @Test
    void leavesNoKindOfPartWithoutAPlace() {
        List<PartKind<?>> filled =
                Arrays.stream(Slot.values()).<PartKind<?>>map(Slot::kind).toList();

        Set<PartKind<?>> piecesOfLines = Set.of(PartKind.FUEL_HOSE, PartKind.FUEL_FILTER);
        assertThat(PartKind.all())
                .allSatisfy(kind -> assertThat(filled.contains(kind) || piecesOfLines.contains(kind))
                        .isTrue());
    }
}
