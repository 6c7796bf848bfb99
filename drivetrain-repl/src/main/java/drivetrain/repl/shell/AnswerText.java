package drivetrain.repl.shell;

import drivetrain.document.JsonText;
import drivetrain.repl.session.OutputForm;
import drivetrain.report.Report;
import drivetrain.report.text.CsvText;
import drivetrain.report.text.MarkdownText;
import drivetrain.report.text.Page;
import drivetrain.report.text.PlainText;
import drivetrain.report.text.ReportTree;
import drivetrain.report.text.TableText;

/** Writes an answer in the form that was chosen. */
final class AnswerText {

    private AnswerText() {}

    /** Writes an answer, each line ended by {@code \n}. */
    static String of(Report report, OutputForm form, Page page) {
        return switch (form) {
            case TABLE -> TableText.of(report, page);
            case PLAIN -> PlainText.of(report, page);
            case CSV -> CsvText.of(report, page);
            case JSON -> JsonText.write(ReportTree.of(report, page.units())) + "\n";
            case MARKDOWN -> MarkdownText.of(report, page);
        };
    }
}
