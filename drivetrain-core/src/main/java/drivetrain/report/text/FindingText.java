package drivetrain.report.text;

import drivetrain.finding.Finding;
import drivetrain.quantity.Figure;
import java.util.Optional;

/** A finding in words, apart from its verdict and its rule. */
final class FindingText {

    private FindingText() {}

    /** Writes what was checked, value, limit and margin as far as there are any, and what that means. */
    static String of(Finding finding, Page page) {
        return page.signs().text(finding.checked()) + ": " + behindName(finding, page);
    }

    /** Writes the same without what was checked. */
    static String behindName(Finding finding, Page page) {
        StringBuilder text = new StringBuilder();
        append(text, "", finding.value(), page);
        append(text, "limit ", finding.limit(), page);
        append(text, "margin ", finding.margin(), page);
        return text.append(text.length() == 0 ? "" : "; ")
                .append(page.signs().text(finding.statement()))
                .toString();
    }

    private static void append(StringBuilder text, String name, Optional<Figure> figure, Page page) {
        figure.ifPresent(value -> text.append(text.length() == 0 ? "" : ", ")
                .append(name)
                .append(page.signs().text(value, page.units())));
    }
}
