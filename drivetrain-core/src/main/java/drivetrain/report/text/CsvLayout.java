package drivetrain.report.text;

import drivetrain.finding.Assumption;
import drivetrain.finding.Caution;
import drivetrain.finding.Finding;
import drivetrain.finding.Source;
import drivetrain.finding.Working;
import drivetrain.quantity.DecimalText;
import drivetrain.quantity.Figure;
import drivetrain.quantity.UnitSystem;
import drivetrain.report.Block;
import drivetrain.report.Cautions;
import drivetrain.report.Cell;
import drivetrain.report.Drawing;
import drivetrain.report.Facts;
import drivetrain.report.Grid;
import drivetrain.report.LinePlot;
import drivetrain.report.Notes;
import drivetrain.report.Sentence;
import drivetrain.report.Steps;
import drivetrain.report.Verdicts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Collects the lines of {@link CsvText}: each block adds rows, tables and drawings add columns. */
final class CsvLayout implements Block.Layout<Boolean> {

    private static final List<String> FIRST = List.of("question", "block");
    private static final List<String> LAST = List.of("name", "value", "unit");
    private static final List<String> LAST_METRIC = List.of("metricValue", "metricUnit");

    private final String question;
    private final Page page;
    private final Signs signs;
    private final Set<String> columns = new LinkedHashSet<>();
    private final List<Map<String, String>> rows = new ArrayList<>();

    CsvLayout(String question, Page page) {
        this.question = question;
        this.page = page;
        this.signs = page.signs();
    }

    /** Returns the names of the columns. */
    List<String> head() {
        List<String> head = new ArrayList<>(FIRST);
        head.addAll(columns);
        head.addAll(LAST);
        if (page.units() == UnitSystem.BOTH) {
            head.addAll(LAST_METRIC);
        }
        head.add("text");
        return head;
    }

    /** Returns the rows, each from column to field; a field that is not there is empty. */
    List<Map<String, String>> rows() {
        return rows;
    }

    private Map<String, String> row(Block block) {
        Map<String, String> row = new LinkedHashMap<>();
        row.put("question", question);
        row.put("block", block.key());
        rows.add(row);
        return row;
    }

    private Map<String, String> row(Block block, String name, String text) {
        Map<String, String> row = row(block);
        row.put("name", field(name));
        row.put("text", field(text));
        return row;
    }

    private Map<String, String> row(Block block, String name, Figure figure, String text) {
        Map<String, String> row = row(block, name, text);
        row.put("value", number(figure, page.units()));
        row.put("unit", signs.unit(figure, page.units()));
        if (page.units() == UnitSystem.BOTH) {
            row.put("metricValue", number(figure, UnitSystem.METRIC));
            row.put("metricUnit", signs.unit(figure, UnitSystem.METRIC));
        }
        return row;
    }

    private static String number(Figure figure, UnitSystem system) {
        return DecimalText.shortest(figure.number(system));
    }

    /** Makes a text fit to be shown and keeps a spreadsheet from calculating it. */
    private String field(String text) {
        String shown = signs.text(text);
        return shown.matches("\\s*[=+@-].*") ? "'" + shown : shown;
    }

    @Override
    public Boolean sentence(Sentence block) {
        row(block, "", block.text());
        return true;
    }

    @Override
    public Boolean grid(Grid block) {
        List<ShownColumn> shown = ShownColumn.of(block, page);
        shown.forEach(this::addColumn);
        for (List<Cell> cells : block.rows()) {
            Map<String, String> row = row(block);
            shown.forEach(column -> put(row, column, cells.get(column.index())));
        }
        return true;
    }

    private void addColumn(ShownColumn column) {
        columns.add(key(column));
        if (column.unitInCells()) {
            columns.add(key(column) + " unit");
            if (column.system() == UnitSystem.BOTH) {
                columns.add(key(column) + " metricValue");
                columns.add(key(column) + " metricUnit");
            }
        }
    }

