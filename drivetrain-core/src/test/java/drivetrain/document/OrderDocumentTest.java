package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.databind.ObjectMapper;

class OrderDocumentTest {

    /** Texts that notations like to take for something else. */
    static final List<String> AWKWARD = List.of(
            "4.10",
            "41:11",
            "true",
            "no",
            "null",
            "~",
            "0x1F",
            "1e3",
            "1_000",
            "2001-12-14",
            "2001-12-14T21:59:43Z",
            ".5",
            "-",
            "- x",
            "?",
            ": x",
            "a: b",
            "a #b",
            "#b",
            "'",
            "\"",
            "\"x\"",
            "\\",
            "a\\nb",
            "&x",
            "*x",
            "!x",
            "|",
            ">",
            "%x",
            "@x",
            "`x`",
            "{}",
            "[x]",
            ",",
            " x",
            "x ",
            "x,",
            "N\u00B7m",
            "\uD83D\uDE99 \u4E2D",
            "31.7\"",
            "7.50-16 diameter 31.7 in",
            "$x",
            "\u00A0x",
            "a\u00A0",
            "y",
            "Off",
            "=",
            "<<",
            "0o7",
            "12e03",
            "+1",
            "1,000");

    @TempDir
    Path folder;

    private static Specification sample() throws IOException {
        return OrderDocument.read(Samples.path("order.yaml"));
    }

    private static Specification parse(String text) {
        return OrderDocument.parse("order.yaml", text, DocumentFormat.YAML);
    }

    @Test
    void readsEveryChoiceWordForWord() throws IOException {
        Specification order = sample();
        assertThat(order.title()).isEqualTo("Coast tourer");
        assertThat(order.choices())
                .containsExactly(
                        Map.entry(Slot.VEHICLE, "wagon-long"),
                        Map.entry(Slot.ENGINE, "v8-6.2"),
                        Map.entry(Slot.TRANSMISSION, "auto-6-hd"),
                        Map.entry(Slot.OVERDRIVE, "none"),
                        Map.entry(Slot.TRANSFER, "part-time-2.72"),
                        Map.entry(Slot.REAR_AXLE, "rp-4.10"),
                        Map.entry(Slot.FRONT_AXLE, "4.10"),
                        Map.entry(Slot.HUBS, "none"),
                        Map.entry(Slot.TIRE, "285/75R16 122/119Q rollout 2510 mm"),
                        Map.entry(Slot.FRONT_TIRE, "at-285-75r16"),
                        Map.entry(Slot.REAR_SHAFT, "long-76"),
                        Map.entry(Slot.REAR_LINE, "wagon-rear"),
                        Map.entry(Slot.REAR_SUSPENSION, "wagon-leaves"));
        assertThat(order.cruise()).contains("65 mph");
        assertThat(order.notes()).isEqualTo("The customer tows a light trailer.\n\n- quiet at 65 mph\n  matters most");
        assertThat(OrderDocument.readPacked("drivetrain/document/order.yaml")).isEqualTo(order);
    }

    @ParameterizedTest
    @EnumSource(DocumentFormat.class)
    void writesWhatReadsBackAsTheSameOrderAndTheSameBytes(DocumentFormat format) throws IOException {
        String text = OrderDocument.text(sample(), format);
        Specification again = OrderDocument.parse("again", text, format);
        assertThat(again).isEqualTo(sample());
        assertThat(OrderDocument.text(again, format)).isEqualTo(text);
        Specification empty = Specification.empty();
        assertThat(OrderDocument.parse("empty", OrderDocument.text(empty, format), format))
                .isEqualTo(empty);
    }

    @Test
    void writesWhatAPersonCanRead() throws IOException {
        assertThat(OrderDocument.text(sample(), DocumentFormat.YAML))
                .isEqualTo(Samples.ORDER.replace("frontAxle: 4.10", "frontAxle: \"4.10\""));
        assertThat(OrderDocument.text(sample().noting(""), DocumentFormat.JSON))
                .startsWith(
                        "{\n  \"document\": \"drivetrain-order\",\n  \"version\": 1,\n  \"title\": \"Coast tourer\",\n")
                .endsWith("  \"cruise\": \"65 mph\"\n}\n");
    }

    /** Checked with general-purpose readers of both notations, so that a shop's other tools read the same texts. */
    @Test
    void writesTextsThatOtherReadersReadAsTexts() {
        for (String awkward : AWKWARD) {
            Specification order = Specification.empty()
                    .titled("x " + awkward)
                    .with(Slot.ENGINE, awkward)
                    .noting("first " + awkward + "\n\n second\nlast");
            Map<String, Object> expected = Map.of(
                    "document",
                    "drivetrain-order",
                    "version",
                    1,
                    "title",
                    "x " + awkward,
                    "engine",
                    awkward,
                    "notes",
                    order.notes());
            String yaml = OrderDocument.text(order, DocumentFormat.YAML);
            assertThat(new Load(LoadSettings.builder().build()).loadFromString(yaml))
                    .as(yaml)
                    .isEqualTo(expected);
            String json = OrderDocument.text(order, DocumentFormat.JSON);
            assertThat(new ObjectMapper().readValue(json, Object.class)).isEqualTo(expected);
        }
    }

