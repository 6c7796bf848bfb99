package drivetrain.repl.command.keep;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.repl.Trial;
import drivetrain.repl.command.Topic;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class KeepCommandsTest {

    @TempDir
    Path folder;

    private String quoted(String name) {
        return "\"" + folder.resolve(name) + "\"";
    }

    @ParameterizedTest
    @ValueSource(strings = {"coast tourer.yaml", "order.json", "order.yml"})
    void savesWhatOpensAsTheSameBytes(String name) throws IOException {
        Trial first = Trial.of("open demo", "axle front 41/10", "title Fence \"line\"", "save " + quoted(name));
        assertThat(first).isEqualTo(new Trial(0, "", ""));
        String saved = Files.readString(folder.resolve(name));
        assertThat(Trial.of("open " + quoted(name), "save " + quoted("again-" + name))
                        .err())
                .isEmpty();
        assertThat(folder.resolve("again-" + name)).hasContent(saved);
    }

    @Test
    void tellsAFileThatCannotBeWritten() {
        Trial trial = Trial.of("open demo", "save " + quoted("no/such/folder.yaml"));
        assertThat(trial.status()).isEqualTo(3);
        assertThat(trial.err()).contains("does not exist").doesNotContain("Exception");
        assertThat(Trial.of("save").err()).contains("no file is named");
        assertThat(Trial.of("save order.txt").status()).isEqualTo(1);
        assertThat(Trial.of("save a.yaml b.yaml").err()).contains("one word too many");
    }

    @Test
    void opensACatalogAsTheShelf() throws IOException {
        Files.writeString(
                folder.resolve("shop.yaml"),
                "document: drivetrain-catalog\nversion: 1\ntitle: Shop\naxles:\n  - {name: own-axle, ratio: 41/11}\n");
        assertThat(Trial.of("open " + quoted("shop.yaml"), "axle own-axle", "parts")
                        .out())
                .contains("own-axle");
    }

    @Test
    void changesNothingWhenAnOrderIsRefused() throws IOException {
        Files.writeString(
                folder.resolve("bad.yaml"), "document: drivetrain-order\nversion: 1\ntire: at-265-75r16\nengin: v8\n");
        Files.writeString(folder.resolve("part.yaml"), "document: drivetrain-order\nversion: 1\nengine: no-such\n");
        String before = Trial.of("axle 41/10", "show").out();
        Trial bad = Trial.piped("axle 41/10\nopen " + quoted("bad.yaml") + "\nshow\n", "--keep-going");
        assertThat(bad.out()).isEqualTo(before);
        assertThat(bad.err()).contains("bad.yaml:4:1: ", "near: engine");
        Trial part = Trial.piped("axle 41/10\nopen " + quoted("part.yaml") + "\nshow\n", "--keep-going");
        assertThat(part.out()).isEqualTo(before);
        assertThat(part.err()).contains("no-such");
    }

    @Test
    void refusesToOpenNothing() {
        assertThat(Trial.of("open").err()).contains("no order is named");
        assertThat(Trial.of("open demo cost-tourer").err()).contains("near: coast-tourer");
        assertThat(Trial.of("open demo coast-tourer now").err()).contains("one word too many");
    }

    @Test
    void saysWhatItUndoesAndRedoes() {
        Trial trial = Trial.of("axle 41/10", "tire 285/75R16", "undo", "undo", "redo");
        assertThat(trial.out()).isEqualTo("Undone: tire 285/75R16.\n\nUndone: axle 41/10.\n\nRedone: axle 41/10.\n");
    }

    @Test
    void refusesToUndoNothing() {
        assertThat(Trial.of("undo").err()).contains("nothing is there to be undone");
        assertThat(Trial.of("axle 41/10", "redo").err()).contains("nothing is there to be made again");
    }

    @Test
    void showsAndChangesSettings() {
        assertThat(Trial.of("units", "output").out()).isEqualTo("  units  us\n\n  output  table\n");
        assertThat(Trial.of("units both", "units").out()).contains("both");
        assertThat(Trial.of("units metrik").err()).contains("near: metric");
        assertThat(Trial.of("output jsn").err()).contains("near: json");
    }

    @Test
    void namesTheWork() {
        assertThat(Trial.of("title").out()).contains("none");
        assertThat(Trial.of("title coast tourer", "title").out()).contains("coast tourer");
        assertThat(Trial.of("title " + "x".repeat(81)).err()).contains("at most 80 characters");
    }

    @Test
    void explainsAWord() {
        assertThat(Trial.of("help tyre").out()).contains("tire [front|rear]", "also", "such as");
        assertThat(Trial.of("help final drive").out()).contains("axle [front|rear]");
        assertThat(Trial.of("help crus").err()).contains("is not known here");
        assertThat(Trial.of("help what").out())
                .isEqualTo(Trial.of("help what if").out())
                .contains("what if PLACE PART");
        assertThat(Trial.of("what").err()).contains("near: what if");
        assertThat(Trial.of("? show").status()).isZero();
    }

    @Test
    void listsTheWordsOnOneScreen() {
        String all = Trial.of("help").out();
        assertThat(all).contains("choosing", "driving", "what if", "\"help GROUP\"");
        assertThat(all.lines().count()).isLessThan(20);
        for (Topic topic : Topic.values()) {
            assertThat(all).contains(topic.word());
            assertThat(Trial.of("help " + topic.word()).out()).startsWith(topic.heading());
            assertThat(Trial.of(topic.word()).err()).contains("is not known here");
        }
        for (String word : all.substring(all.indexOf("choosing"), all.indexOf("\"help"))
                .replace("what if", "what")
                .split("[\\s,]+")) {
            assertThat(Trial.of("help " + word).status()).as(word).isZero();
        }
    }

    @Test
    void savesTheKeptPackagesToo() throws IOException {
        for (String name : new String[] {"set.yaml", "set.json"}) {
            Trial first = Trial.of(
                    "open demo", "keep stock", "axle 41/10", "keep deep", "save " + quoted(name), "compare stock deep");
            assertThat(first.err()).isEmpty();
            Trial again = Trial.of("open " + quoted(name), "save " + quoted("again-" + name), "compare stock deep");
            assertThat(again).isEqualTo(first);
            assertThat(folder.resolve("again-" + name)).hasContent(Files.readString(folder.resolve(name)));
        }
        String set = Files.readString(folder.resolve("set.yaml"));
        Files.writeString(folder.resolve("bad.yaml"), set.replace("    engine: v8-6.2", "    engine: v8-9"));
        Trial refused = Trial.of("open " + quoted("bad.yaml"));
        assertThat(refused.status()).isEqualTo(1);
        assertThat(refused.err()).containsPattern("bad.yaml:\\d+:13: engine \"v8-9\": is not on the shelf");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tire: at-265-75r16 | tire: at-265-75r99 | 7 | tire \"at-265-75r99\": is not on the shelf",
                "rearAxle: rp-3.73 | rearAxle: 41/x | 14 | rear axle \"41/x\": \"41/x\" is not a ratio",
                "cruise: 70 mph | cruise: 70 | 9 | cruise \"70\": is a bare number",
                "cruise: 70 mph | speedLimiter: 9 km/h | 15 | speed limiter \"9 km/h\": is out of range",
                "cruise: 70 mph | surface: mud pie | 10 | surface \"mud pie\": is not a surface",
                "cruise: 70 mph | air: altitude 3 foo | 17 | air \"altitude 3 foo\": \"foo\" is not a unit"
            })
    void saysWhereInAFileAChoiceIsThatItCannotLookUp(String line, String changed, int column, String problem)
            throws IOException {
        assertThat(Trial.of("open demo", "save " + quoted("good.yaml")).err()).isEmpty();
        List<String> good = Files.readAllLines(folder.resolve("good.yaml"));
        int at = good.indexOf(line);
        good.set(at, changed);
        Files.write(folder.resolve("bad.yaml"), good);

        assertThat(Trial.of("open " + quoted("bad.yaml")).err())
                .contains("bad.yaml:" + (at + 1) + ":" + column + ": " + problem);
    }

    @Test
    void keepsWhatWasKeptWhenAnOrderIsOpened() {
        assertThat(Trial.of("open demo", "keep stock", "save " + quoted("one.yaml"))
                        .err())
                .isEmpty();
        assertThat(Trial.of("open demo ranch-crawler", "keep other", "open " + quoted("one.yaml"), "keep")
                        .out())
                .contains("2 packages are kept", "stock", "other");
    }
}
