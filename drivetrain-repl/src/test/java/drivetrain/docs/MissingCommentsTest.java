package drivetrain.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MissingCommentsTest {

    @TempDir
    Path folder;

    @Test
    void acceptsADocumentedRecordWithoutCommentOnItsCompactConstructor() throws IOException {
        assertThat(missingIn("""
                        /** A. @param <T> t
                         * @param <T> a type
                         * @param length some length
                         */
                        public record A<T>(double length) {
                            /** A constant. */
                            public static final A<String> ONE = new A<>(1.0);
                            public A { }
                            /** {@return twice the length} */
                            public double twice() { return 2 * length; }
                            @Override public String toString() { return ""; }
                            private int hidden(int x) { return x; }
                        }
                        """)).isEmpty();
    }

    @Test
    void missesEveryUndocumentedElement() throws IOException {
        assertThat(missingIn("""
                        /** A. */
                        public record A(double length) {
                            public static final int ONE = 1;
                            public A(int length) { this((double) length); }
                            /** Halves. */
                            public <T> double divided(int by) { return length / by; }
                            public enum Kind { FIRST }
                            /** I. */
                            public interface I { void run(); }
                            /** C. */
                            protected static class C { }
                        }
                        """))
                .containsExactlyInAnyOrder(
                        "2: no @param length of type A",
                        "3: no comment of field ONE",
                        "4: no comment of constructor",
                        "6: no @param by of method divided",
                        "6: no @param T of method divided",
                        "6: no @return of method divided",
                        "7: no comment of type Kind",
                        "7: no comment of field FIRST",
                        "9: no comment of method run",
                        "11: no explicit constructor of C");
    }

    @Test
    void passesOverWhatIsNotPublic() throws IOException {
        assertThat(missingIn("class A { public int x; public void f() {} }\n")).isEmpty();
    }

    private List<String> missingIn(String source) throws IOException {
        Path file = Files.writeString(folder.resolve("A.java"), source);
        return MissingComments.in(List.of(file)).stream()
                .map(line -> line.substring(file.toString().length() + 1))
                .toList();
    }
}
