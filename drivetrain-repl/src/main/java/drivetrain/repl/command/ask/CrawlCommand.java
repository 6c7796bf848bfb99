package drivetrain.repl.command.ask;

import drivetrain.assessment.CrawlAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.CrawlReport;
import drivetrain.report.Report;

/** {@code crawl}: crawl ratio and crawl speed. */
public final class CrawlCommand implements QuestionCommand<CrawlAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.ROAD, "crawl", "crawl ratio, and the speed that it gives at idle")
            .example("crawl");

    /** Makes the command. */
    public CrawlCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<CrawlAnswer> ask(Session session, Arguments arguments) {
        arguments.requireAtMost(0, MANUAL.usage());
        return CrawlAnswer.of(session.combination());
    }

    @Override
    public Report report(CrawlAnswer answer, UnitSystem units) {
        return CrawlReport.of(answer, units);
    }
}
