package drivetrain.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import java.util.List;
import org.junit.jupiter.api.Test;

class SideBySideTest {

    private static SideBySide.Order order(String name, Specification specification) {
        return SideBySide.Order.of(name, Combination.resolve(specification, TestShelf.CATALOG));
    }

    private static SideBySide.Row row(SideBySide all, String key) {
        return all.rows().stream()
                .filter(row -> row.measure().key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void holdsEachPackageAgainstTheFirst() {
        SideBySide all = SideBySide.of(List.of(
                order("now", TestShelf.ORDER),
                order("short", Place.AXLES.put(TestShelf.ORDER, "41/10")),
                order("no engine", TestShelf.ORDER.without(Slot.ENGINE))));
        SideBySide.Row rpm = row(all, "rpmAt65mph");
        assertThat(rpm.changes().get(0)).isEmpty();
        assertThat(rpm.changes().get(1).orElseThrow()).isCloseTo(0.1, within(1e-12));
        assertThat(rpm.changes().get(2)).hasValue(0.0);
        assertThat(rpm.differs()).isTrue();
        assertThat(row(all, "tireDiameter").differs()).isFalse();
        SideBySide.Row torque = row(all, "peakTorque");
        assertThat(torque.numbers().get(2).reason()).hasValue("no engine is chosen");
        assertThat(torque.differs()).isTrue();
        assertThat(all.rows()).noneMatch(row -> row.measure() == Measures.SPEEDOMETER);
    }

    @Test
    void mergesTheChecks() {
        SideBySide all = SideBySide.of(List.of(
                order("now", TestShelf.ORDER), order("rear only", TestShelf.ORDER.with(Slot.REAR_AXLE, "41/10"))));
        assertThat(all.checks())
                .extracting(SideBySide.Check::checked)
                .doesNotHaveDuplicates()
                .isNotEmpty();
        assertThat(all.checks()).anyMatch(SideBySide.Check::differs);
        assertThat(all.verdicts()).hasSize(2);
        assertThat(all.assumptions()).doesNotHaveDuplicates();
        assertThat(all.cautions()).isNotEmpty();
    }

    @Test
    void refusesASinglePackage() {
        assertThatThrownBy(() -> SideBySide.of(List.of(order("now", TestShelf.ORDER))))
                .hasMessageContaining("compare with");
    }
}
