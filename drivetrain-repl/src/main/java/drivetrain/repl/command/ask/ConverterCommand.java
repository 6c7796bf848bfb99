package drivetrain.repl.command.ask;

import drivetrain.assessment.ConverterAnswer;
import drivetrain.finding.Outcome;
import drivetrain.gearing.Converter;
import drivetrain.quantity.UnitSystem;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.ConverterReport;
import drivetrain.report.Report;
import java.util.List;

/** {@code converter}: the torque converter behind the engine, the package's own or one that is tried. */
public final class ConverterCommand implements QuestionCommand<ConverterAnswer> {

    private static final Manual MANUAL = Manual.of(
                    Topic.ROAD,
                    "converter [stall RATIO] [stall-speed RPM] [curve SPEED:TORQUE:K ...] [lockup]",
                    "stall, heat, creep and open cruise of the torque converter, or of another one in its place")
            .alias("stall", "torque converter")
            .example("converter", "converter stall 2.4 stall-speed 2600 rpm");

    /** Makes the command. */
    public ConverterCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<ConverterAnswer> ask(Session session, Arguments arguments) {
        if (arguments.isEmpty()) {
            return ConverterAnswer.of(session.combination());
        }
        Converter tried = arguments.read(Converter::parse);
        return ConverterAnswer.of(session.combination(), tried);
    }

    @Override
    public Report report(ConverterAnswer answer, UnitSystem units) {
        return ConverterReport.of(answer, units);
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        return before.isEmpty() ? Offer.of("stall", "stall-speed", "curve", "lockup") : List.of();
    }
}
