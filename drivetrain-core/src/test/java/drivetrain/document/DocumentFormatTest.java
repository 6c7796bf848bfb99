package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentFormatTest {

    @ParameterizedTest
    @CsvSource({"shelf.yaml,YAML", "shelf.yml,YAML", "SHELF.YAML,YAML", "a/b.c/shelf.json,JSON", "ORDER.JSON,JSON"})
    void followsFromTheEndOfTheName(String name, DocumentFormat format) {
        assertThat(DocumentFormat.of(Path.of(name))).isEqualTo(format);
    }

    @ParameterizedTest
    @ValueSource(strings = {"shelf", "shelf.txt", "shelf.yaml.bak", "curve.csv", "json"})
    void refusesOtherNamesWithTheNamesThatWouldDo(String name) {
        assertThat(Refused.sentence(() -> DocumentFormat.of(Path.of(name))))
                .startsWith(name + ": ")
                .contains(".yaml, .yml or .json");
    }

    @Test
    void isLabeledAsItsStandardIs() {
        assertThat(DocumentFormat.YAML.label()).isEqualTo("YAML");
        assertThat(DocumentFormat.JSON.label()).isEqualTo("JSON");
    }
}
