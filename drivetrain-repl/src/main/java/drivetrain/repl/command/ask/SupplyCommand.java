package drivetrain.repl.command.ask;

import drivetrain.assessment.SupplyAnswer;
import drivetrain.finding.Outcome;
import drivetrain.quantity.UnitSystem;
import drivetrain.quantity.Voltage;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import drivetrain.report.Report;
import drivetrain.report.SupplyReport;
import java.util.List;

/** {@code supply}: whether the fuel supply keeps up, and what runs out first. */
public final class SupplyCommand implements QuestionCommand<SupplyAnswer> {

    private static final Voltage MOST = Voltage.ofVolts(60.0);

    private static final Manual MANUAL = Manual.of(
                    Topic.FUEL,
                    "supply [VOLTAGE]",
                    "whether the fuel supply keeps up, at the low voltage of the order or at one that is named")
            .alias("fuel supply", "starve")
            .example("supply", "supply 13.8 V");

    /** Makes the command. */
    public SupplyCommand() {}

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Outcome<SupplyAnswer> ask(Session session, Arguments arguments) {
        if (arguments.isEmpty()) {
            return SupplyAnswer.of(session.combination());
        }
        Voltage voltage = AskedQuantity.read(Voltage.KIND, MOST, arguments, "V");
        return SupplyAnswer.at(session.combination(), voltage);
    }

    @Override
    public Report report(SupplyAnswer answer, UnitSystem units) {
        return SupplyReport.of(answer, units);
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        boolean lacksUnit =
                before.size() == 1 && before.get(0).chars().allMatch(c -> (c >= '0' && c <= '9') || c == '.');
        return lacksUnit ? Offer.of("V") : List.of();
    }
}
