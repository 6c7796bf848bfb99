package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.ObjectMapper;

class JsonTextTest {

    @Test
    void writesOneLineInTheOrderOfTheTree() {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("z", "text");
        tree.put("a", List.of(1, 2L, 0.5, true, List.of(), Map.of()));
        tree.put("m", Map.of("inner", "x/y"));
        assertThat(JsonText.write(tree))
                .isEqualTo("{\"z\":\"text\",\"a\":[1,2,0.5,true,[],{}],\"m\":{\"inner\":\"x/y\"}}");
    }

    @Test
    void escapesEveryCharacterThatIsNotAscii() {
        String text = "N\u00B7m \"q\" \\ \n\r\t\u0000\u001b\u007f\u009b\u202e\uD83D\uDE99";
        String line = JsonText.write(Map.of("k\u00e9y", text));
        assertThat(line.chars()).allMatch(c -> c >= ' ' && c <= '~' || c == 0x7f);
        assertThat(new ObjectMapper().readValue(line, Object.class)).isEqualTo(Map.of("k\u00e9y", text));
    }

    @ParameterizedTest
    @CsvSource({
        "0.0,0.0",
        "-0.0,-0.0",
        "65.0,65.0",
        "4.1,4.1",
        "1.0E-5,1.0E-5",
        "2.0E-3,0.002",
        "1.0E22,1.0E22",
        "2.2250738585072014E-308,2.2250738585072014E-308",
        "5.684341886080802E-14,5.684341886080802E-14"
    })
    void writesTheShortestNumber(double number, String digits) {
        assertThat(JsonText.write(Map.of("n", number))).isEqualTo("{\"n\":" + digits + "}");
    }

    /** Against a general-purpose reader of JSON. */
    @Test
    void writesNumbersThatReadBackExactly() {
        Random random = new Random(7);
        for (int i = 0; i < 10_000; i++) {
            double number = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(number)) {
                String line = JsonText.write(Map.of("n", number));
                assertThat(new ObjectMapper().readTree(line).get("n").doubleValue())
                        .isEqualTo(number);
            }
        }
    }

    @Test
    void refusesWhatIsNoValue() {
        for (Object wrong : List.of(Double.NaN, Double.POSITIVE_INFINITY, 'c', new int[0], 1.5f)) {
            assertThatThrownBy(() -> JsonText.write(Map.of("n", List.of(wrong))))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageStartingWith("no JSON value: ");
        }
    }
}
