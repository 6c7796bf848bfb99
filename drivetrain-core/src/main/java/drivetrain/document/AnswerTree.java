package drivetrain.document;

import drivetrain.assessment.CrawlAnswer;
import drivetrain.assessment.CruiseAnswer;
import drivetrain.assessment.EngineAnswer;
import drivetrain.assessment.RoadSpeedsAnswer;
import drivetrain.assessment.ShiftAnswer;
import drivetrain.assessment.SpeedometerAnswer;
import drivetrain.assessment.TireAnswer;
import drivetrain.assessment.WheelTorqueAnswer;
import drivetrain.engine.OperatingPoint;
import drivetrain.gearing.DrivenGear;
import drivetrain.quantity.Display;
import drivetrain.tire.RollingCircumference;
import java.util.Optional;

/** Writes the figures of each answer. */
final class AnswerTree {

    private AnswerTree() {}

    static void cruise(FigureTree tree, CruiseAnswer answer) {
        tree.with("speed", answer.speed(), Display.ROAD_SPEED)
                .with("gear", answer.gear().label())
                .with("totalRatio", answer.gear().totalRatio())
                .with("engineSpeed", answer.engineSpeed(), Display.ROTATION)
                .withOptional(
                        "engineSpeedUnlocked",
                        answer.unlocked(),
                        (into, speed) -> into.with("engineSpeedUnlocked", speed, Display.ROTATION))
                .with("driveshaftSpeed", answer.driveshaftSpeed(), Display.ROTATION)
                .with("rolling", rolling(tree, answer.rolling()))
                .withList(
                        "everyGear",
                        answer.everyGear(),
                        (into, row) -> into.with("gear", row.gear().label())
                                .with("totalRatio", row.gear().totalRatio())
                                .with("engineSpeed", row.engineSpeed(), Display.ROTATION));
    }

    static void speeds(FigureTree tree, RoadSpeedsAnswer answer) {
        tree.with("engineSpeed", answer.engineSpeed(), Display.ROTATION)
                .with("rolling", rolling(tree, answer.rolling()))
                .withList(
                        "gears",
                        answer.rows(),
                        (into, row) -> into.with("gear", row.gear().label())
                                .with("totalRatio", row.gear().totalRatio())
                                .with("roadSpeed", row.roadSpeed(), Display.ROAD_SPEED)
                                .with("driveshaftSpeed", row.driveshaftSpeed(), Display.ROTATION));
    }

    static void crawl(FigureTree tree, CrawlAnswer answer) {
        tree.with("gear", answer.crawl().gear().label())
                .with("crawlRatio", answer.crawl().ratio())
                .withOutcome("idle", answer.idle(), Display.ROTATION)
                .withOutcome("crawlSpeed", answer.speed(), Display.CRAWL_SPEED)
                .withOutcome("wheelTorque", answer.torque(), Display.TORQUE)
                .withOutcome("wheelTorqueAtStall", answer.stallTorque(), Display.TORQUE);
    }

    static void torque(FigureTree tree, WheelTorqueAnswer answer) {
        tree.with("peak", point(tree, answer.peak()));
        answer.stallMultiplication().ifPresent(ratio -> tree.with("stallTorqueRatio", ratio));
        tree.withList(
                "gears",
                answer.rows(),
                (into, row) -> into.with("gear", row.gear().label())
                        .with("totalRatio", row.gear().totalRatio())
                        .with("efficiency", row.gear().efficiency())
                        .with("driveshaft", row.driveshaft(), Display.TORQUE)
                        .with("halfShafts", row.halfShafts(), Display.TORQUE)
                        .with("allWheels", row.wheels().total(), Display.TORQUE)
                        .with("greatestFrontAxle", row.wheels().greatestFront(), Display.TORQUE)
                        .with("greatestRearAxle", row.wheels().greatestRear(), Display.TORQUE));
    }

    static void shifts(FigureTree tree, ShiftAnswer answer) {
        tree.with("shiftSpeed", answer.high().shiftSpeed(), Display.ROTATION)
                .with("spread", answer.high().spread())
                .withList(
                        "upshifts",
                        answer.high().shifts(),
                        (into, shift) -> into.with("from", shift.from().label())
                                .with("to", shift.to().label())
                                .with("step", shift.step())
                                .with("before", shift.before(), Display.ROTATION)
                                .with("after", shift.after(), Display.ROTATION))
                .withList(
                        "lowRange",
                        answer.overlap().places(),
                        (into, place) -> into.with("gear", place.low().label()).with("place", place.statement()));
    }

    static void speedometer(FigureTree tree, SpeedometerAnswer answer) {
        tree.with("drive", answer.speedometer().drive().label())
                .with("rolling", rolling(tree, answer.rolling()))
                .withList(
                        "readings",
                        answer.readings(),
                        (into, reading) -> into.with("actual", reading.actual(), Display.ROAD_SPEED)
                                .with("shown", reading.shown(), Display.ROAD_SPEED)
                                .with("error", reading.error(), Display.ROAD_SPEED))
                .withOptional(
                        "drivenGears",
                        answer.drivenGears(),
                        (into, choice) -> into.with(
                                "drivenGears",
                                gear(
                                        gear(
                                                into.inner().with("exactTeeth", choice.exactTeeth()),
                                                "fewer",
                                                choice.fewer()),
                                        "more",
                                        choice.more())));
    }

    private static FigureTree gear(FigureTree tree, String name, Optional<DrivenGear> gear) {
        return tree.withOptional(
                name,
                gear,
                (into, present) -> into.with(
                        name,
                        into.inner()
                                .with("teeth", present.teeth())
                                .with("shownOverTrue", present.shownOverTrue())
                                .with("legal", present.legal())));
    }

    static void engine(FigureTree tree, EngineAnswer answer) {
        tree.withOutcome("peakTorque", answer.peakTorque(), AnswerTree::pointInto)
                .withOutcome("peakPower", answer.peakPower(), AnswerTree::pointInto);
    }

    static void tire(FigureTree tree, TireAnswer answer) {
        tree.with("size", answer.tire().designation().text())
                .with("frontSize", answer.frontTire().designation().text())
                .withOutcome(
                        "overallDiameter",
                        answer.overallDiameter(),
                        (into, diameter) -> into.with("diameter", diameter.diameter(), Display.DIMENSION)
                                .with("basis", diameter.basis().label()))
                .withOutcome("rolling", answer.rolling(), AnswerTree::rollingInto);
    }

    private static FigureTree rolling(FigureTree tree, RollingCircumference rolling) {
        FigureTree inner = tree.inner();
        rollingInto(inner, rolling);
        return inner;
    }

    private static void rollingInto(FigureTree tree, RollingCircumference rolling) {
        tree.with("circumference", rolling.circumference(), Display.DIMENSION)
                .with("radius", rolling.radius(), Display.DIMENSION)
                .with("revolutions", rolling.revolutions(), Display.REVOLUTIONS)
                .with("basis", rolling.basis().label());
    }

    private static FigureTree point(FigureTree tree, OperatingPoint point) {
        FigureTree inner = tree.inner();
        pointInto(inner, point);
        return inner;
    }

    private static void pointInto(FigureTree tree, OperatingPoint point) {
        tree.with("speed", point.speed(), Display.ROTATION)
                .with("torque", point.torque(), Display.TORQUE)
                .with("power", point.power(), Display.POWER);
    }
}
