package drivetrain.gearing;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MeshStageTest {

    @ParameterizedTest
    @EnumSource(MeshStage.class)
    void hasAFlaggedDefaultForEveryStage(MeshStage stage) {
        assertThat(stage.efficiency().value()).isBetween(0.9, 1.0);
        assertThat(stage.assumption().flagged()).isTrue();
        assertThat(stage.assumption().statement()).contains("by default").doesNotEndWith(".");
    }

    @Test
    void spansEveryDefaultByItsUsualValues() {
        ReferenceTable table = ReferenceTable.load("gearing/mesh-efficiency.csv");
        assertThat(table.rows())
                .hasSize(MeshStage.values().length)
                .allSatisfy(
                        row -> assertThat(row.number("efficiency")).isBetween(row.number("from"), row.number("to")));
    }

    @Test
    void losesLessInADirectGear() {
        assertThat(MeshStage.MANUAL_DIRECT.efficiency().value())
                .isGreaterThan(MeshStage.MANUAL_GEAR.efficiency().value());
        assertThat(MeshStage.AUTOMATIC_DIRECT.efficiency().value())
                .isGreaterThan(MeshStage.AUTOMATIC_GEAR.efficiency().value());
        assertThat(MeshStage.TRANSFER_DIRECT.efficiency().value())
                .isGreaterThan(MeshStage.TRANSFER_GEAR.efficiency().value());
    }

    @Test
    void keepsAxleToothPairsApartInTwoDecimalsOrInTeeth() {
        ReferenceTable table = ReferenceTable.load("gearing/axle-tooth-pairs.csv");
        assertThat(table.rows())
                .extracting(TableRow::cells)
                .doesNotHaveDuplicates()
                .hasSizeGreaterThan(30);
        double before = 0.0;
        for (TableRow row : table.rows()) {
            double ratio =
                    Ratio.ofTeeth(row.integer("ring"), row.integer("pinion")).value();
            assertThat(ratio).isGreaterThan(before);
            before = ratio;
        }
    }
}
