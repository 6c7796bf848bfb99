package drivetrain.report.text;

import drivetrain.report.Block;
import drivetrain.report.Report;

/** The format {@code markdown}: GitHub Flavored Markdown with tables; every sign of a text that means something in Markdown is escaped. */
public final class MarkdownText {

    private MarkdownText() {}

    /**
     * Writes a report, its blocks apart by an empty line.
     *
     * @param report the report
     * @param page the page; its width and its styler are not used
     * @return the text, each line ended by {@code \n}
     */
    public static String of(Report report, Page page) {
        MarkdownLayout layout = new MarkdownLayout(page);
        StringBuilder text = new StringBuilder();
        for (Block block : report.blocks()) {
            String next = block.layOut(layout);
            if (!next.isEmpty()) {
                text.append(text.length() == 0 ? "" : "\n").append(next);
            }
        }
        return text.toString();
    }

    /** Escapes the signs that mean something within a line. */
    static String escape(String text) {
        StringBuilder escaped = new StringBuilder(text.length() + 8);
        for (int index = 0; index < text.length(); index++) {
            char sign = text.charAt(index);
            switch (sign) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '\\', '`', '*', '_', '[', ']', '#', '|', '~', '!', '$' ->
                    escaped.append('\\').append(sign);
                default -> escaped.append(sign);
            }
        }
        return escaped.toString();
    }

    /** Escapes a text that stands at the start of a line, where more signs mean something. */
    static String escapeAtStart(String text) {
        String escaped = escape(text.strip());
        if (escaped.matches("[-+=].*")) {
            return "\\" + escaped;
        }
        return escaped.replaceFirst("^([0-9]+)([.)])(?=\\s|$)", "$1\\\\$2");
    }
}