    @ParameterizedTest
    @EnumSource(DocumentFormat.class)
    void keepsAwkwardTexts(DocumentFormat format) {
        for (String awkward : AWKWARD) {
            for (String notes : List.of(
                    "",
                    awkward,
                    awkward + "\n",
                    "\n" + awkward,
                    awkward + "\r\n" + awkward,
                    "a\n\n\n" + awkward + "b")) {
                Specification order = new Specification(
                        awkward,
                        Map.of(Slot.TIRE, awkward, Slot.REAR_AXLE, awkward),
                        Optional.of("65 mph"),
                        Optional.of(awkward),
                        Optional.of(awkward),
                        Optional.of("105 mph"),
                        notes);
                String text = OrderDocument.text(order, format);
                assertThat(OrderDocument.parse("f", text, format)).as(text).isEqualTo(order);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(DocumentFormat.class)
    void refusesToWriteWhatCannotBeKept(DocumentFormat format) {
        for (String lost : List.of("", " ", "a\nb", "a\u001b[31m", "a\tb", "\uD83D", "x".repeat(401))) {
            Specification order = Specification.empty().with(Slot.ENGINE, lost);
            assertThat(Refused.sentence(() -> OrderDocument.text(order, format)))
                    .startsWith("order:");
        }
        assertThat(Refused.sentence(
                        () -> OrderDocument.text(Specification.empty().cruisingAt("fast"), format)))
                .contains("speed \"fast\"");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tire: 285|4:7: tire \"285\": is a bare number; allowed: a text",
                "engine: [a]|4:9: engine: is a list; allowed: a text",
                "rearAxle: true|4:11: rearAxle \"true\": is true or false; allowed: a text",
                "cruise: 65|4:9: cruise \"65\": is a bare number; allowed: a text",
                "cruise: 65 kg|4:12: speed \"65 kg\":",
                "cruise: 0 mph|4:9: cruise speed \"0",
                "gearbox: x|4:1: field \"gearbox\": is not a field of an order; allowed: document, version, title, vehicle, engine",
                "notes: ''|4:9: notes: is empty"
            })
    void refusesAFaultyChoiceAtTheFault(String line, String sentence) {
        String text = "document: drivetrain-order\nversion: 1\ntitle: x\n" + line + "\n";
        assertThat(Refused.sentence(() -> parse(text))).startsWith("order.yaml:" + sentence);
    }

    @Test
    void doesNotAskWhetherAPartExists() {
        String text = "document: drivetrain-order\nversion: 1\nengine: no-such-engine\nhubs: 1.5\n";
        assertThat(parse(text).choices())
                .containsEntry(Slot.ENGINE, "no-such-engine")
                .containsEntry(Slot.HUBS, "1.5");
    }

    @Test
    void saysThatACatalogIsNoOrder() {
        assertThat(Refused.sentence(() -> parse(Samples.CATALOG)))
                .startsWith("order.yaml:2:11: document \"drivetrain-catalog\": is not the kind of document");
        assertThat(Refused.sentence(() -> parse("[]"))).contains("is not an order but a list");
    }

    @ParameterizedTest
    @ValueSource(strings = {"order.yaml", "order.yml", "order.json"})
    void writesToAFile(String name) throws IOException {
        Path file = folder.resolve(name);
        OrderDocument.write(file, sample());
        byte[] bytes = Files.readAllBytes(file);
        assertThat(OrderDocument.read(file)).isEqualTo(sample());
        OrderDocument.write(file, OrderDocument.read(file));
        assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
        assertThat(folder.toFile().list()).containsExactly(name);
    }

    @Test
    void leavesTheFileAsItWasWhenTheOrderIsRefused() throws IOException {
        Path file = folder.resolve("order.yaml");
        OrderDocument.write(file, sample());
        byte[] bytes = Files.readAllBytes(file);
        Specification lost = sample().with(Slot.ENGINE, "\u0007");
        assertThat(Refused.by(() -> OrderDocument.write(file, lost))).isNotNull();
        assertThat(Refused.by(() -> OrderDocument.write(folder.resolve("order.txt"), sample())))
                .isNotNull();
        assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
        assertThat(folder.toFile().list()).containsExactly("order.yaml");
    }
}
