package drivetrain.combination;

import static org.assertj.core.api.Assertions.assertThat;

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
                .startsWith("boilingMarginLeastKilopascals, cruiseLeastOverIdle, cruiseMostOfMaximum, ");
    }

    @Test
    void replacesALimitOfTheFuelSupply() {
        HouseLimits own = PACKED.with("supplyMarginLeast", 0.3, "the shop");

        assertThat(PACKED.fuel()).isEqualTo(FuelHouse.packed());
        assertThat(own.fuel().of(FuelHouse.Rule.MARGIN)).isEqualTo(new FuelHouse.Value(0.3, Source.given("the shop")));
        assertThat(own.fuel().of(FuelHouse.Rule.DUTY)).isEqualTo(PACKED.fuel().of(FuelHouse.Rule.DUTY));
        assertThat(Refusals.of(() -> PACKED.with("injectorDutyMost", 85.0, "the shop"))
                        .allowed())
                .isEqualTo("more than 0, at most 1; packed: 0.85");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, -1.0, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesImpossibleNumbers(double value) {
        Refusal refusal = Refusals.of(() -> PACKED.with(HouseLimits.CRUISE_LEAST_OVER_IDLE, value, "the shop"));

        assertThat(refusal.subject()).isEqualTo("house limit cruiseLeastOverIdle");
        assertThat(refusal.allowed()).contains("packed: 2");
    }
}
