package drivetrain.repl.shell;

import drivetrain.repl.session.Session;
import drivetrain.report.text.Signs;

/** What stands before the line that is typed: the title of the work, and whether it has been kept. */
final class Prompt {

    private static final int LONGEST_TITLE = 24;

    private Prompt() {}

    static String of(Session session, Signs signs) {
        String title = session.title().orElse("untitled");
        String shown = title.length() <= LONGEST_TITLE ? title : title.substring(0, LONGEST_TITLE - 3) + "...";
        String end = signs == Signs.UNICODE ? " \u22B8 " : " -o ";
        return signs.text(shown) + (session.isChanged() ? "*" : "") + end;
    }
}
