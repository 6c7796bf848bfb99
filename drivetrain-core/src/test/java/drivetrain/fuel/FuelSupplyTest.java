package drivetrain.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Assumption;
import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.Voltage;
import drivetrain.quantity.VolumeFlow;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FuelSupplyTest {

    private static FuelSupply with(Pump pump, FuelLine line, double psi) {
        FuelSupply usual = Supplies.supply();
        return new FuelSupply(
                pump,
                line,
                new Regulator(Regulator.Layout.RETURN, Pressure.ofPsi(psi), false),
                usual.fuel(),
                usual.lift(),
                usual.boost(),
                usual.voltage(),
                usual.wire());
    }

    @Test
    void meetsThePumpWhereItsCurveCrossesThatOfTheLines() {
        FuelSupply supply = Supplies.supply();
        SupplyPoint point = supply.capacity().orThrow();
        Pressure needed = supply.held()
                .plus(supply.line().feedLoss(point.flow(), supply.fuel()))
                .plus(supply.liftPressure());
        assertThat(point.added().toPascals()).isCloseTo(needed.toPascals(), within(0.5));
        assertThat(point.flow())
                .isEqualTo(supply.pump().flowAt(point.added(), supply.voltage()).orThrow());
        assertThat(point.rail().toPsi()).isCloseTo(43.5, within(1e-3));
        assertThat(point.lineFlow()).isEqualTo(point.flow());
        assertThat(point.electricPower().orElseThrow().toWatts())
                .isCloseTo(point.current().orElseThrow().toAmperes() * 13.5, within(1e-9));
    }

    @Test
    void linesThatCostNothingGiveTheMost() {
        FuelSupply supply = Supplies.supply();
        VolumeFlow alone = supply.pumpAlone().orThrow();
        assertThat(alone).isGreaterThan(supply.capacity().orThrow().flow());
        assertThat(alone.toLitersPerHour()).isCloseTo(255.0, within(2.0));
    }

    @Test
    void holdsItsPressureWhileTheEngineBurnsLess() {
        FuelSupply supply = Supplies.supply();
        SupplyPoint idle = supply.at(VolumeFlow.ofLitersPerHour(10.0)).orThrow();
        assertThat(idle.rail().toPsi()).isCloseTo(43.5, within(1e-3));
        assertThat(idle.flow()).isEqualTo(supply.capacity().orThrow().flow());
    }

    @Test
    void losesRailPressureWhenTheEngineBurnsMoreThanItDelivers() {
        FuelSupply supply = Supplies.supply();
        SupplyPoint starved = supply.at(VolumeFlow.ofLitersPerHour(275.0)).orThrow();
        assertThat(starved.flow()).isEqualTo(VolumeFlow.ofLitersPerHour(275.0));
        assertThat(starved.rail().toPsi()).isLessThan(30.0);
        assertThat(supply.at(VolumeFlow.ofLitersPerHour(301.0)).reason().orElseThrow())
                .contains(
                        "the pump was measured from 0.0 psi up, where it flows 300 L/h, and the engine would burn more");
    }

    @Test
    void aReturnlessLineCarriesOnlyWhatIsBurnedAndItsLossIsMissingAtTheRail() {
        FuelSupply supply = Supplies.supply(Regulator.Layout.RETURNLESS, 58.0, 13.5, Optional.empty());
        SupplyPoint part = supply.at(VolumeFlow.ofLitersPerHour(100.0)).orThrow();
        assertThat(part.lineFlow()).isEqualTo(VolumeFlow.ofLitersPerHour(100.0));
        assertThat(part.rail().toPsi())
                .isCloseTo(58.0 - part.feedLoss().toPsi() - part.liftPressure().toPsi(), within(1e-3));
        SupplyPoint most = supply.capacity().orThrow();
        assertThat(most.rail()).isLessThan(part.rail());
        SupplyPoint beyond = supply.at(most.flow().times(1.05)).orThrow();
        assertThat(beyond.rail()).isLessThan(most.rail());
        assertThat(supply.pumpAlone().orThrow()).isEqualTo(most.flow());
    }

    @Test
    void wiresBothWaysTakeVoltageAndWithItFlow() {
        FuelSupply bare = Supplies.supply();
        FuelSupply wired = Supplies.supply(
                Regulator.Layout.RETURN, 43.5, 13.5, Optional.of(Wire.ofGauge(Length.ofMeters(5.0), 16)));
        SupplyPoint point = wired.capacity().orThrow();
        double drop = 13.5 - point.voltage().toVolts();
        assertThat(drop)
                .isCloseTo(
                        point.current().orElseThrow().toAmperes()
                                * wired.wire().orElseThrow().ohms(),
                        within(1e-9));
        assertThat(drop).isBetween(0.8, 1.3);
        assertThat(point.flow()).isLessThan(bare.capacity().orThrow().flow().times(0.95));
        assertThat(wired.assumptions(point)).extracting(Assumption::subject).contains("wires of the pump");
        assertThat(bare.assumptions(bare.capacity().orThrow()))
                .anyMatch(one -> one.subject().equals("voltage at the pump") && one.flagged());
    }

    @Test
    void saysThatWiresAreNotCountedWhereNoCurrentWasMeasured() {
        FuelSupply usual = Supplies.supply();
        FuelSupply supply = new FuelSupply(
                Supplies.pump("13.5 V, 280 L/h at 0 psi, 210 L/h at 70 psi"),
                usual.line(),
                usual.regulator(),
                usual.fuel(),
                usual.lift(),
                usual.boost(),
                usual.voltage(),
                Optional.of(Wire.ofGauge(Length.ofMeters(5.0), 16)));
        SupplyPoint point = supply.capacity().orThrow();
        assertThat(point.voltage()).isEqualTo(Voltage.ofVolts(13.5));
        assertThat(point.electricPower()).isEmpty();
        assertThat(supply.assumptions(point)).anyMatch(one -> one.statement().contains("current was not measured"));
    }

    @Test
    void twoPumpsOnOneLineGiveLessThanTwice() {
        double one = Supplies.supply().capacity().orThrow().flow().toLitersPerHour();
        FuelSupply two =
                with(Supplies.pump("2 x " + Supplies.PUMP + " in parallel"), Supplies.line(Supplies.LINE), 43.5);
        double both = two.capacity().orThrow().flow().toLitersPerHour();
        assertThat(both).isGreaterThan(1.3 * one).isLessThan(1.97 * one);
    }

    @Test
    void isNotEvaluatedBeyondThePumpsCurve() {
        Pump pump = Supplies.pump("13.5 V, 280 L/h at 30 psi, 210 L/h at 50 psi");
        assertThat(with(pump, Supplies.line(Supplies.LINE), 58.0).capacity().reason())
                .contains("the pump was measured up to 50.0 psi at this voltage, and here it would have to add more");
        assertThat(with(pump, Supplies.line(Supplies.LINE), 5.0).capacity().reason())
                .contains("the pump was measured from 30.0 psi up, and here it would run below that");
        FuelSupply flat = Supplies.supply(Regulator.Layout.RETURN, 43.5, 10.0, Optional.empty());
        assertThat(flat.capacity().reason().orElseThrow()).contains("too far from that");
        assertThat(flat.at(VolumeFlow.ofLitersPerHour(10.0)).value()).isEmpty();
    }

    @Test
    void deliversNothingAgainstMoreThanThePumpCanAdd() {
        Pump pump = Supplies.pump("13.5 V, 280 L/h at 0 psi, 0 L/h at 40 psi");
        SupplyPoint point =
                with(pump, Supplies.line(Supplies.LINE), 58.0).capacity().orThrow();
        assertThat(point.flow().si()).isZero();
        assertThat(point.rail().toPsi()).isLessThan(40.0);
    }

    @Test
    void aPumpBehindASuctionLineHasToAddItsLossToo() {
        FuelLine suction = Supplies.line("1 m of 8 mm hose, pump, " + Supplies.LINE);
        SupplyPoint point =
                with(Supplies.pump(Supplies.PUMP), suction, 43.5).capacity().orThrow();
        assertThat(point.suctionLoss().si()).isPositive();
        assertThat(point.added().toPascals())
                .isCloseTo(
                        point.rail()
                                .plus(point.feedLoss())
                                .plus(point.suctionLoss())
                                .plus(point.liftPressure())
                                .toPascals(),
                        within(1.0));
    }

    @Test
    void boostRaisesTheRailOnlyWhereTheRegulatorFollowsIt() {
        Pressure boost = Pressure.ofPsi(8.0);
        assertThat(new Regulator(Regulator.Layout.RETURN, Pressure.ofPsi(43.5), true)
                        .held(boost)
                        .toPsi())
                .isCloseTo(51.5, within(1e-9));
        assertThat(new Regulator(Regulator.Layout.RETURN, Pressure.ofPsi(43.5), false)
                        .held(boost)
                        .toPsi())
                .isCloseTo(43.5, within(1e-9));
    }

    @Test
    void explainsItself() {
        FuelSupply supply = Supplies.supply(
                Regulator.Layout.RETURN, 43.5, 13.5, Optional.of(Wire.ofGauge(Length.ofMeters(5.0), 12)));
        assertThat(supply.working(supply.capacity().orThrow()).steps())
                .extracting(step -> step.name())
                .contains("voltage at the pump", "flow of the pump", "loss in the feed line", "pressure in the rail");
        assertThat(supply.working(supply.capacity().orThrow()).sources()).isNotEmpty();
    }
}
