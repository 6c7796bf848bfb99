package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.assessment.Assessment;
import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.PartKind;
import drivetrain.combination.Specification;
import drivetrain.engine.PeakEstimate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Reads the examples of the guide to the files. */
class GuideTest {

    private static final Pattern BLOCK = Pattern.compile("(?ms)^( *)```(\\w*)\n(.*?)^ *```$");

    private static List<String> blocks(String info) throws IOException {
        String page = Files.readString(Path.of("..", "docs", "guide", "files.md"));
        return BLOCK.matcher(page)
                .results()
                .filter(block -> block.group(2).equals(info))
                .map(GuideTest::unindented)
                .toList();
    }

    private static String unindented(MatchResult block) {
        return block.group(3).replaceAll("(?m)^" + block.group(1), "");
    }

    @Test
    void readsTheCatalogAndAnswersTheOrder() throws IOException {
        Catalog catalog = CatalogDocument.parse("guide.yaml", blocks("yaml").get(0), DocumentFormat.YAML);
        assertThat(PartKind.all())
                .allSatisfy(kind -> assertThat(catalog.parts(kind)).isNotEmpty());
        Specification order = OrderDocument.parse("guide.yaml", blocks("yaml").get(4), DocumentFormat.YAML);
        Assessment assessment = Assessment.of(Combination.resolve(order, catalog));
        assertThat(assessment.answers().values())
                .allSatisfy(answer -> assertThat(answer.reason()).isEmpty());
        assertThat(assessment.cruise().orThrow().engineSpeed().toRpm()).isBetween(1000.0, 3000.0);
    }

    @Test
    void readsTheOtherWaysToGiveATorque() throws IOException {
        String engine = "engines:\n  - name: e\n    aspiration: natural\n    ignition: spark\n    rating: net\n"
                + "    measuredAt: crank\n    maximumSpeed: 5600 rpm\n";
        Catalog catalog = CatalogDocument.parse(
                "guide.yaml", Samples.catalogOf(engine + blocks("yaml").get(1)), DocumentFormat.YAML);
        assertThat(catalog.find(PartKind.ENGINE, "e").orElseThrow().item().torque())
                .isInstanceOf(PeakEstimate.class);
        assertThat(blocks("yaml").get(3)).startsWith("    torqueCurveFile: ");
        String transmission = "transmissions:\n  - name: t\n    gears: [2.5, 1.5, 1.0]\n    coupling: converter\n";
        Catalog converters = CatalogDocument.parse(
                "guide.yaml", Samples.catalogOf(transmission + blocks("yaml").get(2)), DocumentFormat.YAML);
        assertThat(converters
                        .find(PartKind.TRANSMISSION, "t")
                        .orElseThrow()
                        .item()
                        .coupling()
                        .stallMultiplication())
                .hasValue(2.05);
        assertThat(TorqueCurveCsv.parse("guide.csv", blocks("csv").get(0)).points())
                .hasSize(3);
    }

    @Test
    void refusesInTheWordsOfTheGuide() throws IOException {
        List<String> sentences = blocks("").get(0).lines().toList();
        String unit = "engines:\n  - name: e\n    aspiration: natural\n    ignition: spark\n    rating: net\n"
                + "    measuredAt: crank\n    maximumSpeed: 6600 rpm\n    torqueCurve:\n"
                + "      - {speed: 1000 rpm, torque: 410 lb}\n";
        String limit =
                "houseLimits:\n  cruiseLeastOverIdle: 2.2\n  cruiseMostOfMaximum: 0.45\n  criticalSpeedShareGood: 70\n";
        String field = "\n".repeat(25) + "axles:\n  - name: a\n    efficency: 0.96\n";
        assertThat(sentences)
                .containsExactly(
                        Refused.sentence(() ->
                                CatalogDocument.parse("shelf.yaml", Samples.catalogOf(unit), DocumentFormat.YAML)),
                        Refused.sentence(() ->
                                CatalogDocument.parse("shelf.yaml", Samples.catalogOf(limit), DocumentFormat.YAML)),
                        Refused.sentence(() ->
                                CatalogDocument.parse("shelf.yaml", Samples.catalogOf(field), DocumentFormat.YAML)));
    }
}
