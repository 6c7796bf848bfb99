package drivetrain.repl.shell;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.refusal.RefusedException;
import drivetrain.repl.Trial;
import drivetrain.repl.command.Command;
import drivetrain.repl.command.Interpreter;
import drivetrain.repl.command.Result;
import drivetrain.repl.command.Vocabulary;
import drivetrain.repl.command.keep.TourCommand;
import drivetrain.repl.session.Demo;
import drivetrain.repl.session.Session;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every word of the language, as its own manual shows it. */
class WordsTest {

    private static final Vocabulary VOCABULARY = Words.vocabulary();

    static Stream<String> examplesWithoutFiles() {
        return VOCABULARY.commands().stream()
                .flatMap(command -> command.manual().examples().stream())
                .filter(example -> !example.contains(".yaml"))
                .filter(example -> !List.of("undo", "redo").contains(example));
    }

    @ParameterizedTest
    @MethodSource
    void examplesWithoutFiles(String example) {
        Trial trial = Trial.of("open demo", "keep stock", "keep tall", example);
        assertThat(trial.err()).isEmpty();
        assertThat(trial.status()).isZero();
    }

    @Test
    void everyWordHasAManualWithExamples() {
        assertThat(VOCABULARY.commands()).allSatisfy(command -> {
            assertThat(command.manual().examples()).isNotEmpty();
            assertThat(command.manual().summary()).isNotBlank().doesNotEndWith(".");
            assertThat(command.manual().usage()).startsWith(command.manual().word());
            assertThat(Trial.of("help " + command.manual().word()).out())
                    .contains(command.manual().usage());
        });
    }

    @Test
    void everyLineOfTheTourCanBeTyped() {
        List<String> lines =
                TourCommand.STOPS.stream().map(TourCommand.Stop::line).toList();
        assertThat(lines).hasSizeLessThanOrEqualTo(10);
        Trial trial = Trial.of(lines.toArray(String[]::new));
        assertThat(trial.err()).isEmpty();
        assertThat(trial.status()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "tyre, tire",
        "gearbox, transmission",
        "diff, axle",
        "final drive, axle",
        "transfer case, transfer",
        "motor, engine",
        "speedo, speedometer",
        "?, help",
        "exit, quit",
        "portal, hubs",
        "od, overdrive"
    })
    void understandsTheTradesOtherWords(String synonym, String word) {
        assertThat(VOCABULARY.named(synonym).map(Command::manual).orElseThrow().word())
                .isEqualTo(word);
    }

    @Test
    void aRefusalChangesNothing() {
        Interpreter interpreter = new Interpreter(VOCABULARY);
        Session session = Session.on(Demo.shelf());
        session = interpreter.run(session, "open demo").map(Result::session).orElseThrow();
        Session before = session;
        for (String line : List.of("tire 285/75Q16", "open absent", "axle 99", "cruise 65", "redo", "units furlong")) {
            Optional<Result> result = Optional.empty();
            try {
                result = interpreter.run(session, line);
            } catch (RefusedException refused) {
                assertThat(refused.refusal().suggestions()).hasSizeLessThanOrEqualTo(3);
            }
            assertThat(result).as(line).isEmpty();
            assertThat(session).isEqualTo(before);
        }
    }
}
