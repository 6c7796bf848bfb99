package drivetrain.document;

import drivetrain.assessment.ConverterAnswer;
import drivetrain.assessment.GripAnswer;
import drivetrain.assessment.LoadsAnswer;
import drivetrain.assessment.PullAnswer;
import drivetrain.assessment.TopAnswer;
import drivetrain.gearing.ConverterMatch;
import drivetrain.quantity.Display;
import drivetrain.road.Grade;

/** Writes the figures of the answers about the road. */
final class RoadAnswerTree {

    private RoadAnswerTree() {}

    static void pull(FigureTree tree, PullAnswer answer) {
        tree.with("speed", answer.speed(), Display.ROAD_SPEED)
                .with("grade", answer.load().grade().figure())
                .with("resistance", answer.load().total(answer.speed()), Display.FORCE)
                .with("powerAtWheels", answer.power().atWheels(), Display.POWER)
                .with("powerAtCrank", answer.power().atCrank(), Display.POWER)
                .withOptional(
                        "holdingGear",
                        answer.holding(),
                        (into, row) -> into.with("holdingGear", row.gear().label()))
                .withList(
                        "gears",
                        answer.rows(),
                        (into, row) -> into.with("gear", row.gear().label())
                                .with("engineSpeed", row.engineSpeed(), Display.ROTATION)
                                .with("drivingForce", row.held().drive(), Display.FORCE)
                                .with("reserve", row.held().reserve(), Display.FORCE)
                                .withOutcome("gradeHeld", row.held().steepest(), RoadAnswerTree::grade));
    }

    private static void grade(FigureTree tree, Grade grade) {
        tree.with(FigureTree.VALUE, 100.0 * grade.tangent()).with(FigureTree.UNIT, "%");
    }

    static void top(FigureTree tree, TopAnswer answer) {
        tree.with("gear", answer.fastest().gear().label())
                .with("topSpeed", answer.fastest().top().orThrow().speed(), Display.ROAD_SPEED)
                .with("driveshaftSpeed", answer.fastest().driveshaftSpeed().orThrow(), Display.ROTATION)
                .withList(
                        "gears",
                        answer.rows(),
                        (into, row) -> into.with("gear", row.gear().label())
                                .withOutcome(
                                        "topSpeed",
                                        row.top(),
                                        (inner, top) -> inner.with("speed", top.speed(), Display.ROAD_SPEED)
                                                .with("limit", top.limit().label())
                                                .with("powerAtWheels", top.power(), Display.POWER))
                                .withOutcome("engineSpeed", row.engineSpeed(), Display.ROTATION)
                                .withOutcome("driveshaftSpeed", row.driveshaftSpeed(), Display.ROTATION));
    }

    static void grip(FigureTree tree, GripAnswer answer) {
        tree.with("surface", answer.surface().name())
                .with("friction", answer.surface().sliding())
                .withList(
                        "layouts",
                        answer.rows(),
                        (into, row) -> into.with("layout", row.layout().label())
                                .with("force", row.sliding(), Display.FORCE)
                                .with("peakForce", row.peak(), Display.FORCE)
                                .withOutcome("steepest", row.steepest(), RoadAnswerTree::grade))
                .withOutcome(
                        "engine",
                        answer.engine(),
                        (into, limit) -> into.with("gear", limit.gear())
                                .with("force", limit.force(), Display.FORCE)
                                .withOutcome("steepest", limit.steepest(), RoadAnswerTree::grade));
    }

    static void loads(FigureTree tree, LoadsAnswer answer) {
        tree.withOutcome("inputTorque", answer.input(), Display.TORQUE)
                .withOptional("weakest", answer.path().weakest(), (into, part) -> into.with("weakest", part.part()))
                .withList(
                        "parts",
                        answer.path().parts(),
                        (into, part) -> into.with("part", part.part())
                                .with("gear", part.gear())
                                .withOutcome("engineLimited", part.engineLimited(), Display.TORQUE)
                                .withOutcome("slipLimited", part.slipLimited(), Display.TORQUE)
                                .withOutcome("torque", part.governing(), Display.TORQUE)
                                .withOptional(
                                        "rating",
                                        part.rating(),
                                        (inner, torque) -> inner.with("rating", torque, Display.TORQUE)));
    }

    static void converter(FigureTree tree, ConverterAnswer answer) {
        ConverterMatch.Point stall = answer.match().stall();
        tree.with("stallSpeed", stall.pumpSpeed(), Display.ROTATION)
                .with("engineTorque", stall.pumpTorque(), Display.TORQUE)
                .with("turbineTorque", stall.turbineTorque(), Display.TORQUE)
                .with("heat", stall.heat(), Display.POWER)
                .withOutcome("creepForce", answer.creepForce(), Display.FORCE)
                .withOutcome("creepSpeed", answer.creepSpeed(), Display.CRAWL_SPEED)
                .withOutcome(
                        "openCruise",
                        answer.cruise(),
                        (into, point) -> into.with("engineSpeed", point.pumpSpeed(), Display.ROTATION)
                                .with("speedRatio", point.speedRatio())
                                .with("heat", point.heat(), Display.POWER));
    }
}
