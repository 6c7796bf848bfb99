package drivetrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class KindTest {

    private static Refusal refusalOf(Kind<?> kind, String text) {
        return catchThrowableOfType(RefusedException.class, () -> kind.parse(text))
                .refusal();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "31.5 in",
                "31.5in",
                " 31.5 in ",
                "31.5\tin",
                "31.5\u00A0in",
                "31.5\u202Fin",
                "31.5 IN",
                "31.5 in.",
                "31.5\"",
                "31.5 \u2033",
                "31.5 inches",
                "+31.5 in",
                "3.15e1 in",
                "31 1/2 in",
                "31-1/2 in",
                "31 1/2\""
            })
    void readsALengthInEveryCustomaryWriting(String text) {
        assertThat(Length.parse(text)).isEqualTo(Length.ofInches(31.5));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "410 lb\u00B7ft",
                "410 lb-ft",
                "410 lb ft",
                "410 ft-lb",
                "410 ft-lbs",
                "410 lb*ft",
                "410 lb\u22C5ft",
                "410 lb\u2022ft",
                "410 LB-FT",
                "410 lbf\u00B7ft",
                "410 ft lbf",
                "410 lb  ft",
                "410 lb\u00A0ft",
                "410 pound-feet"
            })
    void readsATorqueInEveryCustomaryWriting(String text) {
        assertThat(Torque.parse(text)).isEqualTo(Torque.ofPoundFeet(410));
    }

    @Test
    void readsTheUnitsOfTheTrade() {
        assertThat(Speed.parse("65 mph")).isEqualTo(Speed.ofMilesPerHour(65));
        assertThat(AngularSpeed.parse("5700 rpm")).isEqualTo(AngularSpeed.ofRpm(5700));
        assertThat(AngularSpeed.parse("650 1/min")).isEqualTo(AngularSpeed.ofRpm(650));
        assertThat(Torque.parse("300 Nm")).isEqualTo(Torque.parse("300 N\u00B7m"));
        assertThat(Pressure.parse("58 psi")).isEqualTo(Pressure.ofPsi(58));
        assertThat(Volume.parse("19.1 US gal")).isEqualTo(Volume.ofUsGallons(19.1));
        assertThat(Volume.parse("350 cid")).isEqualTo(Volume.ofCubicInches(350));
        assertThat(VolumeFlow.parse("255 lph")).isEqualTo(VolumeFlow.ofLitersPerHour(255));
        assertThat(Power.parse("600 hp")).isEqualTo(Power.ofHorsepower(600));
        assertThat(Power.parse("600 PS")).isEqualTo(Power.ofMetricHorsepower(600));
        assertThat(RevolutionsPerDistance.parse("632/mile")).isEqualTo(RevolutionsPerDistance.ofPerMile(632));
        assertThat(Temperature.parse("25 \u00B0C")).isEqualTo(Temperature.ofCelsius(25));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''          | 0 | does not start with a number",
                "'   '       | 3 | does not start with a number",
                "in          | 0 | does not start with a number",
                "NaN in      | 0 | does not start with a number",
                "Infinity in | 0 | does not start with a number",
                "-in         | 0 | does not start with a number",
                "' ,5 in'    | 1 | does not start with a number",
                "\u0665 in   | 0 | does not start with a number",
                "31.5        | 4 | has no unit",
                "'31.5  '    | 4 | has no unit",
                "'31.5 \u2028' | 4 | has no unit",
                "31,5 in     | 2 | has a comma",
                "31,500 mm   | 2 | has a comma",
                "1.200,5 mm  | 5 | has a comma",
                "31 ,5 in    | 3 | has a comma",
                "31 500 mm   | 3 | has a second number",
                "1e999 in    | 0 | is too large a number",
                "' -1e999 in'| 1 | is too large a number",
                "1e308 km    | 0 | is too large a number",
                "1e-400 in   | 0 | is too small a number",
                "4e-324 mm   | 0 | is too small a number",
                "1e-999999999999 m | 0 | is too small a number",
                "7/16 mm     | 0 | is a fraction, which is read in inches and feet only",
                "41/11 mm    | 0 | is a fraction, which is read in inches and feet only",
                "41/11 in    | 0 | has a fraction that no tape shows",
                "1/0 in      | 0 | has a fraction that no tape shows",
                "31 1/3 in   | 0 | has a fraction that no tape shows",
                "31.5 furlong| 5 | \"furlong\" is not a unit of length",
                "31.5 in wide| 5 | \"in wide\" is not a unit of length",
                "5' 6\"      | 1 | \"' 6\"\" is not a unit of length",
                "1'200 mm    | 1 | \"'200 mm\" is not a unit of length",
                "0x10 in     | 1 | \"x10 in\" is not a unit of length",
                "4.10.2 in   | 4 | \".2 in\" is not a unit of length",
                "31.5 Mm     | 5 | \"Mm\" can mean more than one unit",
                "31.5 lb     | 5 | \"lb\" is a unit of mass, not of length",
                "31.5 gal    | 5 | \"gal\" is not a unit of length"
            })
    void refusesALengthAndPointsAtTheFault(String text, int position, String problem) {
        Refusal refusal = refusalOf(Length.KIND, text);

        assertThat(refusal.problem()).startsWith(problem);
        assertThat(refusal.position()).hasValue(position);
        assertThat(refusal.given()).isEqualTo(text);
        assertThat(refusal.subject()).isEqualTo("length");
        assertThat(refusal.allowed()).isNotEmpty();
    }

    @Test
    void namesTheKindOfAMisplacedUnit() {
        assertThat(refusalOf(Speed.KIND, "65 km").sentence())
                .isEqualTo("speed \"65 km\": \"km\" is a unit of length, not of speed; allowed: m/s, km/h, mph");
        assertThat(refusalOf(Force.KIND, "500 lb").problem()).isEqualTo("\"lb\" is a unit of mass, not of force");
        assertThat(refusalOf(Power.KIND, "410 lb-ft").problem())
                .isEqualTo("\"lb-ft\" is a unit of torque, not of power");
        assertThat(refusalOf(Temperature.KIND, "25 deg").problem())
                .isEqualTo("\"deg\" is a unit of angle, not of temperature");
    }

    @Test
    void namesBothUnitsThatAWordCanMean() {
        Refusal gallon = refusalOf(Volume.KIND, "20 gal");
        assertThat(gallon.problem()).isEqualTo("\"gal\" can mean more than one unit");
        assertThat(gallon.allowed()).contains("US gal", "imp gal");
        assertThat(gallon.position()).hasValue(3);
        assertThat(refusalOf(Volume.KIND, "20 GAL.").allowed()).contains("US gal", "imp gal");
        assertThat(refusalOf(KinematicViscosity.KIND, "0.5 cP").allowed()).contains("divided by the density");
        assertThat(refusalOf(VolumeFlow.KIND, "20 gph").allowed()).contains("US gal/h", "imp gal/h");
        assertThat(refusalOf(Power.KIND, "200 CV").allowed()).contains("PS", "hp");
        assertThat(refusalOf(Mass.KIND, "2 tons").allowed()).contains("1000 kg", "2000 lb", "2240 lb");
    }

    @Test
    void doesNotTakeMilliForMega() {
        assertThat(Pressure.parse("1 MPa")).isEqualTo(Pressure.ofMegapascals(1));
        assertThat(Pressure.parse("1 mbar")).isEqualTo(Pressure.ofHectopascals(1));
        assertThat(Length.parse("2510 MM")).isEqualTo(Length.ofMillimeters(2510));
        assertThat(refusalOf(Pressure.KIND, "1 mPa").allowed()).startsWith("MPa for megapascals");
        assertThat(refusalOf(Pressure.KIND, "1 mpa").suggestions()).first().isEqualTo("MPa");
        assertThat(refusalOf(Pressure.KIND, "1 Mbar").allowed()).startsWith("mbar for millibars");
        assertThat(refusalOf(VolumeFlow.KIND, "1 ML/min").allowed()).startsWith("mL/min for milliliters");
    }

    @Test
    void suggestsANearUnitAndNoneForNonsense() {
        assertThat(refusalOf(Length.KIND, "31.5 inchs").suggestions()).contains("inch");
        assertThat(refusalOf(Speed.KIND, "65 qwertz").suggestions()).isEmpty();
    }

    @Test
    void refusesAVeryLongTextQuicklyAndKeepsLittleOfIt() {
        Refusal refusal = refusalOf(Length.KIND, "1".repeat(10_000_000) + " in");

        assertThat(refusal.problem()).isEqualTo("is too long");
        assertThat(refusal.given()).hasSize(83);
        assertThat(refusal.position()).hasValue(80);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"65 mph\u0000", "65\u0000 mph", "\u001B[2J65 mph", "65 m\u0007ph", "65 mph\u202E", "65 \u007Fmph"
            })
    void refusesControlCharactersAndDoesNotRepeatThem(String text) {
        RefusedException thrown = catchThrowableOfType(RefusedException.class, () -> Speed.parse(text));

        assertThat(thrown.refusal().given()).isEqualTo(text);
        assertThat(thrown.getMessage().chars()).noneMatch(c -> Character.isISOControl(c) || c == 0x202E);
        assertThat(thrown.getMessage()).containsPattern("\\\\u[0-9A-F]{4}");
    }

    @Test
    void refusesAnImpossibleTemperatureAsTyped() {
        Refusal refusal = refusalOf(Temperature.KIND, " -500 degC");

        assertThat(refusal.sentence())
                .isEqualTo("temperature \" -500 degC\": is below absolute zero;"
                        + " allowed: 0 K, -273.15 degC, -459.67 degF or more");
        assertThat(refusal.position()).hasValue(1);
    }

    @Test
    void listsItsUnits() {
        assertThat(Power.KIND.name()).isEqualTo("power").isEqualTo(Power.KIND.toString());
        assertThat(Power.KIND.siUnit()).isSameAs(Power.WATT);
        assertThat(Power.KIND.units()).startsWith(Power.WATT).contains(Power.HORSEPOWER, Power.METRIC_HORSEPOWER);
        assertThat(Power.KIND.allowed()).isEqualTo("W, kW, hp, PS");
        assertThat(Power.KIND.unit(" HP ")).hasValue(Power.HORSEPOWER);
        assertThat(Power.KIND.unit("rpm")).isEmpty();
    }
}
