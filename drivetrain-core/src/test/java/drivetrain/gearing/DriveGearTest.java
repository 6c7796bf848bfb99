package drivetrain.gearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import drivetrain.finding.Assumption;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Length;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Torque;
import drivetrain.quantity.UnitSystem;
import drivetrain.refusal.RefusedException;
import org.junit.jupiter.api.Test;

class DriveGearTest {

    private static final Length RADIUS = Length.ofMillimeters(400.0);
    private static final Torque TORQUE = Torque.ofNewtonMeters(500.0);

    private final GearTrain fiveSpeed = Trains.fiveSpeed();

    @Test
    void goesFromEngineSpeedToRoadSpeedAndBackInEveryGear() {
        AngularSpeed engine = AngularSpeed.ofRpm(2750.0);
        for (DriveGear gear :
                Trains.with(Overdrive.parse("0.78"), HubReduction.parse("1.5")).gears()) {
            Speed speed = gear.speedAt(engine, RADIUS);
            assertThat(gear.engineSpeedAt(speed, RADIUS).toRpm()).isCloseTo(2750.0, within(1e-9));
        }
    }

    @Test
    void turnsTheWheelOncePerTotalRatio() {
        DriveGear direct = fiveSpeed.gear(4, Range.HIGH).orElseThrow();
        Speed speed = direct.speedAt(AngularSpeed.ofRpm(2400.0), RADIUS);
        assertThat(speed.toMetersPerSecond()).isCloseTo(600.0 / 60.0 * 2.0 * Math.PI * 0.4, within(1e-9));
    }

