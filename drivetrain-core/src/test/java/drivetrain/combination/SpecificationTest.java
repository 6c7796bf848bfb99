package drivetrain.combination;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SpecificationTest {

    @Test
    void startsWithNothingChosen() {
        Specification empty = Specification.empty();

        assertThat(empty.title()).isEmpty();
        assertThat(empty.choices()).isEmpty();
        assertThat(empty.cruise()).isEmpty();
        assertThat(empty.notes()).isEmpty();
        assertThat(empty.choice(Slot.ENGINE)).isEmpty();
    }

    @Test
    void keepsChoicesWordForWordInTheOrderOfTheSlots() {
        Specification order =
                Specification.empty().with(Slot.TIRE, " 235/85R16 ").with(Slot.ENGINE, "v8-6.2");

        assertThat(order.choices().keySet()).containsExactly(Slot.ENGINE, Slot.TIRE);
        assertThat(order.choice(Slot.TIRE)).contains(" 235/85R16 ");
    }

    @Test
    void replacesAndEmptiesSlotsInCopies() {
        Specification first = Specification.empty().with(Slot.REAR_AXLE, "3.73");
        Specification second = first.with(Slot.REAR_AXLE, "4.10");

        assertThat(first.choice(Slot.REAR_AXLE)).contains("3.73");
        assertThat(second.choice(Slot.REAR_AXLE)).contains("4.10");
        assertThat(second.without(Slot.REAR_AXLE)).isEqualTo(Specification.empty());
        assertThat(second.without(Slot.TIRE)).isEqualTo(second);
    }

    @Test
    void keepsTheRestWhenOnePartChanges() {
        Specification order = Specification.empty()
                .titled("Fence line")
                .cruisingAt("55 mph")
                .noting("slow work")
                .limitedTo("90 mph")
                .with(Slot.HUBS, "none")
                .with(Slot.TIRE, "235/85R16")
                .without(Slot.TIRE);

        assertThat(order)
                .isEqualTo(new Specification(
                        "Fence line",
                        Map.of(Slot.HUBS, "none"),
                        Optional.of("55 mph"),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of("90 mph"),
                        "slow work"));
        assertThat(order.titled("Other").notes()).isEqualTo("slow work");
        assertThat(order.unlimited().limiter()).isEmpty();
    }

    @Test
    void copiesTheChoicesAndLetsNobodyChangeThem() {
        Map<Slot, String> choices = new HashMap<>(Map.of(Slot.TIRE, "235/85R16"));
        Specification order = new Specification(
                "", choices, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), "");
        choices.clear();

        assertThat(order.choice(Slot.TIRE)).contains("235/85R16");
        assertThatExceptionOfType(UnsupportedOperationException.class)
                .isThrownBy(() -> order.choices().clear());
    }
}
