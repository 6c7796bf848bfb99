package drivetrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RoundTripTest {

    private static final double[] EXTREMES = {
        0.0,
        Double.MIN_VALUE,
        Double.MIN_NORMAL,
        Math.nextDown(Double.MIN_NORMAL),
        1e-5,
        1e-3,
        0.1,
        1.0,
        1e7,
        9007199254740993.0,
        2e23,
        Double.MAX_VALUE
    };

    static Stream<Kind<?>> kinds() {
        return Kinds.all().stream();
    }

    private static boolean isPossible(Kind<?> kind, double si) {
        return Double.isFinite(si) && (kind != Temperature.KIND || si >= 0.0);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    <Q extends Quantity<Q>> void readsExactlyWhatIsPrinted(Kind<Q> kind) {
        Random random = new Random(1_903L);
        DoubleStream anyBits = DoubleStream.generate(() -> Double.longBitsToDouble(random.nextLong()))
                .limit(3_000);
        DoubleStream usual =
                DoubleStream.generate(() -> random.nextGaussian() * 1_000.0).limit(1_000);
        DoubleStream extremes = DoubleStream.of(EXTREMES).flatMap(x -> DoubleStream.of(x, -x));
        Stream.of(anyBits, usual, extremes).flatMap(DoubleStream::boxed).forEach(si -> {
            if (isPossible(kind, si)) {
                Q quantity = kind.ofSi(si);

                assertThat(kind.parse(quantity.toString())).isEqualTo(quantity);
                assertThat(kind.parse(quantity.toString()).si()).isEqualTo(si + 0.0);
            }
        });
    }

    @ParameterizedTest
    @MethodSource("kinds")
    <Q extends Quantity<Q>> void readsARoundedTextWithinHalfItsLastDigit(Kind<Q> kind) {
        Random random = new Random(1_948L);
        for (Unit<Q> unit : kind.units()) {
            for (int i = 0; i < 200; i++) {
                double number = random.nextDouble() * 10_000.0;
                int decimals = random.nextInt(6);
                String text = kind.of(number, unit).format(unit, decimals);

                assertThat(kind.parse(text).in(unit)).isCloseTo(number, within(0.5 * Math.pow(10, -decimals) + 1e-9));
                assertThat(text).endsWith(" " + unit.symbol());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    <Q extends Quantity<Q>> void aNumberComesBackFromItsUnit(Kind<Q> kind) {
        Random random = new Random(1_960L);
        for (Unit<Q> unit : kind.units()) {
            for (int i = 0; i < 200; i++) {
                double number = random.nextDouble() * 10_000.0;

                assertThat(kind.of(number, unit).in(unit)).isCloseTo(number, within(1e-15 * (number + 1_000.0)));
            }
        }
    }
}
