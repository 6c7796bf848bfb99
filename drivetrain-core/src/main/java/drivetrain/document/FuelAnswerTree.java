package drivetrain.document;

import drivetrain.assessment.SupplyAnswer;
import drivetrain.assessment.TankAnswer;
import drivetrain.fuel.SupplyPoint;
import drivetrain.quantity.Display;

/** Writes the figures of the answers about fuel. */
final class FuelAnswerTree {

    private FuelAnswerTree() {}

    static void supply(FigureTree tree, SupplyAnswer answer) {
        tree.with("voltage", answer.supply().voltage(), Display.VOLTAGE)
                .with("peakPower", answer.peak().power(), Display.POWER)
                .with("demandByMass", answer.demand().mass(), Display.MASS_FLOW)
                .with("demandByVolume", answer.demand().volume(), Display.VOLUME_FLOW)
                .with("margin", answer.margin())
                .withOutcome("capacity", answer.capacity(), FuelAnswerTree::point)
                .withOutcome("atPeak", answer.atPeak(), FuelAnswerTree::point)
                .withList(
                        "runsOut",
                        answer.parts(),
                        (into, part) -> into.with("part", part.part().label())
                                .withOutcome("power", part.power(), Display.POWER))
                .withList(
                        "overSpeed",
                        answer.rows(),
                        (into, row) -> into.with("engineSpeed", row.speed(), Display.ROTATION)
                                .with("power", row.power(), Display.POWER)
                                .with("demand", row.demand(), Display.VOLUME_FLOW));
    }

    private static void point(FigureTree tree, SupplyPoint point) {
        tree.with("pumpFlow", point.flow(), Display.VOLUME_FLOW)
                .with("lineFlow", point.lineFlow(), Display.VOLUME_FLOW)
                .with("pumpPressure", point.added(), Display.GAUGE_PRESSURE)
                .with("railPressure", point.rail(), Display.GAUGE_PRESSURE)
                .with("feedLoss", point.feedLoss(), Display.GAUGE_PRESSURE)
                .with("suctionLoss", point.suctionLoss(), Display.GAUGE_PRESSURE)
                .with("pumpVoltage", point.voltage(), Display.VOLTAGE)
                .withOptional(
                        "pumpCurrent",
                        point.current(),
                        (into, amperes) -> into.with("pumpCurrent", amperes, Display.CURRENT));
    }

    static void tank(FigureTree tree, TankAnswer answer) {
        tree.with("volume", answer.tank().volume(), Display.TANK_VOLUME)
                .with("burnable", answer.tank().burnable(), Display.TANK_VOLUME)
                .withOutcome(
                        "range",
                        answer.range(),
                        (into, far) -> into.with("speed", far.speed(), Display.ROAD_SPEED)
                                .with("power", far.power(), Display.POWER)
                                .with("leastFlow", far.least(), Display.VOLUME_FLOW)
                                .with("mostFlow", far.most(), Display.VOLUME_FLOW)
                                .with("shortest", far.shortest(), Display.ROAD_DISTANCE)
                                .with("longest", far.longest(), Display.ROAD_DISTANCE))
                .withOutcome("expansion", answer.expansion(), Display.TANK_VOLUME)
                .withOutcome("dailyVapor", answer.vapor(), Display.VAPOR_MASS);
    }
}
