package drivetrain.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import drivetrain.quantity.Power;
import drivetrain.quantity.Volume;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EngineLiteralTest {

    private static final String PEAKS = "420 hp at 5700 rpm, 460 lb-ft at 4100 rpm, idle 650 rpm, max 6600 rpm";

    @Test
    void readsBothPeaks() {
        Engine engine = Engine.parse(PEAKS);
        assertThat(engine.torque()).isInstanceOf(PeakEstimate.class);
        assertThat(engine.peakPower().orThrow().power().toHorsepower())
                .isCloseTo(420.0, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(engine.peakTorque().orThrow().speed().toRpm()).isEqualTo(4100.0);
        assertThat(engine.idle().orElseThrow().toRpm()).isEqualTo(650.0);
        assertThat(engine.maximumSpeed().toRpm()).isEqualTo(6600.0);
        assertThat(engine.aspiration()).isEqualTo(Aspiration.NATURAL);
        assertThat(engine.text()).isEqualTo(PEAKS);
        assertThat(engine.name()).isEqualTo(PEAKS);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "max 6600 rpm idle 650 rpm 460 lb-ft at 4100 rpm 420 hp at 5700 rpm",
                "460 ft-lb @ 4100rpm; 420HP@5700rpm; MAX 6600 RPM; Idle 650 rpm",
                "  420 hp at 5700 rpm,460 lb ft at 4100 rpm,idle speed 650 rpm,maximum speed 6600 rpm  ",
                "420 hp at 5700 rpm, 460 lbf\u00B7ft at 4100 rpm, idle 650 r/min, redline 6600 rpm, net, at crank, spark, naturally aspirated"
            })
    void forgivesOrderCaseCommasAndSpellings(String text) {
        assertThat(Engine.parse(text)).isEqualTo(Engine.parse(PEAKS));
    }

    @Test
    void readsACurveAndAStatedPower() {
        Engine engine = Engine.parse(
                "310 lb-ft at 1000 rpm, 460 lb-ft at 4100 rpm, 387 lb-ft at 5700 rpm, 420 hp, max 5700 rpm, 6.2 L, supercharged, gross");
        assertThat(engine.torque()).isInstanceOf(TorqueCurve.class);
        assertThat(engine.statedPower()).contains(Power.ofHorsepower(420));
        assertThat(engine.displacement()).contains(Volume.ofLiters(6.2));
        assertThat(engine.aspiration()).isEqualTo(Aspiration.SUPERCHARGED);
        assertThat(engine.rating()).isEqualTo(Rating.GROSS);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "max 5000 rpm",
                "180 kW at 4000 rpm, 580 Nm at 1500 rpm, max 4200 rpm, turbocharged, diesel",
                "150 PS at 3600 rpm, 400 Nm at 1600 rpm, max 4000 rpm, 2.5 L, turbocharged, diesel, gross, wheels",
                "200 hp at wheels max 5000 rpm",
                "200 hp wheels 350 cu in max 5000 rpm",
                "123.456789 kW at 4321.0987 rpm, 456.789123 Nm at 2345.67891 rpm, max 5432.1 rpm",
                "max 523.5987755982989 rad/s",
                "0.1 Nm at 1 rpm 1e2 Nm at 2 rpm 1e5 Nm at 3 rpm max 30000 rpm"
            })
    void textReadsBackAsTheSameEngine(String text) {
        Engine engine = Engine.parse(text);
        assertThat(Engine.parse(engine.text())).isEqualTo(engine);
        assertThat(Engine.parse(engine.text()).text()).isEqualTo(engine.text());
    }

    /** Text, index of the fault, part of the sentence. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | 0 | is empty",
                "' , ' | 0 | is empty",
                "420 hp at 5700 rpm | 18 | has no maximum speed",
                "420 hpp at 5700 rpm | 4 | \"hpp\" is not a unit",
                "420 | 3 | has a number without a unit",
                "4,5 hp max 5000 rpm | 1 | has a comma",
                "420 hp at 5700 rpm, max 6000 rpm | 0 | has a power with its speed and 0 torques",
                "420 hp at 5700 rpm, 3 Nm at 1 rpm, 4 Nm at 2 rpm, max 6000 rpm | 0 | and 2 torques",
                "460 lb-ft, max 6000 rpm | 9 | says not at which speed 460 lb-ft is made",
                "460 lb-ft at max 6000 rpm | 13 | has no engine speed behind \"at\"",
                "460 lb-ft at | 12 | has no engine speed behind \"at\"",
                "idle 650, max 6000 rpm | 8 | has a number without a unit",
                "idle 650 hp, max 6000 rpm | 5 | has no engine speed behind \"idle\"",
                "3000 rpm, max 6000 rpm | 0 | says not which speed 3000 rpm is",
                "at max 6000 rpm | 0 | has \"at\" out of place",
                "aspirated max 6000 rpm | 0 | out of place",
                "max 6000 rpm, max 7000 rpm | 14 | gives a maximum speed twice",
                "max 6000 rpm, diesel spark | 21 | gives an ignition twice",
                "max 6000 rpm, net gross | 18 | gives a rating twice",
                "max 6000 rpm, 300 hp 301 hp | 21 | gives a stated power twice",
                "max 6000 rpm, turbo supercharged | 20 | gives an aspiration twice",
                "max 6000 rpm, 5 L, 6 L | 19 | gives a displacement twice",
                "max 6000 rpm, big | 14 | says nothing of an engine",
                "max 90000 rpm | 4 | maximum speed \"90000 rpm\" is out of range",
                "idle 7000 rpm max 6000 rpm | 0 | is not below the maximum speed",
                "500 hp at 4000 rpm, 400 lb-ft at 3000 rpm, max 6000 rpm | 0 | more than the peak torque",
                "5 Nm at 3 rpm 6 Nm at 2 rpm 7 Nm at 9 rpm max 50 rpm | 0 | is not in order",
                "max 1e999 rpm | 4 | is too large a number",
                "max -5 rpm | 4 | is out of range",
                "max 6000 rpm, 5 gal | 16 | \"gal\" is not a unit"
            })
    void refusesWithThePlaceOfTheFault(String text, int index, String part) {
        Refusal refusal = refusal(text);
        assertThat(refusal.problem()).contains(part);
        assertThat(refusal.position()).hasValue(index);
        assertThat(refusal.given()).isEqualTo(text);
        assertThat(refusal.allowed()).isNotEmpty();
    }

    @Test
    void suggestsANearWordAndANearUnit() {
        assertThat(refusal("max 6000 rpm supercharge").suggestions()).containsExactly("supercharged");
        assertThat(refusal("420 hpp max 6000 rpm").suggestions()).contains("hp");
        assertThat(refusal("max 6000 rpm xyzzy").suggestions()).isEmpty();
    }

    @Test
    void refusesAVeryLongText() {
        assertThat(refusal("max 6000 rpm " + " ".repeat(40_000)).problem()).isEqualTo("is too long");
    }

    private static Refusal refusal(String text) {
        RefusedException thrown = catchThrowableOfType(RefusedException.class, () -> Engine.parse(text));
        assertThat(thrown).as("refusal of %s", text).isNotNull();
        return thrown.refusal();
    }
}
