package drivetrain.repl.command.ask;

import drivetrain.refusal.NearNames;
import drivetrain.repl.command.Arguments;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Manual;
import drivetrain.repl.command.Offer;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Topic;
import drivetrain.repl.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** {@code size}: what a part has to be. Each thing that can be sized is a {@link SizeSubject}; one more is one more line in {@link #SUBJECTS}. */
public final class SizeCommand implements Command {

    private static final List<SizeSubject<?>> SUBJECTS = List.copyOf(FuelSizes.all());

    private static final Manual MANUAL = Manual.of(Topic.FUEL, "size PART", "what a part has to be: " + words())
            .alias("sizing")
            .example(SUBJECTS.stream()
                    .flatMap(subject -> subject.examples().stream())
                    .toArray(String[]::new));

    /** Makes the command. */
    public SizeCommand() {}

    /**
     * Returns the questions that it asks, for {@code explain}.
     *
     * @return one for each thing that can be sized
     */
    public static List<QuestionCommand<?>> questions() {
        return List.copyOf(SUBJECTS);
    }

    private static String words() {
        return String.join(", ", SUBJECTS.stream().map(SizeSubject::word).toList());
    }

    @Override
    public Manual manual() {
        return MANUAL;
    }

    @Override
    public Result run(Session session, Arguments arguments) {
        if (arguments.isEmpty()) {
            throw arguments
                    .refuse(0, "nothing is named to be sized")
                    .allowing(words())
                    .asException();
        }
        return subject(arguments).run(session, arguments.from(1));
    }

    private static SizeSubject<?> subject(Arguments arguments) {
        String typed = arguments.get(0).text();
        return SUBJECTS.stream()
                .filter(subject -> subject.isNamed(typed))
                .findFirst()
                .orElseThrow(() -> arguments
                        .refuse(0, "is not a part that can be sized")
                        .allowing(words())
                        .suggesting(NearNames.of(
                                typed.toLowerCase(Locale.ROOT),
                                SUBJECTS.stream().map(SizeSubject::word).toList()))
                        .asException());
    }

    @Override
    public List<Offer> offers(Session session, List<String> before) {
        List<Offer> offers = new ArrayList<>();
        if (before.isEmpty()) {
            SUBJECTS.forEach(subject -> offers.add(new Offer(subject.word(), subject.summary())));
        }
        return offers;
    }
}
