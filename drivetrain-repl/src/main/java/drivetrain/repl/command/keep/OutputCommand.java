package drivetrain.repl.command.keep;

import drivetrain.refusal.NearNames;
import drivetrain.refusal.Refusal;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.OutputForm;
import drivetrain.repl.session.Session;
import drivetrain.report.Facts;
import drivetrain.report.Report;
import java.util.List;

/** {@code output}: the form in which answers are written. */
public final class OutputCommand implements Command {

    /** The words that are allowed, for a refusal. */
    public static final String ALLOWED = String.join(", ", OutputForm.words());

    private static final Manual MANUAL = Manual.of(
                    Topic.KEEP,
                    "output [table|plain|csv|json|markdown]",
                    "write answers as tables, plain lines, CSV, JSON or Markdown")
            .example("output json");

    /** Makes the command. */
    public OutputCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    /**
     * Reads a form.
     *
     * @param word the word, upper and lower case alike
     * @return the form
     * @throws drivetrain.refusal.RefusedException if the word names none
     */
    public static OutputForm form(String word) {
        return OutputForm.ofWord(word)
                .orElseThrow(() -> Refusal.of("output", word, "is not a form of output")
                        .allowing(ALLOWED)
                        .suggesting(NearNames.of(word, OutputForm.words()))
                        .asException());
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        arguments.requireAtMost(1, MANUAL.usage());
        if (arguments.isEmpty()) {
            Facts.Fact present =
                    Facts.Fact.of("output", "output", session.output().word());
            return Result.answer(session, Report.of("output", new Facts("settings", "", List.of(present))));
        }
        OutputForm form = arguments.read(OutputCommand::form);
        return Result.changed(session.with(form), "Answers are written as " + form.word() + ".");
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return before.isEmpty() ? Offer.of(OutputForm.words().toArray(String[]::new)) : List.of();
    }
}
