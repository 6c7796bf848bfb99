package drivetrain.combination;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.driveshaft.ShaftHouse;
import drivetrain.finding.HouseLimit;
import drivetrain.finding.Source;
import drivetrain.finding.SourceClass;
import drivetrain.fuel.FuelHouse;
import drivetrain.refusal.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HouseLimitsTest {

    private static final HouseLimits PACKED = HouseLimits.packed();

    @ParameterizedTest
    @ValueSource(strings = {HouseLimits.CRUISE_LEAST_OVER_IDLE, HouseLimits.CRUISE_MOST_OF_MAXIMUM})
    void packsEveryLimitThatIsCheckedAndOwnsThatNobodyPublishedIt(String name) {
        assertThat(PACKED.get(name).value()).isPositive();
        assertThat(PACKED.get(name).source().kind()).isEqualTo(SourceClass.COMMON_PRACTICE);
    }

    @Test
    void replacesALimitInACopyAndNamesWhoSetIt() {
        HouseLimits own = PACKED.with(HouseLimits.CRUISE_MOST_OF_MAXIMUM, 0.45, "the shop");

        assertThat(own.get(HouseLimits.CRUISE_MOST_OF_MAXIMUM).value()).isEqualTo(0.45);
        assertThat(own.get(HouseLimits.CRUISE_MOST_OF_MAXIMUM).source().kind()).isEqualTo(SourceClass.GIVEN);
        assertThat(own.get(HouseLimits.CRUISE_MOST_OF_MAXIMUM).source().citation())
                .isEqualTo("the shop");
        assertThat(own.get(HouseLimits.CRUISE_LEAST_OVER_IDLE))
                .isEqualTo(PACKED.get(HouseLimits.CRUISE_LEAST_OVER_IDLE));
        assertThat(PACKED.get(HouseLimits.CRUISE_MOST_OF_MAXIMUM).value()).isEqualTo(0.5);
    }

    @Test
    void refusesUnknownNamesWithTheKnownOnes() {
        Refusal asked = Refusals.of(() -> PACKED.get("cruiseLeastOverIdel"));
        Refusal replaced = Refusals.of(() -> PACKED.with("wheelbase", 2.0, "the shop"));

        assertThat(asked.problem()).isEqualTo("is not a limit that is checked");
        assertThat(asked.suggestions()).contains(HouseLimits.CRUISE_LEAST_OVER_IDLE);
        assertThat(replaced.given()).isEqualTo("wheelbase");
        assertThat(replaced.allowed())
                .startsWith("boilingMarginLeastKilopascals, bushGiveMostMillimeters, criticalSpeedShareGood, ");
    }

    @Test
    void replacesALimitOfTheFuelSupply() {
        HouseLimits own = PACKED.with("supplyMarginLeast", 0.3, "the shop");

        assertThat(PACKED.fuel()).isEqualTo(FuelHouse.packed());
        assertThat(own.fuel().of(FuelHouse.Rule.MARGIN)).isEqualTo(new HouseLimit(0.3, Source.given("the shop")));
        assertThat(own.fuel().of(FuelHouse.Rule.DUTY)).isEqualTo(PACKED.fuel().of(FuelHouse.Rule.DUTY));
        assertThat(Refusals.of(() -> PACKED.with("injectorDutyMost", 85.0, "the shop"))
                        .allowed())
                .isEqualTo("more than 0, at most 1; packed: 0.85");
    }

    @Test
    void replacesALimitOfTheDriveshafts() {
        HouseLimits own = PACKED.with("criticalSpeedShareGood", 0.65, "the shop");

        assertThat(PACKED.driveshafts()).isEqualTo(ShaftHouse.packed());
        assertThat(own.driveshafts().of(ShaftHouse.Rule.CRITICAL_GOOD))
                .isEqualTo(new HouseLimit(0.65, Source.given("the shop")));
        assertThat(own.driveshafts().of(ShaftHouse.Rule.CRITICAL_MOST))
                .isEqualTo(PACKED.driveshafts().of(ShaftHouse.Rule.CRITICAL_MOST));
        assertThat(own.fuel()).isEqualTo(FuelHouse.packed());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, -0.7, 1.01, 70.0, Double.NaN, Double.NEGATIVE_INFINITY})
    void refusesAShareOfTheCriticalSpeedThatIsNone(double share) {
        Refusal refusal = Refusals.of(() -> PACKED.with("criticalSpeedShareGood", share, "the shop"));

        assertThat(refusal.subject()).isEqualTo("house limit criticalSpeedShareGood");
        assertThat(refusal.allowed()).isEqualTo("more than 0, at most 1; packed: 0.7");
    }

    @Test
    void letsAReserveBeNothingAndAFactorBeOne() {
        HouseLimits own =
                PACKED.with("torqueRatingReserveLeast", 0.0, "the shop").with("tubeYieldFactorLeast", 1.0, "the shop");

        assertThat(own.get("torqueRatingReserveLeast").value()).isZero();
        assertThat(Refusals.of(() -> PACKED.with("tubeYieldFactorLeast", 0.99, "the shop"))
                        .allowed())
                .isEqualTo("1 to 10; packed: 1.5");
        assertThat(Refusals.of(() -> PACKED.with("torqueRatingReserveLeast", -0.01, "the shop"))
                        .allowed())
                .isEqualTo("0 to 0.9; packed: 0");
    }

    @Test
    void letsLimitsThatBelongTogetherBeSetOneAfterTheOther() {
        HouseLimits both =
                PACKED.with("criticalSpeedShareGood", 0.8, "the shop").with("criticalSpeedShareMost", 0.85, "the shop");

        assertThat(both.inOrder("criticalSpeedShareGood")).isSameAs(both);
        assertThat(both.driveshafts().of(ShaftHouse.Rule.CRITICAL_GOOD).value()).isEqualTo(0.8);
    }

    @Test
    void refusesLimitsThatContradictEachOther() {
        HouseLimits high = PACKED.with("criticalSpeedShareGood", 0.8, "the shop");
        HouseLimits low = PACKED.with("criticalSpeedShareMost", 0.6, "the shop");

        assertThat(high.inOrder("torsionalAccelerationGoodRadiansPerSecondSquared"))
                .isSameAs(high);
        assertThat(Refusals.of(() -> high.inOrder("criticalSpeedShareGood")).sentence())
                .startsWith(
                        "house limit criticalSpeedShareGood \"0.8\": is more than criticalSpeedShareMost; allowed: at most 0.75 (")
                .endsWith("); or set both");
        assertThat(Refusals.of(() -> low.inOrder("criticalSpeedShareMost")).sentence())
                .startsWith(
                        "house limit criticalSpeedShareMost \"0.6\": is less than criticalSpeedShareGood; allowed: at least 0.7 (");
        assertThat(Refusals.of(high::driveshafts).given()).isEqualTo("0.8");
        assertThat(Refusals.of(() -> Catalog.titled("own").limits(low).build()).given())
                .isEqualTo("0.6");
    }

    @Test
    void namesEveryLimitOnce() {
        assertThat(HouseLimits.names())
                .doesNotHaveDuplicates()
                .isSorted()
                .contains(HouseLimits.CRUISE_LEAST_OVER_IDLE, "supplyMarginLeast", "jointAngleLeastDegrees")
                .allSatisfy(name -> assertThat(PACKED.get(name).isGiven()).isFalse());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, -1.0, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesImpossibleNumbers(double value) {
        Refusal refusal = Refusals.of(() -> PACKED.with(HouseLimits.CRUISE_LEAST_OVER_IDLE, value, "the shop"));

        assertThat(refusal.subject()).isEqualTo("house limit cruiseLeastOverIdle");
        assertThat(refusal.allowed()).contains("packed: 2");
    }
}