    private static String key(ShownColumn column) {
        String key = column.column().key();
        boolean taken = Stream.of(FIRST, LAST, LAST_METRIC, List.of("text")).anyMatch(names -> names.contains(key));
        return withUnit(taken ? "table" + Character.toUpperCase(key.charAt(0)) + key.substring(1) : key, column.unit());
    }

    private static String withUnit(String key, String unit) {
        return unit.isEmpty() ? key : key + " [" + unit + "]";
    }

    private void put(Map<String, String> row, ShownColumn column, Cell cell) {
        String key = key(column);
        String value =
                cell.<String>fold(figure -> number(figure, column.system()), this::field, reason -> "", () -> "");
        row.put(key, value);
        if (column.unitInCells()) {
            ShownColumn.figure(cell).ifPresent(figure -> {
                row.put(key + " unit", signs.unit(figure, column.system()));
                row.put(key + " metricValue", number(figure, UnitSystem.METRIC));
                row.put(key + " metricUnit", signs.unit(figure, UnitSystem.METRIC));
            });
        }
        String missing = cell.<String>fold(
                figure -> "",
                text -> "",
                reason -> column.column().key() + " not evaluated because " + signs.text(reason),
                () -> "");
        if (!missing.isEmpty() && !row.getOrDefault("text", "").contains(missing)) {
            row.merge("text", missing, (before, next) -> before + "; " + next);
        }
    }

    @Override
    public Boolean facts(Facts block) {
        for (Facts.Fact fact : block.facts()) {
            fact.value()
                    .<Map<String, String>>fold(
                            figure -> row(block, fact.key(), figure, ""),
                            text -> row(block, fact.key(), text),
                            reason -> row(block, fact.key(), "not evaluated because " + reason),
                            () -> row(block, fact.key(), ""));
        }
        return true;
    }

    @Override
    public Boolean notes(Notes block) {
        for (Assumption assumption : block.assumptions()) {
            String statement = assumption.statement() + " (" + assumption.source() + ")";
            row(block, assumption.subject(), assumption.flagged() ? "uncertain: " + statement : statement);
        }
        return true;
    }

    @Override
    public Boolean verdicts(Verdicts block) {
        for (Finding finding : block.findings()) {
            String text = finding.verdict().label() + ": " + finding.statement() + " (" + finding.rule() + ")";
            finding.value()
                    .ifPresentOrElse(
                            value -> row(block, finding.checked(), value, text),
                            () -> row(block, finding.checked(), text));
            finding.limit().ifPresent(limit -> row(block, finding.checked() + ", limit", limit, ""));
            finding.margin().ifPresent(margin -> row(block, finding.checked() + ", margin", margin, ""));
        }
        return true;
    }

    @Override
    public Boolean steps(Steps block) {
        Working working = block.working();
        row(block, "question", working.question());
        for (Working.Input input : working.inputs()) {
            row(block, input.name(), input.figure(), input.symbol() + ", " + input.origin());
        }
        for (Working.Step step : working.steps()) {
            row(block, step.name(), step.result(), step.formula());
        }
        for (Source source : working.sources()) {
            row(block, "source", source.toString());
        }
        return true;
    }

    @Override
    public Boolean cautions(Cautions block) {
        for (Caution caution : block.cautions()) {
            row(block, caution.hazard(), caution.text());
        }
        return true;
    }

    @Override
    public Boolean drawing(Drawing block) {
        for (LinePlot.Curve curve : block.plot().curves()) {
            for (LinePlot.Point point : curve.points()) {
                Map<String, String> row = row(block, curve.name(), "");
                put(row, "x", point.x(), page.units());
                put(row, "y", point.y(), page.units());
            }
        }
        return true;
    }

    private void put(Map<String, String> row, String axis, Figure figure, UnitSystem system) {
        String key = withUnit(axis, signs.unit(figure, system));
        columns.add(key);
        row.put(key, number(figure, system));
        if (system == UnitSystem.BOTH && Signs.hasTwoUnits(figure)) {
            put(row, axis, figure, UnitSystem.METRIC);
        }
    }
}
