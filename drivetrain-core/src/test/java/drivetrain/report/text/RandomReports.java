package drivetrain.report.text;

import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Source;
import drivetrain.finding.Verdict;
import drivetrain.finding.Working;
import drivetrain.quantity.Figure;
import drivetrain.report.Block;
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
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** Reports drawn at random: any blocks, hostile and foreign words among plain ones, figures of any size. */
final class RandomReports {

    private static final String[] WORDS = {
        "axle",
        "4.10",
        "high",
        "rpm",
        "a",
        "converter",
        "\u001B[31mred\u001B[0m",
        "\u202Eevil",
        "\u4E2D\u6587\u8F66\u8F74",
        "caf\u00E9",
        "cafe\u0301",
        "\uD83D\uDE99",
        "N\u00B7m",
        "\u03C9 = v / r \u00B7 i",
        "tab\there",
        "line\nbreak",
        "\u0645\u062D\u0648\u0631",
        "| pipe",
        "\"quoted\", and more",
        "=1+1",
        "<b>&amp;`*_[x](y)",
        "\uD800",
        "Drehmomentwandlerueberbrueckungskupplungssteuerung",
        "\u0000",
        "100000000000000000000000000000000000000000000000000 lb"
    };

    private final Random random;

    RandomReports(long seed) {
        this.random = new Random(seed);
    }

    Report next() {
        List<Supplier<Block>> kinds = List.of(
                () -> Sentence.answer(words(12)),
                this::facts,
                this::grid,
                () -> Verdicts.of(several(this::finding)),
                () -> Notes.of(several(() -> Assumption.of(words(2), words(10), source()))),
                this::steps,
                () -> Cautions.of(several(() -> new Caution(words(1), words(20)))),
                this::drawing);
        return new Report(
                "random",
                kinds.stream()
                        .filter(kind -> random.nextInt(3) > 0)
                        .map(Supplier::get)
                        .toList());
    }

    String words(int most) {
        StringBuilder text = new StringBuilder(WORDS[random.nextInt(WORDS.length)]);
        for (int count = random.nextInt(most); count > 0; count--) {
            text.append(' ').append(WORDS[random.nextInt(WORDS.length)]);
        }
        return text.toString();
    }

    private <T> List<T> several(Supplier<T> one) {
        return IntStream.range(0, random.nextInt(5))
                .mapToObj(index -> one.get())
                .toList();
    }

    private Source source() {
        return random.nextBoolean() ? Source.standard(words(3)) : Source.fromMemory(words(3));
    }

    private Figure figure() {
        double number = (random.nextDouble() - 0.3) * Math.pow(10.0, random.nextInt(9) - 2);
        return switch (random.nextInt(5)) {
            case 0 -> Figure.plain(number, 3);
            case 1 -> Figure.percent(number, 1);
            case 2 -> SampleReports.rpm(number);
            case 3 -> SampleReports.torque(number);
            default -> SampleReports.speed(number);
        };
    }

    private Cell cell() {
        return switch (random.nextInt(6)) {
            case 0 -> Cell.empty();
            case 1 -> Cell.notEvaluated(words(4));
            case 2 -> Cell.of(words(3));
            default -> Cell.of(figure());
        };
    }

    private Block facts() {
        return new Facts(
                "facts",
                random.nextBoolean() ? "" : words(3),
                IntStream.range(0, random.nextInt(5))
                        .mapToObj(index -> new Fact("fact" + index, words(3), cell()))
                        .toList());
    }

    private Block grid() {
        int width = 1 + random.nextInt(6);
        List<Column> columns = IntStream.range(0, width)
                .mapToObj(index ->
                        index == 0 ? Column.ofText("column0", words(2)) : Column.ofFigures("column" + index, words(2)))
                .toList();
        List<List<Cell>> rows = several(
                () -> IntStream.range(0, width).mapToObj(index -> cell()).toList());
        return new Grid("grid", random.nextBoolean() ? "" : words(3), columns, rows);
    }

    private Finding finding() {
        return switch (random.nextInt(3)) {
            case 0 -> Finding.notEvaluated(words(3), words(5), source());
            case 1 -> Finding.of(words(3), figure(), Verdict.MARGINAL, words(5), source());
            default -> Finding.of(words(3), figure(), figure(), figure(), Verdict.EXCEEDED, words(5), source());
        };
    }

    private Block steps() {
        Working.Builder working = Working.of(words(4));
        several(() -> working.input(words(2), words(1), figure(), words(3)));
        several(() -> working.step(words(2), words(4), figure()));
        several(() -> working.source(source()));
        return Steps.of(working.build());
    }

    private Block drawing() {
        List<Curve> curves = new ArrayList<>();
        double size = Math.pow(10.0, random.nextInt(9) - 3);
        for (int curve = 0; curve <= random.nextInt(12); curve++) {
            List<Point> points = new ArrayList<>();
            for (int count = random.nextInt(6); count >= 0; count--) {
                double x = random.nextDouble() * 7000.0;
                double y = (random.nextDouble() - 0.2) * size;
                points.add(new Point(SampleReports.rpm(x), SampleReports.speed(y)));
            }
            curves.add(new Curve((char) ('a' + curve), words(2), points));
        }
        return Drawing.of(new LinePlot(words(3), words(2), words(2), curves));
    }
}
