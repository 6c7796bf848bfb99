package drivetrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.refusal.RefusedException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import org.junit.jupiter.api.Test;

class FigureTest {

    private static final Figure CRUISE = Figure.of(Speed.ofMilesPerHour(65), Display.ROAD_SPEED);

    @Test
    void showsAQuantityInTheChosenSystem() {
        assertThat(CRUISE.text(UnitSystem.US)).isEqualTo("65.0 mph");
        assertThat(CRUISE.text(UnitSystem.METRIC)).isEqualTo("104.6 km/h");
        assertThat(CRUISE.text(UnitSystem.BOTH)).isEqualTo("65.0 mph (104.6 km/h)");
    }

    @Test
    void givesNumberUnitAndDigitsApart() {
        assertThat(CRUISE.number(UnitSystem.METRIC))
                .isEqualTo(Speed.ofMilesPerHour(65).toKilometersPerHour());
        assertThat(CRUISE.number(UnitSystem.BOTH))
                .isEqualTo(Speed.ofMilesPerHour(65).toMilesPerHour());
        assertThat(CRUISE.unit(UnitSystem.BOTH)).isEqualTo("mph");
        assertThat(CRUISE.unit(UnitSystem.METRIC)).isEqualTo("km/h");
        assertThat(CRUISE.digits(UnitSystem.METRIC)).isEqualTo("104.6");
        assertThat(CRUISE.digits(UnitSystem.US)).isEqualTo("65.0");
    }

    @Test
    void saysAUnitThatBothSystemsShareOnce() {
        assertThat(Figure.of(AngularSpeed.ofRpm(1817.4), Display.ROTATION).text(UnitSystem.BOTH))
                .isEqualTo("1817 rpm");
    }

    @Test
    void showsPlainNumbersAndPercentages() {
        for (UnitSystem system : UnitSystem.values()) {
            assertThat(Figure.plain(68.123, 1).text(system)).isEqualTo("68.1");
            assertThat(Figure.plain(68.123, 1).number(system)).isEqualTo(68.123);
            assertThat(Figure.plain(68.123, 1).unit(system)).isEmpty();
            assertThat(Figure.percent(0.0527, 1).text(system)).isEqualTo("5.3 %");
            assertThat(Figure.percent(0.0527, 1).unit(system)).isEqualTo("%");
            assertThat(Figure.percent(0.0527, 1).digits(system)).isEqualTo("5.3");
        }
        assertThat(Double.doubleToRawLongBits(Figure.plain(-0.0, 1).number(UnitSystem.US)))
                .isZero();
    }

    @Test
    void refusesWhatCannotBeShown() {
        assertThatThrownBy(() -> Figure.plain(Double.NaN, 1)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Figure.percent(Double.MAX_VALUE, 1)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Figure.of(Length.ofMeters(1e306), Display.DIMENSION))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("is too large to be shown");
        assertThatThrownBy(
                        () -> Figure.of(Length.ofMeters(1e307), new Display<>(Length.MILLIMETER, 0, Length.METER, 0)))
                .isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Figure.plain(1, 16)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Display<>(Length.INCH, -1, Length.METER, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Display<>(Length.INCH, 0, Length.METER, 16))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void everyDisplayHasUnitsOfOneKind() throws IllegalAccessException {
        for (Field field : Display.class.getDeclaredFields()) {
            if (Modifier.isStatic(field.getModifiers()) && field.getType() == Display.class) {
                Display<?> display = (Display<?>) field.get(null);

                assertThat(Kinds.measuredIn(display.us().symbol()))
                        .as(field.getName())
                        .isEqualTo(Kinds.measuredIn(display.metric().symbol()))
                        .isPresent();
            }
        }
    }
}
