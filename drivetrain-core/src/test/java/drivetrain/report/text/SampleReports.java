package drivetrain.report.text;

import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.finding.Working;
import drivetrain.quantity.AngularSpeed;
import drivetrain.quantity.Display;
import drivetrain.quantity.Figure;
import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Speed;
import drivetrain.quantity.Torque;
import drivetrain.report.Cautions;
import drivetrain.report.Cell;
import drivetrain.report.Column;
import drivetrain.report.Drawing;
import drivetrain.report.Facts;
import drivetrain.report.Facts.Fact;
import drivetrain.report.Grid;
import drivetrain.report.LinePlot;
import drivetrain.report.LinePlot.Curve;
import drivetrain.report.LinePlot.Point;
import drivetrain.report.Notes;
import drivetrain.report.Report;
import drivetrain.report.Sentence;
import drivetrain.report.Steps;
import drivetrain.report.Verdicts;
import java.util.ArrayList;
import java.util.List;

/** Invented answers with blocks of every kind; their figures check nothing. */
final class SampleReports {

    private static final double[] GEARS = {4.03, 2.36, 1.53, 1.15, 0.85, 0.67};
    private static final String[] NAMES = {"1st", "2nd", "3rd", "4th", "5th", "6th"};

    private SampleReports() {}

    static Report cruise() {
        return Report.of(
                "cruise",
                Sentence.answer("At 65.0 mph in 6th high the engine turns 1829 rpm, with the converter locked."),
                new Facts(
                        "cruise",
                        "Cruise",
                        List.of(
                                Fact.of("roadSpeed", "road speed", speed(29.0576)),
                                Fact.of("engineSpeed", "engine speed", rpm(1829.4)),
                                Fact.of("totalRatio", "total ratio", Figure.plain(2.747, 3)),
                                new Fact(
                                        "unlockedSpeed",
                                        "engine speed, unlocked",
                                        Cell.notEvaluated("the converter has no slip and no speed ratio")),
                                Fact.of("note", "note", "counted without wind-up · front axle free"))),
                speeds(),
                Verdicts.of(List.of(
                        Finding.of(
                                "rear tire load",
                                mass(850),
                                mass(1450),
                                mass(600),
                                Verdict.MET,
                                "each tire carries its share",
                                Source.standard("UN Regulation 30, annex 4")),
                        Finding.of(
                                "speed symbol",
                                speed(50.0),
                                speed(44.4444),
                                speed(-5.5556),
                                Verdict.EXCEEDED,
                                "the vehicle can go faster than the tire may",
                                Source.standard("UN Regulation 30, annex 4")),
                        Finding.notEvaluated(
                                "front tire load",
                                "the vehicle has no front axle load",
                                Source.commonPractice("axle scale")),
                        Finding.of(
                                "front and rear match",
                                Figure.percent(0.004, 1),
                                Verdict.MARGINAL,
                                "the axles wind up on a hard road",
                                Source.commonPractice("under 1 %")))),
                Notes.of(List.of(
                        Assumption.of(
                                "rolling circumference",
                                "rolling circumference is 3.05 × the overall diameter",
                                Source.fromMemory("ETRTO Standards Manual")),
                        Assumption.of(
                                "converter",
                                "the converter is locked",
                                Source.derived("lock-up clutch engaged, no slip")),
                        Assumption.of(
                                "converter",
                                "the converter is locked",
                                Source.derived("lock-up clutch engaged, no slip")))),
                Cautions.of(
                        List.of(
                                new Caution(
                                        "tire",
                                        "A tire beyond its load or its speed can burst. Have the choice confirmed by a licensed shop under the local code."))));
    }

