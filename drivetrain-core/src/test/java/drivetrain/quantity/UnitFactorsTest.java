package drivetrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.Method;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every factor against its definition in exact decimal arithmetic, and every factory and getter against its unit.
 *
 * <p>Definitions: NIST Special Publication 811 (2008), appendix B, which follow from the inch of 25.4 mm, the pound of
 * 0.453 592 37 kg, standard gravity of 9.806 65 m/s2, the US gallon of 231 in3 and the imperial gallon of 4.546 09 L.
 */
class UnitFactorsTest {

    private static final MathContext FIFTY = new MathContext(50);
    private static final BigDecimal INCH = exact("0.0254");
    private static final BigDecimal FOOT = exact("0.3048");
    private static final BigDecimal MILE = exact("1609.344");
    private static final BigDecimal POUND = exact("0.45359237");
    private static final BigDecimal GRAVITY = exact("9.80665");
    private static final BigDecimal POUND_FORCE = POUND.multiply(GRAVITY);
    private static final BigDecimal HOUR = exact("3600");
    private static final BigDecimal LITER = exact("0.001");
    private static final BigDecimal CUBIC_INCH = INCH.pow(3);
    private static final BigDecimal US_GALLON = exact("231").multiply(CUBIC_INCH);
    private static final BigDecimal IMPERIAL_GALLON = exact("4.54609").multiply(LITER);
    private static final BigDecimal HORSEPOWER =
            exact("550").multiply(POUND_FORCE).multiply(FOOT);
    private static final BigDecimal PI = exact("3.14159265358979323846264338327950288419716939937510");

