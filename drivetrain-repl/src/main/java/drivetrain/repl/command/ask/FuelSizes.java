package drivetrain.repl.command.ask;

import drivetrain.assessment.InjectorSizeAnswer;
import drivetrain.assessment.LineSizeAnswer;
import drivetrain.assessment.PumpSizeAnswer;
import drivetrain.combination.PartKind;
import drivetrain.finding.Outcome;
import drivetrain.quantity.Length;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.session.Session;
import drivetrain.report.FuelSizeReports;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What {@code size} finds for a fuel supply. */
final class FuelSizes {

    private static final Length MOST_LENGTH = Length.ofMeters(30.0);
    private static final int MOST_INJECTORS = 32;

    private FuelSizes() {}

    static List<SizeSubject<?>> all() {
        return List.of(
                new SizeSubject<>(
                        "pump",
                        List.of("pumps"),
                        "size pump",
                        "flow and pressure that the fuel pump needs, and the pumps on the shelf that do",
                        List.of("size pump"),
                        FuelSizes::pump,
                        FuelSizeReports::of),
                new SizeSubject<>(
                        "injectors",
                        List.of("injector"),
                        "size injectors [NUMBER]",
                        "flow that each injector needs, and the injectors on the shelf that do",
                        List.of("size injectors", "size injectors 8"),
                        FuelSizes::injectors,
                        FuelSizeReports::of),
                new SizeSubject<>(
                        "line",
                        List.of("lines", "feed"),
                        "size line [LENGTH]",
                        "bore that a fuel line needs",
                        List.of("size line", "size line 5 m"),
                        FuelSizes::line,
                        FuelSizeReports::of));
    }

    private static Outcome<PumpSizeAnswer> pump(Session session, Arguments arguments) {
        arguments.requireAtMost(0, "size pump");
        return PumpSizeAnswer.of(
                session.combination(), session.setup().shelf().catalog().parts(PartKind.FUEL_PUMP));
    }

    private static Outcome<InjectorSizeAnswer> injectors(Session session, Arguments arguments) {
        arguments.requireAtMost(1, "size injectors [NUMBER]");
        return InjectorSizeAnswer.of(
                session.combination(),
                arguments.isEmpty() ? OptionalInt.empty() : OptionalInt.of(number(arguments)),
                session.setup().shelf().catalog().parts(PartKind.INJECTORS));
    }

    private static int number(Arguments arguments) {
        String typed = arguments.get(0).text();
        if (!typed.matches("[0-9]{1,2}") || Integer.parseInt(typed) < 1 || Integer.parseInt(typed) > MOST_INJECTORS) {
            throw arguments
                    .refuse(0, "is not a number of injectors")
                    .allowing("1 to " + MOST_INJECTORS)
                    .asException();
        }
        return Integer.parseInt(typed);
    }

    private static Outcome<LineSizeAnswer> line(Session session, Arguments arguments) {
        Optional<Length> length = arguments.isEmpty()
                ? Optional.empty()
                : Optional.of(AskedQuantity.read(Length.KIND, MOST_LENGTH, arguments, "m", "ft"));
        return LineSizeAnswer.of(session.combination(), length);
    }
}
