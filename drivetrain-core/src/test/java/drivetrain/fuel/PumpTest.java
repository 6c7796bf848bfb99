package drivetrain.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Assumption;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Voltage;
import drivetrain.refusal.Refusal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PumpTest {

    private static final String TWO_CURVES =
            "12 V, 260 L/h at 0 psi 4 A, 180 L/h at 60 psi 8 A," + " 14 V, 310 L/h at 0 psi 5 A, 230 L/h at 60 psi 9 A";

    private static double litersPerHour(Pump pump, double psi, double volts) {
        return pump.flowAt(Pressure.ofPsi(psi), Voltage.ofVolts(volts))
                .orThrow()
                .toLitersPerHour();
    }

    private static double amperes(Pump pump, double psi, double volts) {
        return pump.currentAt(Pressure.ofPsi(psi), Voltage.ofVolts(volts))
                .orThrow()
                .toAmperes();
    }

    @Test
    void liesOnTheStraightLineBetweenTwoPoints() {
        Pump pump = Supplies.pump(Supplies.PUMP);
        assertThat(litersPerHour(pump, 43.5, 13.5)).isCloseTo(255.0, within(1e-9));
        assertThat(litersPerHour(pump, 21.75, 13.5)).isCloseTo(277.5, within(1e-9));
        assertThat(litersPerHour(pump, 59.25, 13.5)).isCloseTo(227.5, within(1e-9));
        assertThat(amperes(pump, 21.75, 13.5)).isCloseTo(6.5, within(1e-9));
    }

    @Test
    void isNeverExtrapolatedBeyondItsCurve() {
        Pump pump = Supplies.pump("13.5 V, 280 L/h at 30 psi, 210 L/h at 70 psi");
        assertThat(pump.flowAt(Pressure.ofPsi(29.9), Voltage.ofVolts(13.5)).reason())
                .contains(
                        "the pump was measured from 30.0 psi to 70.0 psi at 13.5 V, and it would have to add 29.9 psi");
        assertThat(pump.flowAt(Pressure.ofPsi(70.1), Voltage.ofVolts(13.5)).value())
                .isEmpty();
        assertThat(pump.currentAt(Pressure.ofPsi(50.0), Voltage.ofVolts(13.5)).reason())
                .contains("the pump's current was not measured there");
    }

    @Test
    void givesNothingAboveAPressureAtWhichItGivesNothing() {
        Pump pump = Supplies.pump("13.5 V, 280 L/h at 30 psi, 0 L/h at 90 psi");
        assertThat(litersPerHour(pump, 120.0, 13.5)).isZero();
        assertThat(pump.band(Voltage.ofVolts(13.5)).orThrow().endsAtNoFlow()).isTrue();
    }

    @Test
    void followsSimilarityInFlowAndPressure() {
        Pump pump = Supplies.pump(Supplies.PUMP);
        double r = 12.0 / 13.5;
        assertThat(litersPerHour(pump, 43.5 * r * r, 12.0)).isCloseTo(255.0 * r, within(1e-9));
        assertThat(litersPerHour(pump, 43.5, 12.0)).isLessThan(255.0 * r);
        assertThat(amperes(pump, 43.5 * r * r, 12.0)).isCloseTo(8.0 * r * r, within(1e-9));
        assertThat(pump.assumptionsAt(Voltage.ofVolts(12.0))).singleElement().matches(Assumption::flagged);
        assertThat(pump.assumptionsAt(Voltage.ofVolts(13.5))).isEmpty();
    }

    @Test
    void isNotCarriedFarFromItsVoltage() {
        Pump pump = Supplies.pump(Supplies.PUMP);
        assertThat(pump.flowAt(Pressure.ofPsi(20.0), Voltage.ofVolts(11.0)).reason())
                .contains("the pump was measured at 13.5 V and 11.0 V is too far from that");
        assertThat(pump.band(Voltage.ofVolts(16.0)).value()).isEmpty();
        assertThat(pump.flowAt(Pressure.ofPsi(20.0), Voltage.ofVolts(0.0)).reason())
                .contains("no voltage is left at the pump");
    }

    @Test
    void blendsTwoMeasuredCurves() {
        Pump pump = Supplies.pump(TWO_CURVES);
        assertThat(litersPerHour(pump, 30.0, 12.0)).isCloseTo(220.0, within(1e-9));
        assertThat(litersPerHour(pump, 30.0, 14.0)).isCloseTo(270.0, within(1e-9));
        assertThat(litersPerHour(pump, 30.0, 13.0)).isCloseTo(245.0, within(1e-9));
        assertThat(litersPerHour(pump, 30.0, 12.0 + 1e-9)).isCloseTo(220.0, within(1e-6));
        assertThat(litersPerHour(pump, 30.0, 14.0 - 1e-9)).isCloseTo(270.0, within(1e-6));
        assertThat(pump.assumptionsAt(Voltage.ofVolts(13.0))).singleElement().matches(one -> !one.flagged());
        assertThat(pump.flowAt(Pressure.ofPsi(20.0), Voltage.ofVolts(9.0))
                        .reason()
                        .orElseThrow())
                .contains("12.0 V to 14.0 V");
    }

    @Test
    void twoSideBySideGiveTwiceTheFlowAtOnePressure() {
        Pump two = Supplies.pump("2 x " + Supplies.PUMP + " in parallel");
        assertThat(two.count()).isEqualTo(2);
        assertThat(litersPerHour(two, 43.5, 13.5)).isCloseTo(510.0, within(1e-9));
        assertThat(amperes(two, 43.5, 13.5)).isCloseTo(16.0, within(1e-9));
        assertThat(two.assumptionsAt(Voltage.ofVolts(13.5)))
                .extracting(Assumption::subject)
                .containsExactly("pumps in parallel");
    }

    @Test
    void twoOneBehindTheOtherAddTheirPressures() {
        Pump two = Supplies.pump("2 x " + Supplies.PUMP + " in series");
        assertThat(litersPerHour(two, 87.0, 13.5)).isCloseTo(255.0, within(1e-6));
        assertThat(amperes(two, 87.0, 13.5)).isCloseTo(16.0, within(1e-6));
        assertThat(litersPerHour(two, 150.0, 13.5)).isCloseTo(200.0, within(1e-6));
        assertThat(two.flowAt(Pressure.ofPsi(151.0), Voltage.ofVolts(13.5))
                        .reason()
                        .orElseThrow())
                .contains("in series were measured for 0.0 psi to 150.0 psi together");
        assertThat(two.band(Voltage.ofVolts(13.5)).orThrow().highest().toPsi()).isCloseTo(150.0, within(1e-6));
    }

    @Test
    void aLiftPumpHelpsAPressurePump() {
        Pump pair = Supplies.pump(
                "13.5 V, 300 L/h at 0 psi, 150 L/h at 10 psi + 13.5 V, 260 L/h at 30 psi, 200 L/h at 70 psi in series");
        double alone = litersPerHour(Supplies.pump("13.5 V, 260 L/h at 30 psi, 200 L/h at 70 psi"), 50.0, 13.5);
        assertThat(litersPerHour(pair, 50.0, 13.5)).isGreaterThan(alone);
    }

    @Test
    void pumpsThatShareNoFlowDoNotWorkInSeries() {
        Pump pair = Supplies.pump(
                "13.5 V, 100 L/h at 0 psi, 90 L/h at 10 psi + 13.5 V, 260 L/h at 30 psi, 200 L/h at 70 psi in series");
        assertThat(pair.flowAt(Pressure.ofPsi(40.0), Voltage.ofVolts(13.5)).reason())
                .contains("the pumps in series were not measured at a flow that they have in common");
        assertThat(pair.band(Voltage.ofVolts(13.5)).value()).isEmpty();
    }

    @Test
    void parallelPumpsShareThePressuresThatAllWereMeasuredAt() {
        String ends = "13.5 V, 280 L/h at 30 psi, 0 L/h at 90 psi";
        String open = "13.5 V, 260 L/h at 20 psi, 200 L/h at 70 psi";
        PressureBand band = Supplies.pump(ends + " + " + open + " in parallel")
                .band(Voltage.ofVolts(13.5))
                .orThrow();
        assertThat(band.lowest().toPsi()).isCloseTo(30.0, within(1e-9));
        assertThat(band.highest().toPsi()).isCloseTo(70.0, within(1e-9));
        assertThat(Supplies.pump("2 x " + ends + " in parallel")
                        .band(Voltage.ofVolts(13.5))
                        .orThrow()
                        .highest()
                        .toPsi())
                .isCloseTo(90.0, within(1e-9));
    }

    @Test
    void findsPumpsOnTheShelf() {
        Pump known = Supplies.pump(Supplies.PUMP);
        Pump set = Pump.parse(
                "2 x in-tank-255 in parallel",
                name -> name.equals("in-tank-255") ? Optional.of(known) : Optional.empty());
        assertThat(set.name()).isEqualTo("2 x in-tank-255 in parallel");
        assertThat(litersPerHour(set, 43.5, 13.5)).isCloseTo(510.0, within(1e-9));
        Refusal refusal = Supplies.refused(() -> Pump.parse("2 x in-tank-340 in parallel", name -> Optional.empty()));
        assertThat(refusal.problem()).isEqualTo("\"in-tank-340\" is not a pump on the shelf");
        assertThat(refusal.position()).hasValue(4);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "255 L/h at 40 psi, 200 L/h at 60 psi|0|says not at which voltage",
                "13.5 V|0|has 0 points",
                "13.5 V, 255 L/h at 40 psi|0|has 1 point",
                "13.5 V, 255 L/h at 40 psi, 200 L/h at 40 psi|0|does not follow a lower pressure",
                "13.5 V, 255 L/h at 40 psi, 300 L/h at 60 psi|0|has more flow than at a lower pressure",
                "13.5 V, 255 L/h at 40 psi 8 A, 200 L/h at 60 psi|0|have not both a current",
                "13.5 V, 255 L/h at 40 psi, 200 L/h|34|says not at which pressure",
                "13.5 V, 255 gph at 40 psi|12|can mean more than one unit",
                "13.5 V, 400 lb/h at 40 psi|12|is a unit of mass flow",
                "13.5 V, 255 L/h at -4 psi, 200 L/h at 40 psi|19|is out of range",
                "3 V, 255 L/h at 0 psi, 200 L/h at 40 psi|0|is out of range",
                "13.5 V, 255 L/h at 0 psi, 200 L/h at 40 psi, 12 V, 255 L/h at 0 psi, 200 L/h at 40 psi|0|does not follow a lower voltage",
                "9 x big in parallel|0|has 9 pumps",
                "big in series|0|is not a pump on the shelf",
                "1 x 13.5 V, 255 L/h at 0 psi, 200 L/h at 40 psi in series|0|has 1 pump in series",
                "13.5 V, 255 L/h at 0 psi loud|25|is not understood"
            })
    void refusesWhatItCannotReadWithThePlace(String text, int position, String problem) {
        Refusal refusal = Supplies.refused(() -> Supplies.pump(text));
        assertThat(refusal.subject()).isEqualTo("pump");
        assertThat(refusal.problem()).contains(problem);
        assertThat(refusal.position()).hasValue(position);
    }

    @Test
    void isNamedByItsText() {
        assertThat(Supplies.pump(" " + Supplies.PUMP + " ").name()).isEqualTo(Supplies.PUMP);
    }
}