    private static final Map<Unit<?>, BigDecimal> DEFINITIONS = Map.ofEntries(
            Map.entry(Length.METER, BigDecimal.ONE),
            Map.entry(Length.MILLIMETER, exact("0.001")),
            Map.entry(Length.CENTIMETER, exact("0.01")),
            Map.entry(Length.KILOMETER, exact("1000")),
            Map.entry(Length.INCH, INCH),
            Map.entry(Length.FOOT, FOOT),
            Map.entry(Length.MILE, MILE),
            Map.entry(Speed.METER_PER_SECOND, BigDecimal.ONE),
            Map.entry(Speed.KILOMETER_PER_HOUR, over(exact("1000"), HOUR)),
            Map.entry(Speed.MILE_PER_HOUR, over(MILE, HOUR)),
            Map.entry(AngularSpeed.RADIAN_PER_SECOND, BigDecimal.ONE),
            Map.entry(AngularSpeed.RPM, over(PI, exact("30"))),
            Map.entry(RevolutionsPerDistance.PER_METER, BigDecimal.ONE),
            Map.entry(RevolutionsPerDistance.PER_KILOMETER, exact("0.001")),
            Map.entry(RevolutionsPerDistance.PER_MILE, over(BigDecimal.ONE, MILE)),
            Map.entry(Mass.KILOGRAM, BigDecimal.ONE),
            Map.entry(Mass.GRAM, exact("0.001")),
            Map.entry(Mass.POUND, POUND),
            Map.entry(Force.NEWTON, BigDecimal.ONE),
            Map.entry(Force.KILONEWTON, exact("1000")),
            Map.entry(Force.POUND_FORCE, POUND_FORCE),
            Map.entry(Torque.NEWTON_METER, BigDecimal.ONE),
            Map.entry(Torque.POUND_FOOT, POUND_FORCE.multiply(FOOT)),
            Map.entry(Torque.POUND_INCH, POUND_FORCE.multiply(INCH)),
            Map.entry(Power.WATT, BigDecimal.ONE),
            Map.entry(Power.KILOWATT, exact("1000")),
            Map.entry(Power.HORSEPOWER, HORSEPOWER),
            Map.entry(Power.METRIC_HORSEPOWER, exact("75").multiply(GRAVITY)),
            Map.entry(Pressure.PASCAL, BigDecimal.ONE),
            Map.entry(Pressure.HECTOPASCAL, exact("100")),
            Map.entry(Pressure.KILOPASCAL, exact("1000")),
            Map.entry(Pressure.MEGAPASCAL, exact("1000000")),
            Map.entry(Pressure.BAR, exact("100000")),
            Map.entry(Pressure.PSI, over(POUND_FORCE, INCH.pow(2))),
            Map.entry(Pressure.GIGAPASCAL, exact("1000000000")),
            Map.entry(Pressure.KSI, over(exact("1000").multiply(POUND_FORCE), INCH.pow(2))),
            Map.entry(Pressure.MEGA_PSI, over(exact("1000000").multiply(POUND_FORCE), INCH.pow(2))),
            Map.entry(Frequency.HERTZ, BigDecimal.ONE),
            Map.entry(Frequency.KILOHERTZ, exact("1000")),
            Map.entry(Frequency.CYCLE_PER_MINUTE, over(BigDecimal.ONE, exact("60"))),
            Map.entry(Stiffness.NEWTON_PER_METER, BigDecimal.ONE),
            Map.entry(Stiffness.NEWTON_PER_MILLIMETER, exact("1000")),
            Map.entry(Stiffness.POUND_FORCE_PER_INCH, over(POUND_FORCE, INCH)),
            Map.entry(Volume.CUBIC_METER, BigDecimal.ONE),
            Map.entry(Volume.LITER, LITER),
            Map.entry(Volume.CUBIC_CENTIMETER, exact("0.000001")),
            Map.entry(Volume.CUBIC_INCH, CUBIC_INCH),
            Map.entry(Volume.US_GALLON, US_GALLON),
            Map.entry(Volume.IMPERIAL_GALLON, IMPERIAL_GALLON),
            Map.entry(VolumeFlow.CUBIC_METER_PER_SECOND, BigDecimal.ONE),
            Map.entry(VolumeFlow.LITER_PER_HOUR, over(LITER, HOUR)),
            Map.entry(VolumeFlow.LITER_PER_MINUTE, over(LITER, exact("60"))),
            Map.entry(VolumeFlow.CUBIC_CENTIMETER_PER_MINUTE, over(exact("0.000001"), exact("60"))),
            Map.entry(VolumeFlow.US_GALLON_PER_HOUR, over(US_GALLON, HOUR)),
            Map.entry(VolumeFlow.IMPERIAL_GALLON_PER_HOUR, over(IMPERIAL_GALLON, HOUR)),
            Map.entry(MassFlow.KILOGRAM_PER_SECOND, BigDecimal.ONE),
            Map.entry(MassFlow.KILOGRAM_PER_HOUR, over(BigDecimal.ONE, HOUR)),
            Map.entry(MassFlow.GRAM_PER_SECOND, exact("0.001")),
            Map.entry(MassFlow.POUND_PER_HOUR, over(POUND, HOUR)),
            Map.entry(SpecificFuelConsumption.KILOGRAM_PER_JOULE, BigDecimal.ONE),
            Map.entry(SpecificFuelConsumption.GRAM_PER_KILOWATT_HOUR, over(exact("0.001"), exact("3600000"))),
            Map.entry(SpecificFuelConsumption.POUND_PER_HORSEPOWER_HOUR, over(POUND, HORSEPOWER.multiply(HOUR))),
            Map.entry(Density.KILOGRAM_PER_CUBIC_METER, BigDecimal.ONE),
            Map.entry(Density.KILOGRAM_PER_LITER, exact("1000")),
            Map.entry(Density.POUND_PER_US_GALLON, over(POUND, US_GALLON)),
            Map.entry(KinematicViscosity.SQUARE_METER_PER_SECOND, BigDecimal.ONE),
            Map.entry(KinematicViscosity.SQUARE_MILLIMETER_PER_SECOND, exact("0.000001")),
            Map.entry(Temperature.KELVIN, BigDecimal.ONE),
            Map.entry(Temperature.CELSIUS, BigDecimal.ONE),
            Map.entry(Temperature.FAHRENHEIT, over(exact("5"), exact("9"))),
            Map.entry(Angle.RADIAN, BigDecimal.ONE),
            Map.entry(AngularAcceleration.RADIAN_PER_SECOND_SQUARED, BigDecimal.ONE),
            Map.entry(Angle.DEGREE, over(PI, exact("180"))),
            Map.entry(Time.SECOND, BigDecimal.ONE),
            Map.entry(Time.MINUTE, exact("60")),
            Map.entry(Time.HOUR, HOUR),
            Map.entry(Area.SQUARE_METER, BigDecimal.ONE),
            Map.entry(Area.SQUARE_MILLIMETER, exact("0.000001")),
            Map.entry(Area.SQUARE_CENTIMETER, exact("0.0001")),
            Map.entry(Area.SQUARE_FOOT, FOOT.multiply(FOOT)),
            Map.entry(Area.SQUARE_INCH, INCH.multiply(INCH)),
            Map.entry(MomentOfInertia.KILOGRAM_SQUARE_METER, BigDecimal.ONE),
            Map.entry(MomentOfInertia.POUND_SQUARE_FOOT, POUND.multiply(FOOT).multiply(FOOT)),
            Map.entry(CapacityFactor.RADIAN_PER_SECOND_PER_ROOT_NEWTON_METER, BigDecimal.ONE),
            Map.entry(CapacityFactor.RPM_PER_ROOT_NEWTON_METER, over(PI, exact("30"))),
            Map.entry(
                    CapacityFactor.RPM_PER_ROOT_POUND_FOOT,
                    over(over(PI, exact("30")), FOOT.multiply(POUND_FORCE).sqrt(FIFTY))),
            Map.entry(Current.AMPERE, BigDecimal.ONE),
            Map.entry(Voltage.VOLT, BigDecimal.ONE));

