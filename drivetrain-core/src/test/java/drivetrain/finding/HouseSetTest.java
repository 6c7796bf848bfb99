package drivetrain.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.refusal.RefusedException;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HouseSetTest {

    private static final Source PRACTICE = Source.commonPractice("a rule of nobody's trade");
    private static final Source SHOP = Source.given("the shop");

    private enum Noise implements HouseRule {
        QUIET(40.0),
        LOUD(80.0);

        private final double packed;

        Noise(double packed) {
            this.packed = packed;
        }

        @Override
        public String key() {
            return this == QUIET ? "quiet" : "loud";
        }

        @Override
        public HouseRange range() {
            return HouseRange.above(0.0, 120.0);
        }

        @Override
        public HouseLimit packed() {
            return new HouseLimit(packed, PRACTICE);
        }

        @Override
        public Optional<HouseRule> ceiling() {
            return this == QUIET ? Optional.of(LOUD) : Optional.empty();
        }
    }

    private static HouseSet<Noise> set(double quiet, double loud) {
        return new HouseSet<>(
                Noise.class, Map.of(Noise.QUIET, new HouseLimit(quiet, SHOP), Noise.LOUD, new HouseLimit(loud, SHOP)));
    }

    @Test
    void tellsWhoSetALimit() {
        assertThat(HouseSet.packed(Noise.class).of(Noise.LOUD)).isEqualTo(new HouseLimit(80.0, PRACTICE));
        assertThat(HouseSet.packed(Noise.class).of(Noise.LOUD).isGiven()).isFalse();
        assertThat(set(50.0, 50.0).of(Noise.QUIET).isGiven()).isTrue();
    }

    @Test
    void refusesASetThatLacksARule() {
        assertThatThrownBy(() -> new HouseSet<>(Noise.class, Map.of(Noise.QUIET, Noise.QUIET.packed())))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("\"loud\": is not set");
    }

    @Test
    void refusesANumberThatARuleCannotMean() {
        assertThatThrownBy(() -> set(-1.0, 80.0))
                .isInstanceOf(RefusedException.class)
                .hasMessage("house limit quiet \"-1\": is out of range; allowed: more than 0, at most 120; packed: 40");
        assertThatThrownBy(() -> set(40.0, Double.NaN)).hasMessageContaining("house limit loud \"NaN\"");
    }

    @Test
    void refusesLimitsThatContradictEachOther() {
        assertThatThrownBy(() -> set(60.0, 50.0))
                .isInstanceOf(RefusedException.class)
                .hasMessage("house limit quiet \"60\": is more than loud; allowed: at most 50 (the shop [given])");
    }

    @Test
    void speaksOfTheRuleThatIsAskedAboutAndOfBothWhereOneIsPacked() {
        HouseOrder order = new HouseOrder(Noise.QUIET, Noise.QUIET.packed(), Noise.LOUD, new HouseLimit(30.0, SHOP));

        assertThatThrownBy(() -> order.require("loud"))
                .hasMessage("house limit loud \"30\": is less than quiet; allowed: at least 40 ("
                        + "a rule of nobody's trade [common practice]); or set both");
    }
}
