package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.finding.SourceClass;
import drivetrain.table.ReferenceTable;
import drivetrain.table.TableRow;
import java.util.List;
import org.junit.jupiter.api.Test;

class LineLimitsTest {

    private static final List<TableRow> ROWS =
            ReferenceTable.load("driveshaft/line-limits.csv").rows();

    @Test
    void everyRowIsALimitWithASource() {
        assertThat(ROWS).hasSize(13).allSatisfy(row -> {
            assertThat(row.number("value")).isPositive();
            assertThat(row.text("unit")).isIn("deg", "rad/s2", "1", "m");
            assertThat(row.source().citation()).isNotBlank();
        });
    }

    @Test
    void everyLimitThatIsAskedForIsThere() {
        assertThat(LineLimits.torsionalGood().value())
                .isLessThan(LineLimits.torsionalMost().value());
        assertThat(LineLimits.inertialGood().value())
                .isLessThan(LineLimits.inertialMost().value());
        assertThat(LineLimits.straightJoint().value())
                .isLessThan(LineLimits.ruleAngle().value());
        assertThat(Math.toDegrees(LineLimits.ruleDifference().value())).isBetween(0.5, 1.5);
        assertThat(Math.toDegrees(LineLimits.onePlane().value())).isBetween(0.1, 0.5);
        assertThat(LineLimits.angleReserve().value()).isBetween(0.0, 0.5);
        assertThat(LineLimits.engagement().value()).isPositive();
        assertThat(LineLimits.lengthDiffers().value()).isBetween(0.001, 0.02);
        assertThat(LineLimits.bushGive().value()).isBetween(0.001, 0.1);
        assertThat(LineLimits.bottoming().value()).isBetween(0.0, 0.05);
    }

    /** What was recalled says so: no limit of SAE AE-7 claims a better class. */
    @Test
    void recalledLimitsSayThatTheyAreFromMemory() {
        assertThat(ROWS)
                .filteredOn(row -> row.source().citation().contains("SAE AE-7"))
                .hasSize(4)
                .allSatisfy(row -> assertThat(row.source().kind()).isEqualTo(SourceClass.FROM_MEMORY));
    }
}
