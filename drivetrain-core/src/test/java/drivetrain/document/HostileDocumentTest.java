package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.refusal.RefusedException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Documents made to exhaust the reader, read in a process that has 256 MB: each is refused within 10 s of processor time. */
class HostileDocumentTest {

    private static final int MEGABYTE = 1_000_000;
    private static final long MOST_NANOSECONDS = 10_000_000_000L;

    @TempDir
    Path folder;

    /** A pattern repeated up to a length, after an opening. */
    private record Hostile(String opening, String pattern, int length) {

        void write(Path file) throws IOException {
            byte[] block = pattern.repeat(1 + 10_000 / pattern.length()).getBytes(StandardCharsets.UTF_8);
            try (OutputStream out = Files.newOutputStream(file)) {
                out.write(opening.getBytes(StandardCharsets.UTF_8));
                for (long written = 0; written + block.length < length; written += block.length) {
                    out.write(block);
                }
            }
        }
    }

    private static Map<String, Hostile> hostiles() {
        Map<String, Hostile> all = new LinkedHashMap<>();
        String head = "document: drivetrain-catalog\nversion: 1\ntitle: ";
        all.put("longString50.json", new Hostile("{\"document\": \"", "x", 50 * MEGABYTE));
        all.put("longString50.yaml", new Hostile(head, "x", 50 * MEGABYTE));
        all.put("longString.json", new Hostile("{\"document\": \"", "x", 7_900_000));
        all.put("longString.yaml", new Hostile(head, "x", 7_900_000));
        all.put("longWords.yaml", new Hostile(head, "x ", 7_900_000));
        all.put("longEscapes.json", new Hostile("{\"document\": \"", "\\u0041", 7_900_000));
        all.put("longKey.yaml", new Hostile("", "x", 7_900_000));
        all.put("longNumber.json", new Hostile("{\"version\": ", "9", 7_900_000));
        all.put("longNumber.yaml", new Hostile("version: ", "9", 7_900_000));
        all.put("longComment.yaml", new Hostile("", "#", 7_900_000));
        all.put("comments.yaml", new Hostile("", "#\n", 7_900_000));
        all.put("spaces.yaml", new Hostile("", " ", 7_900_000));
        all.put("spaces.json", new Hostile("", " ", 7_900_000));
        all.put("lines.yaml", new Hostile("a: x", "\n", 7_900_000));
        all.put("block.yaml", new Hostile("title: |\n", " x\n", 7_900_000));
        all.put("quotes.yaml", new Hostile("title: '", "''", 7_900_000));
        all.put("emoji.yaml", new Hostile("title: \"", "\uD83D\uDE99", 7_900_000));
        all.put("lists.json", new Hostile("", "[", 7_900_000));
        all.put("lists.yaml", new Hostile("", "[", 7_900_000));
        all.put("groups.json", new Hostile("", "{\"a\":", 7_900_000));
        all.put("dashes.yaml", new Hostile("", "- ", 7_900_000));
        all.put("questions.yaml", new Hostile("", "? ", 7_900_000));
        all.put("values.json", new Hostile("[1", ",1", 7_900_000));
        all.put("values.yaml", new Hostile("[1", ",1", 7_900_000));
        all.put("items.yaml", new Hostile("axles:\n", "- a\n", 7_900_000));
        all.put("documents.yaml", new Hostile("a: 1\n", "---\n", 7_900_000));
        all.put("directives.yaml", new Hostile("", "%A b\n", 7_900_000));
        all.put("anchors.yaml", new Hostile("a: &a [x]\n", "b: [*a, *a]\n", 7_900_000));
        all.put("colons.yaml", new Hostile("", ":", 7_900_000));
        all.put("zeros.json", new Hostile("", "\0", 50 * MEGABYTE));
        all.put("parts.yaml", new Hostile(head + "x\naxles:\n", "- {name: a, ratio: 3.73}\n", 7_900_000));
        return all;
    }

    @Test
    void refusesEveryHostileDocumentInLittleTimeAndMemory() throws Exception {
        Process reader = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx256m",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Reader.class.getName(),
                        folder.toString())
                .redirectErrorStream(true)
                .start();
        String report;
        try (InputStream out = reader.getInputStream()) {
            report = new String(out.readAllBytes(), StandardCharsets.UTF_8);
        }
        assertThat(reader.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(reader.exitValue()).as(report).isZero();
        assertThat(report.lines()).as(report).hasSize(hostiles().size()).allMatch(line -> line.startsWith("refused "));
    }

    /** Reads every hostile document and reports one line for each. */
    static final class Reader {

        private Reader() {}

        public static void main(String[] arguments) throws IOException {
            for (Map.Entry<String, Hostile> hostile : hostiles().entrySet()) {
                Path file = Path.of(arguments[0]).resolve(hostile.getKey());
                hostile.getValue().write(file);
                long start = processorTime();
                try {
                    CatalogDocument.read(file);
                    System.out.println("read " + file);
                } catch (RefusedException e) {
                    Refused.requireReadable(e);
                    long taken = processorTime() - start;
                    System.out.println((taken < MOST_NANOSECONDS ? "refused " : "too late ") + taken / 1_000_000
                            + " ms " + e.getMessage());
                }
                Files.delete(file);
            }
        }

        private static long processorTime() {
            return java.lang.management.ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        }
    }
}
