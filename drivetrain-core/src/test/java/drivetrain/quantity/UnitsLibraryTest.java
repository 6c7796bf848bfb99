package drivetrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

/**
 * Factors against those of an independent general-purpose library, the reference implementation of the standard units interface of Java
 * with its US customary and imperial units.
 */
class UnitsLibraryTest {

    private static final Unit<?> HOUR = Units.HOUR;
    private static final Unit<?> POUND_FORCE_FOOT = Imperial.POUND_FORCE.multiply(USCustomary.FOOT);

    private static Arguments same(drivetrain.quantity.Unit<?> ours, Unit<?> theirs) {
        return Arguments.of(ours, theirs);
    }

    static Stream<Arguments> unitsOfBoth() {
        Unit<?> horsepower = POUND_FORCE_FOOT.multiply(550).divide(Units.SECOND);
        Unit<?> kilowattHour = MetricPrefix.KILO(Units.WATT).multiply(HOUR);
        return Stream.of(
                same(Length.INCH, USCustomary.INCH),
                same(Length.FOOT, USCustomary.FOOT),
                same(Length.MILE, USCustomary.MILE),
                same(Length.MILLIMETER, MetricPrefix.MILLI(Units.METRE)),
                same(Speed.MILE_PER_HOUR, USCustomary.MILE_PER_HOUR),
                same(Speed.KILOMETER_PER_HOUR, Units.KILOMETRE_PER_HOUR),
                same(Mass.POUND, USCustomary.POUND),
                same(Mass.GRAM, Units.GRAM),
                same(Force.POUND_FORCE, Imperial.POUND_FORCE),
                same(Torque.POUND_FOOT, POUND_FORCE_FOOT),
                same(Torque.POUND_INCH, Imperial.POUND_FORCE.multiply(USCustomary.INCH)),
                same(Power.HORSEPOWER, horsepower),
                same(
                        Power.METRIC_HORSEPOWER,
                        Imperial.KILOGRAM_FORCE
                                .multiply(75)
                                .multiply(Units.METRE)
                                .divide(Units.SECOND)),
                same(Pressure.PSI, Imperial.POUND_FORCE.divide(USCustomary.INCH.pow(2))),
                same(Pressure.KILOPASCAL, MetricPrefix.KILO(Units.PASCAL)),
                same(Volume.CUBIC_INCH, USCustomary.CUBIC_INCH),
                same(Volume.US_GALLON, USCustomary.GALLON_LIQUID),
                same(Volume.IMPERIAL_GALLON, Imperial.GALLON_UK),
                same(Volume.LITER, Units.LITRE),
                same(VolumeFlow.US_GALLON_PER_HOUR, USCustomary.GALLON_LIQUID.divide(HOUR)),
                same(VolumeFlow.LITER_PER_HOUR, Units.LITRE.divide(HOUR)),
                same(MassFlow.POUND_PER_HOUR, USCustomary.POUND.divide(HOUR)),
                same(Density.POUND_PER_US_GALLON, USCustomary.POUND.divide(USCustomary.GALLON_LIQUID)),
                same(
                        SpecificFuelConsumption.POUND_PER_HORSEPOWER_HOUR,
                        USCustomary.POUND.divide(horsepower).divide(HOUR)),
                same(SpecificFuelConsumption.GRAM_PER_KILOWATT_HOUR, Units.GRAM.divide(kilowattHour)),
                same(Angle.DEGREE, USCustomary.DEGREE_ANGLE),
                same(AngularSpeed.RPM, USCustomary.REVOLUTION.divide(Units.MINUTE)));
    }

    @ParameterizedTest
    @MethodSource("unitsOfBoth")
    void hasTheSameFactor(drivetrain.quantity.Unit<?> ours, Unit<?> theirs) throws Exception {
        double factor = theirs.getConverterToAny(theirs.getSystemUnit()).convert(1.0);

        assertThat(ours.toSi(1.0)).as(ours.symbol()).isCloseTo(factor, within(1e-13 * factor));
    }

    @Test
    void hasTheSameTemperatures() {
        for (double degrees : new double[] {-40, 0, 25, 96.5, 230}) {
            double kelvins = Units.CELSIUS.getConverterTo(Units.KELVIN).convert(degrees);

            assertThat(Temperature.ofCelsius(degrees).toKelvins()).isCloseTo(kelvins, within(1e-10));
        }
    }
}
