package drivetrain.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Assumption;
import drivetrain.quantity.Length;
import drivetrain.quantity.Pressure;
import drivetrain.quantity.VolumeFlow;
import drivetrain.refusal.Refusal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FuelLineTest {

    private static final VolumeFlow FLOW = VolumeFlow.ofLitersPerHour(250.0);

    @Test
    void readsThePiecesInTheOrderOfTheFlow() {
        FuelLine line = Supplies.line(
                "1 bend, 0.5 m of 12.7 mm hose, pump, 4.5 m of 3/8 in tube, filter 8 kPa at 200 L/h, 2 elbows");
        assertThat(line.pumpPlaced()).isTrue();
        assertThat(line.suction()).hasSize(2);
        assertThat(line.suction().get(0))
                .isEqualTo(new LinePiece.Fittings(FittingKind.BEND, 1, Length.ofMillimeters(12.7)));
        assertThat(line.feed()).hasSize(3);
        assertThat(line.feed().get(2)).isEqualTo(new LinePiece.Fittings(FittingKind.ELBOW, 2, Length.ofInches(0.375)));
        assertThat(line.length().toMeters()).isCloseTo(5.0, within(1e-12));
        assertThat(line.suctionRuns()).hasSize(1);
    }

    @Test
    void hasThePumpInTheTankUnlessItSaysOtherwise() {
        FuelLine line = Supplies.line("4.5 m of 8 mm tube");
        assertThat(line.suction()).isEmpty();
        assertThat(line.assumptions(FLOW, Supplies.gasoline()))
                .extracting(Assumption::subject)
                .contains("place of the pump");
    }

    @Test
    void addsTheLossesOfItsPieces() {
        FlowingFuel fuel = Supplies.gasoline();
        Pressure run = Supplies.line("2 m of 8 mm tube").feedLoss(FLOW, fuel);
        assertThat(Supplies.line("1 m of 8 mm tube, 1 m of 8 mm tube")
                        .feedLoss(FLOW, fuel)
                        .si())
                .isCloseTo(run.si(), within(1e-9));
        double speed = FLOW.toCubicMetersPerSecond() / (Math.PI / 4.0 * 0.008 * 0.008);
        double dynamic = fuel.density().toKilogramsPerCubicMeter() * speed * speed / 2.0;
        assertThat(Supplies.line("2 m of 8 mm tube, 4 elbows")
                        .feedLoss(FLOW, fuel)
                        .minus(run)
                        .si())
                .isCloseTo(4 * 0.9 * dynamic, within(1e-6));
        assertThat(Supplies.line("2 m of 8 mm tube, filter 8 kPa at 200 L/h")
                        .feedLoss(FLOW, fuel)
                        .minus(run)
                        .toKilopascals())
                .isCloseTo(10.0, within(1e-9));
    }

    @Test
    void costsNothingAtRest() {
        assertThat(Supplies.line(Supplies.LINE)
                        .feedLoss(VolumeFlow.ofLitersPerHour(0.0), Supplies.gasoline())
                        .si())
                .isZero();
    }

    @Test
    void frictionRisesSteadilyThroughTheGapBetweenLaminarAndTurbulent() {
        double before = 0.0;
        for (double reynolds = 1000.0; reynolds < 6000.0; reynolds += 10.0) {
            double loss = PipeFlow.frictionFactor(reynolds, 1e-3) * reynolds * reynolds;
            assertThat(loss).isGreaterThan(before);
            before = loss;
        }
        assertThat(PipeFlow.isUncertain(3000.0)).isTrue();
        assertThat(PipeFlow.isUncertain(2300.0)).isFalse();
        assertThat(PipeFlow.isUncertain(4000.0)).isFalse();
    }

    @Test
    void flagsAFlowBetweenLaminarAndTurbulent() {
        FuelLine line = Supplies.line("2 m of 8 mm tube");
        assertThat(line.assumptions(VolumeFlow.ofLitersPerHour(40.0), Supplies.gasoline()))
                .anyMatch(one -> one.subject().equals("flow between laminar and turbulent") && one.flagged());
        assertThat(line.assumptions(FLOW, Supplies.gasoline()))
                .noneMatch(one -> one.subject().equals("flow between laminar and turbulent"));
    }

    @Test
    void findsHosesAndFiltersOnTheShelf() {
        Conduit hose = new Conduit(
                "hose-8", Conduit.Material.HOSE, Length.ofMillimeters(7.9), Optional.of(Pressure.ofBar(10.0)));
        FuelFilter filter = FuelFilter.parse("8 kPa at 200 L/h");
        FuelLine.Shelves shelves = new FuelLine.Shelves(
                name -> name.equals("hose-8") ? Optional.of(hose) : Optional.empty(),
                name -> name.equals("fine-10") ? Optional.of(filter) : Optional.empty());
        FuelLine line = FuelLine.parse("2 m of hose-8, filter fine-10", shelves);
        assertThat(line.feedRuns().get(0).conduit()).isEqualTo(hose);
        assertThat(line.feed().get(1)).isEqualTo(new LinePiece.Filtered(filter));
        assertThat(Supplies.refused(() -> FuelLine.parse("2 m of hose-9", shelves))
                        .position())
                .hasValue(7);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "filter 8 kPa at 200 L/h|0|has no run",
                "pump, 2 m of 8 mm tube, pump|24|places the pump twice",
                "2 elbows, pump, 2 m of 8 mm tube|10|belong to no run",
                "2 m 8 mm tube|4|says not what this length is of",
                "2 m of -6 hose|7|is a dash size",
                "2 m of 8 mm|11|says not whether it is a tube or a hose",
                "2 m of 8 mm pipe|12|says not whether it is a tube or a hose",
                "2 m of 1 mm tube|7|is out of range",
                "200 m of 8 mm tube|0|is out of range",
                "2 m of silver|7|is not a tube or hose on the shelf",
                "2 m of 8 mm tube, 50 elbows|18|is out of range",
                "2 m of 8 mm tube, 2 valves|20|is not a fitting",
                "2 m of 8 mm tube, filter big|25|is not a filter on the shelf",
                "2 m of 8 mm tube, filter 8 kPa|30|says not at which flow",
                "2 m of 8 mm tube, filter 8 gal at 2 L/h|27|is not a unit of pressure",
                "2 m of 8 mm tube, valve|18|is not understood",
                "2 m of 8 mm tube,|16|separates nothing"
            })
    void refusesWhatItCannotReadWithThePlace(String text, int position, String problem) {
        Refusal refusal = Supplies.refused(() -> Supplies.line(text));
        assertThat(refusal.subject()).isEqualTo("fuel line");
        assertThat(refusal.problem()).contains(problem);
        assertThat(refusal.position()).hasValue(position);
    }

    @Test
    void readsATubeOrAHoseAlone() {
        assertThat(Conduit.parse("3/8 in hose").bore()).isEqualTo(Length.ofInches(0.375));
        assertThat(Conduit.parse("8 mm bore tube").material()).isEqualTo(Conduit.Material.TUBE);
        assertThat(Supplies.refused(() -> Conduit.parse("8 mm hose, red")).problem())
                .contains("is not understood");
        assertThat(Supplies.refused(() -> FuelFilter.parse("8 kPa at 200 L/h, red"))
                        .problem())
                .contains("is not understood");
        assertThat(FuelFilter.parse("filter 8 kPa at 200 L/h").lossAt(FLOW).toKilopascals())
                .isCloseTo(10.0, within(1e-9));
    }
}
