package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.driveshaft.ShaftHouse.Rule;
import drivetrain.finding.SourceClass;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShaftLimitTest {

    private static final List<TableRow> ROWS = rows();

    private static List<TableRow> rows() {
        List<TableRow> rows = new ArrayList<>(
                ReferenceTable.load("driveshaft/line-limits.csv").rows());
        rows.addAll(ReferenceTable.load("driveshaft/speed-limits.csv").rows());
        return rows;
    }

    /** The unit of a rule's row. */
    static String unit(Rule rule) {
        return ROWS.stream()
                .filter(row -> row.text("limit").equals(rule.row()))
                .findFirst()
                .orElseThrow()
                .text("unit");
    }

    @Test
    void everyRowIsALimitWithASource() {
        assertThat(ROWS).hasSize(20).allSatisfy(row -> {
            assertThat(row.number("value")).isNotNegative();
            assertThat(row.text("unit")).isIn("deg", "rad/s2", "1", "mm");
            assertThat(row.source().citation()).isNotBlank();
        });
    }

    /** How nearly axes lie in one plane is what an inclinometer can tell; all other rows are rules, and a shop may have its own. */
    @Test
    void aShopCanSetEveryRowButOne() {
        List<String> left =
                new ArrayList<>(ROWS.stream().map(row -> row.text("limit")).toList());
        Arrays.stream(Rule.values())
                .forEach(rule -> assertThat(left.remove(rule.row())).isTrue());

        assertThat(left).containsExactly("one-plane");
        assertThat(Math.toDegrees(ShaftLimit.onePlane())).isBetween(0.1, 0.5);
    }

    /** What was recalled says so: no limit of SAE AE-7 claims a better class. */
    @Test
    void recalledLimitsSayThatTheyAreFromMemory() {
        assertThat(ROWS)
                .filteredOn(row -> row.source().citation().contains("SAE AE-7"))
                .hasSize(4)
                .allSatisfy(row -> assertThat(row.source().kind()).isEqualTo(SourceClass.FROM_MEMORY));
    }

    @Test
    void refusesALimitThatIsInNoTable() {
        assertThatThrownBy(() -> ShaftLimit.of("noise")).hasMessageContaining("tables of driveshaft limits");
    }
}
