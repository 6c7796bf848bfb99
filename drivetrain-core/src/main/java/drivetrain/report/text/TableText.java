package drivetrain.report.text;

import drivetrain.report.Block;
import drivetrain.report.Report;
import java.util.ArrayList;
import java.util.List;

/** The format {@code table}: for people at a screen, aligned and set to its width. */
public final class TableText {

    private TableText() {}

    /**
     * Writes a report, its blocks apart by an empty line.
     *
     * @param report the report
     * @param page the page; where it has a width, no line is wider
     * @return the text, each line ended by {@code \n}
     */
    public static String of(Report report, Page page) {
        TableLayout layout = new TableLayout(page);
        List<Line> lines = new ArrayList<>();
        for (Block block : report.blocks()) {
            List<Line> next = block.layOut(layout);
            if (!next.isEmpty() && !lines.isEmpty()) {
                lines.add(Line.BLANK);
            }
            lines.addAll(next);
        }
        StringBuilder text = new StringBuilder();
        lines.forEach(line -> line.write(text, page.styler()));
        return text.toString();
    }
}
