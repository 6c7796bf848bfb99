package drivetrain.repl.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.repl.session.Session;
import java.util.List;
import org.junit.jupiter.api.Test;

class VocabularyTest {

    private static final Command TRANSFER = named("transfer", "transfer case", "box");
    private static final Command TORQUE = named("torque");
    private static final Vocabulary VOCABULARY = new Vocabulary(List.of(TRANSFER, TORQUE));

    private static Command named(String word, String... synonyms) {
        return new Command() {
            @Override
            public Manual manual() {
                return Manual.of(Topic.ROAD, word + " [X]", "does it").alias(synonyms);
            }

            @Override
            public Result run(Session session, Arguments arguments) {
                return Result.changed(session, arguments.text());
            }
        };
    }

    @Test
    void findsByWordAndSynonymWhateverTheCase() {
        assertThat(VOCABULARY.find(Line.parse("TORQUE")).command()).isSameAs(TORQUE);
        assertThat(VOCABULARY.find(Line.parse("box 1.00 2.72")).command()).isSameAs(TRANSFER);
    }

    @Test
    void findsASynonymOfTwoWords() {
        Vocabulary.Called called = VOCABULARY.find(Line.parse("transfer case 1.00 2.72"));
        assertThat(called.command()).isSameAs(TRANSFER);
        assertThat(called.arguments().text()).isEqualTo("1.00 2.72");
        assertThat(VOCABULARY.find(Line.parse("transfer 1.00")).arguments().text())
                .isEqualTo("1.00");
    }

    @Test
    void refusesAnUnknownWordWithNearOnes() {
        assertThatThrownBy(() -> VOCABULARY.find(Line.parse("torqe")))
                .hasMessageContaining("line:1:1: word \"torqe\": is not known here");
        assertThat(VOCABULARY.near("torqe")).containsExactly("torque");
        assertThat(VOCABULARY.near("xyzzy")).isEmpty();
    }

    @Test
    void shortensAWordThatIsTooLongToShow() {
        assertThatThrownBy(() -> VOCABULARY.find(Line.parse("z".repeat(1000))))
                .hasMessageContaining("z".repeat(60) + "...\"");
    }

    @Test
    void refusesTwoCommandsOfOneName() {
        assertThatThrownBy(() -> new Vocabulary(List.of(TORQUE, named("torque"))))
                .hasMessage("two commands answer to torque");
    }
}
