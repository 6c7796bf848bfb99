package drivetrain.report.text;

import drivetrain.report.Block;
import drivetrain.report.Report;
import java.util.List;

/**
 * The format {@code csv}: RFC 4180, one table with a head, lines ended by CR LF, numbers in full.
 *
 * <p>Columns: {@code question} and {@code block} tell what a line is. Then come the columns of the report's tables and drawings, each by its key
 * with its unit in brackets, such as {@code roadSpeed [mph]}, or followed by columns for the unit where its figures differ in it; a line
 * of a table fills these. Every other line fills the last columns: {@code name}, {@code value}, {@code unit}, {@code text}, and with both unit
 * systems {@code metricValue} and {@code metricUnit}. A table column with one of these names is written as, for instance, {@code tableName}. A
 * missing figure leaves its place empty and says why under {@code text}.
 *
 * <p>A text that a spreadsheet would take for a formula is preceded by an apostrophe.
 */
public final class CsvText {

    private CsvText() {}

    /**
     * Writes a report.
     *
     * @param report the report
     * @param page the page; its width and its styler are not used
     * @return the text, each line ended by CR LF
     */
    public static String of(Report report, Page page) {
        CsvLayout layout = new CsvLayout(report.question(), page);
        for (Block block : report.blocks()) {
            block.layOut(layout);
        }
        StringBuilder text = new StringBuilder();
        List<String> head = layout.head();
        line(text, head);
        layout.rows()
                .forEach(row -> line(
                        text,
                        head.stream().map(key -> row.getOrDefault(key, "")).toList()));
        return text.toString();
    }

    private static void line(StringBuilder text, List<String> fields) {
        for (int index = 0; index < fields.size(); index++) {
            text.append(index == 0 ? "" : ",").append(quoted(fields.get(index)));
        }
        text.append("\r\n");
    }

    private static String quoted(String field) {
        boolean bare = field.chars().noneMatch(sign -> sign == ',' || sign == '"') && field.equals(field.strip());
        return bare ? field : '"' + field.replace("\"", "\"\"") + '"';
    }
}
