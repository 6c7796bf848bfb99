package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import drivetrain.assessment.Assessment;
import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

class AssessmentDocumentTest {

    @TempDir
    Path folder;

    private static Assessment assess(Specification order) throws IOException {
        Catalog catalog = CatalogDocument.read(Samples.path("catalog.yaml"));
        return Assessment.of(Combination.resolve(order, catalog));
    }

    private static Specification order() throws IOException {
        return OrderDocument.read(Samples.path("order.yaml"));
    }

    private static Schema schema() throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(
                        Files.readString(Path.of("..", "docs", "schema", "assessment.schema.json")), InputFormat.JSON);
    }

    private static JsonNode tree(Assessment assessment, UnitSystem units) {
        return new ObjectMapper().readTree(AssessmentDocument.text(assessment, units));
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void keepsToItsSchema(UnitSystem units) throws IOException {
        List<Specification> orders = List.of(
                order(),
                Specification.empty(),
                order().without(Slot.ENGINE),
                order().without(Slot.TIRE).without(Slot.FRONT_TIRE),
                order().with(Slot.ENGINE, "crate-unknown"),
                order().with(Slot.ENGINE, "i6-4.2").with(Slot.TRANSMISSION, "manual-5"),
                order().with(Slot.VEHICLE, "pickup-dual")
                        .with(Slot.OVERDRIVE, "od-0.78")
                        .with(Slot.HUBS, "portal-1.5"),
                order().with(Slot.TIRE, "7.00-17").without(Slot.FRONT_TIRE),
                order().with(Slot.TRANSFER, "none"));
        for (Specification order : orders) {
            String text = AssessmentDocument.text(assess(order), units);
            assertThat(text).doesNotContain("\n");
            assertThat(schema().validate(text, InputFormat.JSON)).as(text).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"document\":\"drivetrain-assessment\"|\"document\":\"drivetrain-order\"",
                "\"unit\":\"mph\"|\"units\":\"mph\"",
                "\"gear\":\"6th high\"|\"gear\":6",
                "\"crawlRatio\":44.94256|\"crawlRatio\":\"44.94256\"",
                "\"verdict\":\"met\"|\"verdict\":\"fine\"",
                "\"class\":\"given\"|\"class\":\"guessed\"",
                "\"flagged\":true|\"flagged\":1"
            })
    void isRefusedByItsSchemaWhenMutated(String mutation) throws IOException {
        String text =
                AssessmentDocument.text(assess(order().without(Slot.TIRE).with(Slot.TIRE, "285/75R16")), UnitSystem.US);
        int bar = mutation.indexOf('|');
        assertThat(text).contains(mutation.substring(0, bar));
        String mutated = text.replace(mutation.substring(0, bar), mutation.substring(bar + 1));
        assertThat(schema().validate(mutated, InputFormat.JSON)).isNotEmpty();
    }

    @Test
    void holdsTheFiguresOfTheAssessmentInFull() throws IOException {
        Assessment assessment = assess(order());
        double rpm = assessment.cruise().orThrow().engineSpeed().toRpm();
        JsonNode us = tree(assessment, UnitSystem.US);
        JsonNode metric = tree(assessment, UnitSystem.METRIC);
        assertThat(us.at("/answers/cruise/engineSpeed/value").doubleValue()).isEqualTo(rpm);
        assertThat(us.at("/answers/cruise/speed/value").doubleValue()).isEqualTo(65.0);
        assertThat(us.at("/answers/cruise/speed/unit").stringValue()).isEqualTo("mph");
        assertThat(metric.at("/answers/cruise/engineSpeed/value").doubleValue()).isEqualTo(rpm);
        assertThat(metric.at("/answers/cruise/speed/unit").stringValue()).isEqualTo("km/h");
        assertThat(metric.at("/answers/crawl/wheelTorque/value").doubleValue())
                .isEqualTo(assessment.crawl().orThrow().torque().orThrow().toNewtonMeters());
        assertThat(us.at("/verdict").stringValue())
                .isEqualTo(assessment.verdict().label());
        assertThat(us.get("findings")).hasSize(assessment.findings().size());
        assertThat(us.get("assumptions")).hasSize(assessment.assumptions().size());
        assertThat(us.get("cautions")).hasSize(assessment.cautions().size()).isNotEmpty();
        assertThat(us.at("/order/frontAxle").stringValue()).isEqualTo("4.10");
    }

    @Test
    void saysWhatIsMissing() throws IOException {
        JsonNode tree = tree(assess(Specification.empty()), UnitSystem.US);
        assertThat(tree.at("/answers/crawl/notEvaluated").stringValue()).isEqualTo("no transmission is chosen");
        assertThat(tree.at("/order").isEmpty()).isTrue();
    }

    @Test
    void writesAFileOfOneLine() throws IOException {
        Path file = folder.resolve("assessment.json");
        Assessment assessment = assess(order());
        AssessmentDocument.write(file, assessment, UnitSystem.US);
        assertThat(Files.readString(file)).isEqualTo(AssessmentDocument.text(assessment, UnitSystem.US) + "\n");
    }
}
