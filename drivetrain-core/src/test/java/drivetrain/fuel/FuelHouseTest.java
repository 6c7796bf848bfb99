package drivetrain.fuel;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.finding.Finding;
import drivetrain.finding.HouseLimit;
import drivetrain.finding.HouseSet;
import drivetrain.finding.Source;
import drivetrain.finding.SourceClass;
import drivetrain.finding.Verdict;
import drivetrain.fuel.FuelHouse.Rule;
import drivetrain.quantity.Length;
import drivetrain.quantity.VolumeFlow;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class FuelHouseTest {

    private static final FuelHouse PACKED = FuelHouse.packed();
    private static final Source SHOP = Source.given("the shop");

    private static FuelHouse with(Rule rule, double value) {
        return new FuelHouse(
                HouseSet.of(Rule.class, each -> each == rule ? new HouseLimit(value, SHOP) : PACKED.of(each)));
    }

    @ParameterizedTest
    @EnumSource(Rule.class)
    void packsEveryRuleAndOwnsThatNobodyPublishedIt(Rule rule) {
        assertThat(PACKED.of(rule).value()).isPositive();
        assertThat(PACKED.source(rule).kind()).isEqualTo(SourceClass.COMMON_PRACTICE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, -0.1, 1.01, Double.NaN})
    void refusesAShareThatIsNone(double share) {
        assertThat(Supplies.refused(() -> Rule.DUTY.require(share)).allowed())
                .isEqualTo("more than 0, at most 1; packed: 0.85");
    }

    @Test
    void holdsTheSupplyAgainstTheShopsOwnLimits() {
        FuelSupply supply = Supplies.supply();
        SupplyPoint point = supply.capacity().orThrow();

        assertThat(verdict(FuelChecks.lines(supply, point, PACKED))).isEqualTo(Verdict.MET);
        Finding strict =
                FuelChecks.lines(supply, point, with(Rule.FEED_LOSS, 1.0)).get(0);
        assertThat(strict.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(strict.rule()).isEqualTo(SHOP);
    }

    private static Verdict verdict(List<Finding> findings) {
        return findings.get(0).verdict();
    }

    @Test
    void sizesALineByTheShopsOwnSpeed() {
        VolumeFlow flow = VolumeFlow.ofLitersPerHour(260.0);
        Length length = Length.ofMeters(5.0);

        assertThat(wideEnough(FuelSizing.bores(flow, length, Supplies.gasoline(), false, with(Rule.FEED_SPEED, 1.0))))
                .isLessThan(wideEnough(FuelSizing.bores(flow, length, Supplies.gasoline(), false, PACKED)));
        assertThat(PACKED.speed(true)).isLessThan(PACKED.speed(false));
    }

    private static long wideEnough(List<FuelSizing.Bore> bores) {
        return bores.stream().filter(FuelSizing.Bore::wideEnough).count();
    }
}
