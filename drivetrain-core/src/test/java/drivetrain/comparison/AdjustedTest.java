package drivetrain.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.assessment.CriticalSpeedAnswer;
import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.HouseLimits;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.finding.Source;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AdjustedTest {

    private static final Specification ORDER = TestShelf.ORDER
            .with(Slot.ENGINE, "420 hp at 5700 rpm, 460 lb-ft at 4100 rpm, idle 600 rpm, max 6600 rpm")
            .with(Slot.TRANSMISSION, "4.03 2.36 1.53 1.15 0.85 0.67")
            .with(Slot.TRANSFER, "1.00 2.72 part-time")
            .with(Slot.TIRE, "LT265/75R16 123/120R rollout 2457 mm");

    @Test
    void keepsTheLimitsOfTheShop() {
        HouseLimits own = HouseLimits.packed().with("criticalSpeedShareGood", 0.1, "the shop");
        Combination order =
                Combination.resolve(ORDER, Catalog.titled("own").limits(own).build());

        Combination longer = new Adjusted(order).with(Map.of(Lever.AXLE, 0.9));

        assertThat(longer.limits()).isEqualTo(own);
        assertThat(CriticalSpeedAnswer.of(longer).orThrow().findings())
                .filteredOn(finding -> finding.checked().startsWith("rear shaft speed"))
                .isNotEmpty()
                .allSatisfy(finding -> assertThat(finding.statement()).contains("10 % is good"))
                .allSatisfy(finding -> assertThat(finding.rule()).isEqualTo(Source.given("the shop")));
    }
}
