package drivetrain.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SnippetTest {

    private static final String PROGRAM =
            "class Hello {\n    public static void main(String[] args) {\n        System.out.println(\"65 mph\");\n    }\n}\n";

    @TempDir
    Path folder;

    @Test
    void runsAProgramAndComparesItsOutput() throws Exception {
        List<Snippet> snippets = snippets("```java\n" + PROGRAM + "```\n\n```text output\n65 mph\n```\n");

        assertThat(snippets).hasSize(1);
        snippets.get(0).check(folder);
    }

    @Test
    void failsOnOtherOutput() {
        Snippet snippet = snippets("```java\n" + PROGRAM + "```\n\n```text output\n66 mph\n```\n")
                .get(0);

        assertThatThrownBy(() -> snippet.check(folder))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("p.md:2");
    }

    @Test
    void failsOnAClassThatDoesNotCompile() {
        Snippet snippet =
                snippets("```java\nclass Broken { int x = \"\"; }\n```\n").get(0);

        assertThatThrownBy(() -> snippet.check(folder))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("does not compile");
    }

    @Test
    void refusesAProgramWithoutOutput() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> snippets("```java\n" + PROGRAM + "```\n"))
                .withMessage("p.md:2: a main wants a `text output` block next");
    }

    private static List<Snippet> snippets(String page) {
        return Snippet.of(FencedBlock.of("p.md", page));
    }
}
