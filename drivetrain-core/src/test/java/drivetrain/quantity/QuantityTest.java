package drivetrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import drivetrain.refusal.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void isAlwaysFinite(double number) {
        assertThatThrownBy(() -> Length.ofMeters(number))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("is not a finite number");
        assertThatThrownBy(() -> Length.ofMeters(1).times(number)).isInstanceOf(RefusedException.class);
    }

    @Test
    void refusesAResultThatIsNotFinite() {
        assertThatThrownBy(() -> Length.ofMeters(1).dividedBy(0)).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Length.ofMeters(1e308).plus(Length.ofMeters(1e308)))
                .isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> RevolutionsPerDistance.ofPerMile(0).perRevolution())
                .isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Power.ofWatts(1).torqueAt(AngularSpeed.ofRpm(0)))
                .isInstanceOf(RefusedException.class);
    }

    @Test
    void equalsByKindAndNumber() {
        assertThat(Length.ofMeters(2))
                .isEqualTo(Length.ofMillimeters(2000))
                .hasSameHashCodeAs(Length.ofMillimeters(2000));
        assertThat(Length.ofMeters(2)).isNotEqualTo(Length.ofMeters(3));
        assertThat((Object) Length.ofMeters(2))
                .isNotEqualTo(Mass.ofKilograms(2))
                .isNotEqualTo("2.0 m")
                .isNotEqualTo(null);
    }

    @Test
    void hasOneZero() {
        assertThat(Length.ofMeters(-0.0)).isEqualTo(Length.ofMeters(0.0)).hasToString("0.0 m");
        assertThat(Length.ofMeters(-0.0).compareTo(Length.ofMeters(0.0))).isZero();
    }

    @Test
    void comparesBySize() {
        assertThat(Speed.ofMilesPerHour(65)).isGreaterThan(Speed.ofKilometersPerHour(100));
        assertThat(Speed.ofMilesPerHour(65).isGreaterThan(Speed.ofKilometersPerHour(100)))
                .isTrue();
        assertThat(Speed.ofMilesPerHour(65).isGreaterThan(Speed.ofMilesPerHour(65)))
                .isFalse();
        assertThat(Speed.ofMilesPerHour(60).isLessThan(Speed.ofKilometersPerHour(100)))
                .isTrue();
        assertThat(Speed.ofMilesPerHour(65).isLessThan(Speed.ofMilesPerHour(65)))
                .isFalse();
    }

    @Test
    void addsAndScales() {
        Mass mass = Mass.ofKilograms(1200);

        assertThat(mass.plus(Mass.ofKilograms(300))).isEqualTo(Mass.ofKilograms(1500));
        assertThat(mass.minus(Mass.ofKilograms(1500))).isEqualTo(Mass.ofKilograms(-300));
        assertThat(mass.times(1.5)).isEqualTo(Mass.ofKilograms(1800));
        assertThat(mass.dividedBy(4)).isEqualTo(Mass.ofKilograms(300));
        assertThat(mass.ratioTo(Mass.ofKilograms(800))).isEqualTo(1.5);
        assertThat(mass.ratioTo(Mass.ofKilograms(0))).isInfinite();
    }

    @Test
    void requiresMoreThanZeroWhereAsked() {
        assertThat(Length.ofMeters(1).requirePositive("wheelbase")).isEqualTo(Length.ofMeters(1));
        assertThatThrownBy(() -> Length.ofMeters(0).requirePositive("wheelbase"))
                .hasMessage("wheelbase \"0.0 m\": must be greater than zero; allowed: more than 0 m");
        assertThatThrownBy(() -> Length.ofMeters(-1).requirePositive("wheelbase"))
                .isInstanceOf(RefusedException.class);
    }

    @Test
    void requiresARangeAndNamesItInTheUnitOfTheReader() {
        Length least = Length.ofInches(13);
        Length most = Length.ofInches(24);

        assertThat(least.requireBetween("rim", least, most, Length.INCH)).isEqualTo(least);
        assertThat(most.requireBetween("rim", least, most, Length.INCH)).isEqualTo(most);
        assertThatThrownBy(() -> Length.ofInches(26).requireBetween("rim", least, most, Length.INCH))
                .hasMessage("rim \"26 in\": is out of range; allowed: 13 to 24 in");
        assertThatThrownBy(() -> Length.ofInches(12).requireBetween("rim", least, most, Length.INCH))
                .isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> Length.ofMeters(1e307).requireBetween("rim", least, most, Length.MILLIMETER))
                .isInstanceOf(RefusedException.class)
                .hasMessageStartingWith("rim \"Infinity mm\"");
    }

    @Test
    void printsInAUnit() {
        assertThat(Length.ofInches(31.5).format(Length.INCH, 2)).isEqualTo("31.50 in");
        assertThat(Length.ofInches(31.5).format(Length.MILLIMETER, 0)).isEqualTo("800 mm");
        assertThat(Torque.ofNewtonMeters(300)).hasToString("300.0 N\u00B7m");
    }

    @Test
    void joinsTheFewKindsThatBelongTogether() {
        assertThat(Torque.ofNewtonMeters(100).at(AngularSpeed.ofRadiansPerSecond(300)))
                .isEqualTo(Power.ofKilowatts(30));
        assertThat(Power.ofKilowatts(30).torqueAt(AngularSpeed.ofRadiansPerSecond(300)))
                .isEqualTo(Torque.ofNewtonMeters(100));
        assertThat(AngularSpeed.ofRadiansPerSecond(80).atRadius(Length.ofMeters(0.4)))
                .isEqualTo(Speed.ofMetersPerSecond(32));
        assertThat(AngularSpeed.ofRpm(3000).toFrequency().toHertz()).isCloseTo(50.0, within(1e-12));
        assertThat(Frequency.ofHertz(50).toAngularSpeed().toRpm()).isCloseTo(3000.0, within(1e-10));
        assertThat(RevolutionsPerDistance.ofPerKilometer(400).perRevolution().toMeters())
                .isCloseTo(2.5, within(1e-15));
    }

    @Test
    void isNeverBelowAbsoluteZero() {
        assertThat(Temperature.ofKelvins(0)).isEqualTo(Temperature.ofCelsius(-273.15));
        assertThatThrownBy(() -> Temperature.ofKelvins(-1)).hasMessageContaining("below absolute zero");
        assertThatThrownBy(() -> Temperature.ofFahrenheit(-460)).hasMessageContaining("below absolute zero");
    }
}