    static Stream<Kind<?>> kinds() {
        return Kinds.all().stream();
    }

    private static BigDecimal exact(String number) {
        return new BigDecimal(number);
    }

    private static BigDecimal over(BigDecimal dividend, BigDecimal divisor) {
        return dividend.divide(divisor, FIFTY);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void everyFactorIsItsDefinitionWithinFourRoundings(Kind<?> kind) {
        for (Unit<?> unit : kind.units()) {
            assertThat(DEFINITIONS).containsKey(unit);
            double defined = DEFINITIONS.get(unit).doubleValue();

            assertThat(Math.abs(unit.toSi(1.0) - unit.toSi(0.0) - defined))
                    .as(unit.symbol())
                    .isLessThanOrEqualTo(unit.isZeroAtZero() ? 4 * Math.ulp(defined) : 1e-13);
        }
    }

    @Test
    void temperaturesHaveTheirZeros() {
        assertThat(Temperature.ofCelsius(0).toKelvins()).isEqualTo(273.15);
        assertThat(Temperature.ofFahrenheit(-459.67).toKelvins()).isEqualTo(0.0);
        assertThat(Temperature.ofFahrenheit(32).toCelsius()).isCloseTo(0.0, within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    <Q extends Quantity<Q>> void everyUnitHasOneFactoryAndItsGetter(Kind<Q> kind) throws ReflectiveOperationException {
        Class<?> type = kind.ofSi(1.0).getClass();
        List<Method> factories = Arrays.stream(type.getDeclaredMethods())
                .filter(method -> method.getName().startsWith("of"))
                .toList();
        assertThat(factories).hasSameSizeAs(kind.units());
        for (Unit<Q> unit : kind.units()) {
            List<Method> matching = new ArrayList<>();
            for (Method factory : factories) {
                if (factory.invoke(null, 1_000.0).equals(kind.of(1_000.0, unit))) {
                    matching.add(factory);
                }
            }
            assertThat(matching).as(unit.symbol()).hasSize(1);
            Method getter = type.getMethod("to" + matching.get(0).getName().substring(2));
            assertThat(getter.invoke(kind.of(321.0, unit)))
                    .isEqualTo(kind.of(321.0, unit).in(unit));
            assertThat(kind.of(2.0, unit).kind()).isSameAs(kind);
        }
        assertThat(type.getMethod("parse", CharSequence.class)
                        .invoke(null, "3 " + kind.siUnit().symbol()))
                .isEqualTo(kind.ofSi(3.0));
    }
}
