package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import drivetrain.combination.HouseLimits;
import drivetrain.combination.Specification;
import drivetrain.driveshaft.ShaftHouse;
import drivetrain.finding.HouseRange;
import drivetrain.finding.HouseRule;
import drivetrain.fuel.FuelHouse;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Holds the schemas in the documentation against the readers, with a general-purpose validator of JSON Schema 2020-12. */
class SchemaTest {

    private static final Path FOLDER = Path.of("..", "docs", "schema");
    private static final Schema CATALOG = schema("catalog");
    private static final Schema ORDER = schema("order");

    private static String text(String name) {
        try {
            return Files.readString(FOLDER.resolve(name + ".schema.json"));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Schema schema(String name) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text(name), InputFormat.JSON);
    }

    private static List<String> faults(Schema schema, String yaml) {
        return schema.validate(yaml, InputFormat.YAML).stream()
                .map(Object::toString)
                .toList();
    }

    private static JsonNode json(String name) {
        return new ObjectMapper().readTree(text(name));
    }

    @ParameterizedTest
    @CsvSource({"catalog", "order", "assessment"})
    void isItselfValid(String name) {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(text(name), InputFormat.JSON)).isEmpty();
    }

    @Test
    void takesTheSamples() {
        assertThat(faults(CATALOG, Samples.CATALOG)).isEmpty();
        assertThat(faults(ORDER, Samples.ORDER)).isEmpty();
        assertThat(faults(ORDER, "document: drivetrain-order\nversion: 1\n")).isEmpty();
    }

    @Test
    void takesEveryDemoDocument() throws IOException {
        Path demo = Path.of("src", "main", "resources", "drivetrain", "demo");
        try (Stream<Path> paths = Files.walk(demo)) {
            List<Path> documents =
                    paths.filter(path -> path.toString().endsWith(".yaml")).toList();
            assertThat(documents).isNotEmpty();
            for (Path document : documents) {
                String text = Files.readString(document);
                boolean order = text.contains("document: " + OrderDocument.KIND);
                assertThat(faults(order ? ORDER : CATALOG, text))
                        .as(document.toString())
                        .isEmpty();
            }
        }
    }

    @Test
    void takesWhatIsWritten() throws IOException {
        String text = OrderDocument.text(OrderDocument.read(Samples.path("order.yaml")), DocumentFormat.JSON);
        assertThat(ORDER.validate(text, InputFormat.JSON)).isEmpty();
        Specification order = OrderDocument.read(Samples.path("order.yaml"));
        String kept = new OrderFile(order, Map.of("stock", order, "\u00e4-2", Specification.empty()))
                .text(DocumentFormat.JSON);
        assertThat(ORDER.validate(kept, InputFormat.JSON)).isEmpty();
        assertThat(ORDER.validate(kept.replace("\"stock\"", "\"sto ck\""), InputFormat.JSON))
                .isNotEmpty();
        String head = "document: drivetrain-order\nversion: 1\nkept:\n  stock:\n    ";
        assertThat(faults(ORDER, head + "tire: 265/75R16\n")).isEmpty();
        for (String field : List.of("version: 1", "tyre: 265/75R16", "kept: {}", "cruise: 65")) {
            assertThat(faults(ORDER, head + field + "\n")).as(field).isNotEmpty();
        }
    }

    @Test
    void describesEveryFieldOfAKeptPackage() {
        List<String> fields = new ArrayList<>(OrderDocument.known());
        fields.removeAll(List.of(DocumentHead.DOCUMENT, DocumentHead.VERSION, OrderFile.KEPT));
        assertThat(json("order").at("/$defs/kept/properties").propertyNames())
                .containsExactlyInAnyOrderElementsOf(fields);
    }

    @ParameterizedTest
    @CsvFileSource(
            resources = "schema-mutations.csv",
            numLinesToSkip = 2,
            ignoreLeadingAndTrailingWhitespace = false,
            delimiter = '|')
    void refusesAMutatedSampleAsTheReaderDoes(String kind, String old, String mutated) {
        String sample = kind.equals("catalog") ? Samples.CATALOG : Samples.ORDER;
        assertThat(sample).contains(old.translateEscapes());
        String text = sample.replace(old.translateEscapes(), mutated.translateEscapes());
        assertThat(faults(kind.equals("catalog") ? CATALOG : ORDER, text)).isNotEmpty();
        assertThat(Refused.by(() -> {
                    if (kind.equals("catalog")) {
                        CatalogDocument.parse(
                                "f",
                                text.replace("    torqueCurveFile: curves/i4-2.5-diesel.csv\n", ""),
                                DocumentFormat.YAML);
                    } else {
                        OrderDocument.parse("f", text, DocumentFormat.YAML);
                    }
                }))
                .isNotNull();
    }

    @Test
    void namesExactlyTheFieldsThatTheReadersKnow() {
        JsonNode catalog = json("catalog");
        requireSame(catalog, CatalogContent.known());
        requireSame(json("order"), OrderDocument.known());
        JsonNode parts = catalog.get("$defs");
        for (PartReader<?> reader : PartReader.ALL) {
            String list = reader.kind().key();
            String reference = catalog.at("/properties/" + list + "/items/$ref").stringValue();
            requireSame(parts.get(reference.substring("#/$defs/".length())), reader.fields());
        }
        requireSame(catalog.at("/properties/houseLimits"), HouseLimits.names());
        Map<String, List<String>> groups = Map.of(
                "/pumpCurve", PumpFields.CURVE,
                "/pumpPoint", PumpFields.POINT,
                "/curvePoint", EngineFields.POINT,
                "/peaks", EngineFields.PEAKS,
                "/peaks/properties/power", EngineFields.PEAK_POWER,
                "/peaks/properties/torque", EngineFields.PEAK_TORQUE,
                "/converter", TransmissionFields.CONVERTER,
                "/converterPoint", TransmissionFields.CURVE_POINT,
                "/speedometer", VehicleFields.SPEEDOMETER);
        groups.forEach((path, fields) -> requireSame(parts.at(path), fields));
    }

    /** An editor refuses what the reader would refuse. */
    @Test
    void boundsEveryHouseLimitOfARoomAsItsRuleDoes() {
        JsonNode limits = json("catalog").at("/properties/houseLimits/properties");
        List<HouseRule> rules = Stream.<HouseRule[]>of(FuelHouse.Rule.values(), ShaftHouse.Rule.values())
                .flatMap(Stream::of)
                .toList();

        assertThat(rules).allSatisfy(rule -> {
            JsonNode limit = limits.get(rule.key());
            HouseRange range = rule.range();
            assertThat(limit.get(range.reached() ? "minimum" : "exclusiveMinimum")
                            .doubleValue())
                    .isEqualTo(range.least());
            assertThat(limit.has(range.reached() ? "exclusiveMinimum" : "minimum"))
                    .isFalse();
            assertThat(limit.get("maximum").doubleValue()).isEqualTo(range.most());
        });
    }

    private static void requireSame(JsonNode group, Iterable<String> fields) {
        assertThat(new TreeSet<>(group.get("properties").propertyNames())).containsExactlyInAnyOrderElementsOf(fields);
        assertThat(group.get("additionalProperties").booleanValue()).isFalse();
    }
}
