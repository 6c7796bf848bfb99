package drivetrain.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringWriter;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * One program of a page.
 *
 * @param where page and line
 * @param source a complete compilation unit
 * @param output what its {@code main} prints, empty if it has none
 */
record Snippet(String where, String source, Optional<String> output) {

    private static final Pattern PACKAGE = Pattern.compile("(?m)^package\\s+([\\w.]+)\\s*;");
    private static final Pattern TYPE =
            Pattern.compile("(?m)^(?:public |final )*(?:class|record|interface|enum) (\\w+)");
    private static final Pattern MAIN = Pattern.compile("\\bstatic void main\\(String");

    /** The programs of a page, each with the output block that follows it. */
    static List<Snippet> of(List<FencedBlock> blocks) {
        List<Snippet> snippets = new ArrayList<>();
        for (int at = 0; at < blocks.size(); at++) {
            FencedBlock block = blocks.get(at);
            if (block.info().equals("java")) {
                boolean runs = MAIN.matcher(block.content()).find();
                boolean shown =
                        at + 1 < blocks.size() && blocks.get(at + 1).info().equals("text output");
                if (runs != shown) {
                    throw new IllegalArgumentException(block.where()
                            + (runs
                                    ? ": a main wants a `text output` block next"
                                    : ": output of a class without main"));
                }
                snippets.add(new Snippet(
                        block.where(),
                        block.content(),
                        shown ? Optional.of(blocks.get(at + 1).content()) : Optional.empty()));
            }
        }
        return snippets;
    }

    /** Compiles the program in a folder and, if it has a {@code main}, fails unless it prints what the page shows. */
    void check(Path folder) throws IOException, ReflectiveOperationException {
        compile(folder);
        if (output.isPresent()) {
            assertThat(run(folder)).as(where).isEqualTo(output.get());
        }
    }

    private void compile(Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve(simpleName() + ".java"), source);
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        StringWriter messages = new StringWriter();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            List<String> options = List.of(
                    "--release",
                    "17",
                    "-Xlint:all,-processing,-options",
                    "-Werror",
                    "-proc:none",
                    "-classpath",
                    System.getProperty("java.class.path"),
                    "-d",
                    folder.toString());
            boolean compiled = compiler.getTask(messages, files, null, options, null, files.getJavaFileObjects(file))
                    .call();
            assertThat(compiled).as("%s does not compile:%n%s", where, messages).isTrue();
        }
    }

    private String run(Path folder) throws IOException, ReflectiveOperationException {
        PrintStream before = System.out;
        ByteArrayOutputStream screen = new ByteArrayOutputStream();
        try (URLClassLoader loader =
                        new URLClassLoader(new URL[] {folder.toUri().toURL()});
                PrintStream out = new PrintStream(screen, true, StandardCharsets.UTF_8)) {
            System.setOut(out);
            Class<?> type = loader.loadClass(name());
            var main = type.getDeclaredMethod("main", String[].class);
            main.setAccessible(true);
            main.invoke(null, (Object) new String[0]);
        } finally {
            System.setOut(before);
        }
        return screen.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }

    private String simpleName() {
        Matcher type = TYPE.matcher(source);
        assertThat(type.find()).as("%s holds no complete class", where).isTrue();
        return type.group(1);
    }

    private String name() {
        Matcher declared = PACKAGE.matcher(source);
        return declared.find() ? declared.group(1) + "." + simpleName() : simpleName();
    }
}