    static Grid speeds() {
        List<List<Cell>> rows = new ArrayList<>();
        for (int gear = 0; gear < GEARS.length; gear++) {
            double total = GEARS[gear] * 4.1;
            double speed = 3000.0 * Math.PI / 30.0 / total * 0.3946;
            rows.add(List.of(
                    Cell.of(NAMES[gear] + " high"),
                    Cell.of(Figure.plain(total, 2)),
                    Cell.of(speed(speed)),
                    gear == 0 ? Cell.empty() : Cell.of(Figure.percent(GEARS[gear - 1] / GEARS[gear] - 1.0, 0)),
                    gear == 5
                            ? Cell.notEvaluated("no efficiency is known for 6th gear")
                            : Cell.of(torque(500.0 * total))));
        }
        return new Grid(
                "speeds",
                "Road speeds at 3000 rpm",
                List.of(
                        Column.ofText("gear", "gear"),
                        Column.ofFigures("totalRatio", "total ratio"),
                        Column.ofFigures("roadSpeed", "road speed"),
                        Column.ofFigures("step", "step"),
                        Column.ofFigures("wheelTorque", "wheel torque")),
                rows);
    }

    static Report explanation() {
        return Report.of(
                "explain",
                Sentence.answer("Engine speed follows from road speed, rolling radius and ratios."),
                Steps.of(Working.of("engine speed at 65.0 mph")
                        .input("road speed", "v", speed(29.0576), "given")
                        .input("rolling radius", "r", length(0.3946), "radial rule, from the size")
                        .input("total ratio", "i", Figure.plain(2.747, 3), "0.67 · 1.00 · 41/10")
                        .step("wheel speed", "ω = v / r", rpm(703.2))
                        .step("engine speed", "n = ω · i", rpm(1931.7))
                        .source(Source.derived("rolling without slip: v = ω · r"))
                        .source(Source.fromMemory("ETRTO Standards Manual, 3.05 × diameter"))
                        .build()));
    }

    static Report plot() {
        return Report.of(
                "plot",
                Sentence.answer("The combination reaches 222.1 mph in 6th high at 6600 rpm, by gearing alone."),
                Drawing.of(fan()));
    }

    /** Road speed against engine speed, six gears in two ranges. */
    static LinePlot fan() {
        List<Curve> curves = new ArrayList<>();
        double[] ranges = {1.0, 2.72};
        for (int range = 0; range < ranges.length; range++) {
            for (int gear = 0; gear < GEARS.length; gear++) {
                List<Point> points = new ArrayList<>();
                for (double rpm : new double[] {650.0, 6600.0}) {
                    double speed = rpm * Math.PI / 30.0 / (GEARS[gear] * 4.1 * ranges[range]) * 0.3946;
                    points.add(new Point(rpm(rpm), speed(speed)));
                }
                char mark = (char) ((range == 0 ? '1' : 'a') + gear);
                curves.add(new Curve(mark, NAMES[gear] + (range == 0 ? " high" : " low"), points));
            }
        }
        return new LinePlot("Road speed in every gear", "engine speed", "road speed", curves);
    }

    /** Torque against engine speed: one curve with a peak, and one that ends early. */
    static LinePlot torques() {
        double[][] first = {{1000, 420}, {2000, 500}, {3000, 570}, {4000, 620}, {5000, 590}, {6000, 500}, {6600, 410}};
        double[][] second = {{800, 480}, {1600, 730}, {2800, 720}, {3400, 600}};
        return new LinePlot(
                "", "engine speed", "torque", List.of(curve('A', "spark", first), curve('B', "diesel", second)));
    }

    private static Curve curve(char mark, String name, double[][] numbers) {
        List<Point> points = new ArrayList<>();
        for (double[] pair : numbers) {
            points.add(new Point(rpm(pair[0]), torque(pair[1])));
        }
        return new Curve(mark, name, points);
    }

    static Figure speed(double metersPerSecond) {
        return Figure.of(Speed.ofMetersPerSecond(metersPerSecond), Display.ROAD_SPEED);
    }

    static Figure rpm(double number) {
        return Figure.of(AngularSpeed.KIND.of(number, AngularSpeed.RPM), Display.ROTATION);
    }

    static Figure mass(double kilograms) {
        return Figure.of(Mass.KIND.of(kilograms, Mass.KILOGRAM), Display.MASS);
    }

    static Figure torque(double newtonMeters) {
        return Figure.of(Torque.KIND.of(newtonMeters, Torque.NEWTON_METER), Display.TORQUE);
    }

    static Figure length(double meters) {
        return Figure.of(Length.KIND.of(meters, Length.METER), Display.DIMENSION);
    }
}
