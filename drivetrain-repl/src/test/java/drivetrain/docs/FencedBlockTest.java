package drivetrain.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class FencedBlockTest {

    @Test
    void findsEveryBlockWithItsLine() {
        String page = "# Title\n\n```java\nclass A {}\n```\ntext\n```text output\n```\n";

        assertThat(FencedBlock.of("page.md", page))
                .containsExactly(
                        new FencedBlock("page.md", 4, "java", "class A {}\n"),
                        new FencedBlock("page.md", 8, "text output", ""));
    }

    @Test
    void refusesAFenceThatIsNeverClosed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FencedBlock.of("page.md", "\n```java\nclass A {}\n"))
                .withMessage("page.md:2: fence is never closed");
    }
}