    @Test
    void refusesARadiusOfZero() {
        DriveGear gear = fiveSpeed.top();
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> gear.engineSpeedAt(Speed.ofMilesPerHour(65.0), Length.ofMeters(0.0)));
    }

    @Test
    void turnsTheDriveshaftFasterThanTheEngineWhenOverdriven() {
        AngularSpeed engine = AngularSpeed.ofRpm(2000.0);
        assertThat(fiveSpeed.top().driveshaftSpeedAt(engine).toRpm()).isCloseTo(2500.0, within(1e-9));
        assertThat(fiveSpeed
                        .gear(4, Range.LOW)
                        .orElseThrow()
                        .driveshaftSpeedAt(engine)
                        .toRpm())
                .isCloseTo(800.0, within(1e-9));
    }

    @Test
    void losesTorqueStageByStage() {
        DriveGear gear = fiveSpeed.gear(1, Range.LOW).orElseThrow();
        double box = 500.0 * 4.5 * 0.95;
        assertThat(gear.transmissionOutputTorque(TORQUE).toNewtonMeters()).isCloseTo(box, within(1e-9));
        assertThat(gear.driveshaftTorque(TORQUE).toNewtonMeters()).isCloseTo(box * 2.5 * 0.98, within(1e-9));
        assertThat(gear.halfShaftTorque(TORQUE).toNewtonMeters())
                .isCloseTo(box * 2.5 * 0.98 * 4.0 * 0.96, within(1e-9));
        assertThat(gear.wheelTorque(TORQUE)).isEqualTo(gear.halfShaftTorque(TORQUE));
        assertThat(gear.efficiency()).isCloseTo(0.95 * 0.98 * 0.96, within(1e-12));
        assertThat(gear.efficiencyAssumptions()).isEmpty();
    }

    @Test
    void raisesTorqueBehindTheHalfShaftsOnlyByHubReduction() {
        GearTrain plain = Trains.with(Overdrive.none(), HubReduction.none());
        GearTrain portal = Trains.with(Overdrive.none(), HubReduction.parse("1.5 efficiency 98 %"));
        DriveGear without = plain.lowest();
        DriveGear with = portal.lowest();
        assertThat(with.halfShaftTorque(TORQUE)).isEqualTo(without.halfShaftTorque(TORQUE));
        assertThat(with.driveshaftTorque(TORQUE)).isEqualTo(without.driveshaftTorque(TORQUE));
        assertThat(with.wheelTorque(TORQUE).ratioTo(without.wheelTorque(TORQUE)))
                .isCloseTo(1.5 * 0.98, within(1e-12));
    }

    @Test
    void flagsEveryDefaultEfficiency() {
        DriveGear gear = Trains.with(Overdrive.parse("0.78"), HubReduction.parse("1.5"))
                .gear(2, Range.LOW, true)
                .orElseThrow();
        assertThat(gear.efficiencyAssumptions())
                .allMatch(Assumption::flagged)
                .extracting(Assumption::subject)
                .containsExactly(
                        "efficiency of automatic-gear",
                        "efficiency of auxiliary-gear",
                        "efficiency of transfer-gear",
                        "efficiency of hypoid-axle",
                        "efficiency of hub-reduction");
    }

    @Test
    void takesTheDirectDefaultAtARatioOfExactlyOne() {
        GearTrain manual = new GearTrain(
                Transmission.parse("3.00 1.00 reverse 1.00"),
                Overdrive.parse("0.78"),
                TransferCase.parse("1.00"),
                AxleRatio.parse("41/10"),
                HubReduction.none());
        assertThat(manual.gear(2, Range.HIGH).orElseThrow().efficiencyAssumptions())
                .extracting(Assumption::subject)
                .containsExactly(
                        "efficiency of manual-direct",
                        "efficiency of auxiliary-direct",
                        "efficiency of transfer-direct",
                        "efficiency of hypoid-axle");
        assertThat(manual.gear(0, Range.HIGH).orElseThrow().efficiencyAssumptions())
                .first()
                .extracting(Assumption::subject)
                .isEqualTo("efficiency of manual-gear");
        GearTrain automatic = new GearTrain(
                Transmission.parse("3.00 1.00 reverse 2.00 converter"),
                Overdrive.none(),
                TransferCase.none(),
                AxleRatio.parse("41/10"),
                HubReduction.none());
        assertThat(automatic.gear(2, Range.HIGH).orElseThrow().efficiencyAssumptions())
                .extracting(Assumption::subject)
                .containsExactly("efficiency of automatic-direct", "efficiency of hypoid-axle");
        assertThat(automatic.gear(0, Range.HIGH).orElseThrow().efficiencyAssumptions())
                .first()
                .extracting(Assumption::subject)
                .isEqualTo("efficiency of automatic-gear");
    }

    @Test
    void explainsTheEngineSpeed() {
        DriveGear gear = Trains.with(Overdrive.none(), HubReduction.none()).top();
        Working working = gear.engineSpeedWorking(Speed.ofMilesPerHour(65.0), RADIUS);
        assertThat(working.question()).isEqualTo("engine speed in 6th high");
        assertThat(working.inputs()).extracting(Working.Input::symbol).containsExactly("i_g", "i_r", "i_x", "v", "r");
        assertThat(working.inputs()).extracting(Working.Input::origin).contains("axle 41/10", "given");
        assertThat(working.steps())
                .extracting(Working.Step::formula)
                .containsExactly("i = i_g x i_r x i_x", "n_w = v / (2 pi r)", "n_e = n_w i");
        assertThat(last(working))
                .isEqualTo(
                        gear.engineSpeedAt(Speed.ofMilesPerHour(65.0), RADIUS).toRpm());
        assertThat(working.sources()).isNotEmpty();
    }

    @Test
    void explainsTheRoadSpeedTheShaftSpeedAndTheRatio() {
        AngularSpeed engine = AngularSpeed.ofRpm(2000.0);
        DriveGear gear =
                Trains.with(Overdrive.parse("0.78"), HubReduction.parse("1.5")).lowest();
        assertThat(last(gear.speedWorking(engine, RADIUS)))
                .isCloseTo(gear.speedAt(engine, RADIUS).toMilesPerHour(), within(1e-9));
        assertThat(last(gear.driveshaftSpeedWorking(engine)))
                .isCloseTo(gear.driveshaftSpeedAt(engine).toRpm(), within(1e-9));
        assertThat(gear.driveshaftSpeedWorking(engine).inputs())
                .extracting(Working.Input::symbol)
                .doesNotContain("i_x", "i_h");
        assertThat(last(gear.totalRatioWorking())).isEqualTo(gear.totalRatio());
        assertThat(gear.totalRatioWorking().steps().get(0).formula()).isEqualTo("i = i_g x i_a x i_r x i_x x i_h");
    }

    @Test
    void explainsTheWheelTorque() {
        DriveGear gear =
                Trains.with(Overdrive.none(), HubReduction.parse("1.5")).lowest();
        Working working = gear.wheelTorqueWorking(TORQUE);
        assertThat(last(working)).isEqualTo(gear.wheelTorque(TORQUE).toPoundFeet());
        assertThat(working.inputs())
                .extracting(Working.Input::origin)
                .contains("default", "transfer case 1.00 2.72 part-time");
        assertThat(working.steps())
                .extracting(Working.Step::formula)
                .containsExactly("T_s = T_e x i_g x i_r x e_g x e_r", "T_x = T_s x i_x x e_x", "T_w = T_x x i_h x e_h");
        assertThat(fiveSpeed.lowest().wheelTorqueWorking(TORQUE).steps())
                .last()
                .extracting(Working.Step::formula)
                .isEqualTo("T_w = T_x");
    }

    private static double last(Working working) {
        return working.steps().get(working.steps().size() - 1).result().number(UnitSystem.US);
    }
}
