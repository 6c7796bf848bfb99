package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.document.Node.Group;
import drivetrain.document.Node.Items;
import drivetrain.document.Node.Scalar;
import drivetrain.document.Node.ScalarType;
import drivetrain.refusal.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentTreeTest {

    private static Node read(String text, DocumentFormat format) {
        return DocumentTree.read(SourceText.of("f", text), format);
    }

    private static Scalar scalar(Node group, String field) {
        return (Scalar) ((Group) group).entries().get(field).value();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "malformed.csv", numLinesToSkip = 2, delimiter = '|')
    void refusesWhatIsNotWellFormedAtTheRightPlace(DocumentFormat format, String text, String place, String problem) {
        String unescaped = text.translateEscapes();
        assertThat(Refused.sentence(() -> read(unescaped, format)))
                .startsWith("f:" + place + ": ")
                .contains(problem);
    }

    @Test
    void placesEveryYamlValue() {
        Node root = read("a: one\nb: \"two\"\nc: [3, 'four']\nd:\n  - {e: 5}\nf: |\n  six\n", DocumentFormat.YAML);
        assertThat(root.place()).isEqualTo(new Place("f", 1, 1));
        assertThat(scalar(root, "a")).isEqualTo(new Scalar(new Place("f", 1, 4), ScalarType.TEXT, "one", true));
        assertThat(scalar(root, "b")).isEqualTo(new Scalar(new Place("f", 2, 5), ScalarType.TEXT, "two", true));
        Items list = (Items) ((Group) root).entries().get("c").value();
        assertThat(list.place()).isEqualTo(new Place("f", 3, 4));
        assertThat(list.items())
                .containsExactly(
                        new Scalar(new Place("f", 3, 5), ScalarType.NUMBER, "3", true),
                        new Scalar(new Place("f", 3, 9), ScalarType.TEXT, "four", true));
        Items groups = (Items) ((Group) root).entries().get("d").value();
        assertThat(groups.items().get(0).place()).isEqualTo(new Place("f", 5, 5));
        assertThat(scalar(root, "f")).isEqualTo(new Scalar(new Place("f", 6, 4), ScalarType.TEXT, "six\n", false));
    }

    @Test
    void placesEveryJsonValue() {
        Node root =
                read("{\"a\": \"one\",\n \"b\": 2.50, \"c\": [true, null],\n\"d\": \"\\u00e9\"}", DocumentFormat.JSON);
        assertThat(scalar(root, "a")).isEqualTo(new Scalar(new Place("f", 1, 8), ScalarType.TEXT, "one", true));
        assertThat(scalar(root, "b")).isEqualTo(new Scalar(new Place("f", 2, 7), ScalarType.NUMBER, "2.50", true));
        assertThat(((Group) root).entries().get("b").place()).isEqualTo(new Place("f", 2, 2));
        Items list = (Items) ((Group) root).entries().get("c").value();
        assertThat(list.items())
                .containsExactly(
                        new Scalar(new Place("f", 2, 19), ScalarType.FLAG, "true", true),
                        new Scalar(new Place("f", 2, 25), ScalarType.NOTHING, "null", true));
        assertThat(scalar(root, "d")).isEqualTo(new Scalar(new Place("f", 3, 7), ScalarType.TEXT, "\u00e9", false));
    }

    @Test
    void findsAPlaceWithinATextOnlyWhereItStandsAsItIs() {
        Scalar plain = new Scalar(new Place("f", 3, 10), ScalarType.TEXT, "410 lb", true);
        assertThat(plain.placeOf(4)).isEqualTo(new Place("f", 3, 14));
        Scalar escaped = new Scalar(new Place("f", 3, 10), ScalarType.TEXT, "410 lb", false);
        assertThat(escaped.placeOf(4)).isEqualTo(new Place("f", 3, 10));
    }

    /** YAML 1.2.2, 10.3.2, core schema, restricted to decimal numbers; everything else that is not quoted is a text. */
    @ParameterizedTest
    @CsvSource({
        "4.10,NUMBER",
        "-1,NUMBER",
        "+5,NUMBER",
        ".5,NUMBER",
        "5.,NUMBER",
        "1e999,NUMBER",
        "1E-3,NUMBER",
        "007,NUMBER",
        "true,FLAG",
        "false,FLAG",
        "null,NOTHING",
        "~,NOTHING",
        "'',NOTHING",
        "yes,TEXT",
        "no,TEXT",
        "off,TEXT",
        "True,TEXT",
        "41:11,TEXT",
        "41/11,TEXT",
        "0x1F,TEXT",
        "1_000,TEXT",
        ".inf,TEXT",
        ".nan,TEXT",
        "NaN,TEXT",
        "2001-12-14,TEXT",
        "1e,TEXT",
        "e5,TEXT",
        ".,TEXT",
        "650 rpm,TEXT"
    })
    void tellsWhatAnUnquotedYamlScalarIs(String text, ScalarType type) {
        assertThat(scalar(read("a: " + text + "\n", DocumentFormat.YAML), "a").type())
                .isEqualTo(type);
    }

    @ParameterizedTest
    @ValueSource(strings = {"4.10", "true", "null", "", "~"})
    void takesAQuotedYamlScalarForAText(String text) {
        assertThat(scalar(read("a: \"" + text + "\"\n", DocumentFormat.YAML), "a")
                        .type())
                .isEqualTo(ScalarType.TEXT);
        assertThat(scalar(read("a: '" + text + "'\n", DocumentFormat.YAML), "a").type())
                .isEqualTo(ScalarType.TEXT);
    }

    @ParameterizedTest
    @EnumSource(DocumentFormat.class)
    void refusesDeepNesting(DocumentFormat format) {
        String deepest = "[".repeat(Limits.DEPTH) + "1" + "]".repeat(Limits.DEPTH);
        assertThat(read(deepest, format)).isInstanceOf(Items.class);
        assertThat(Refused.sentence(() -> read("[" + deepest + "]", format)))
                .isEqualTo("f:1:65: document: is nested deeper than 64 levels");
    }

    @ParameterizedTest
    @EnumSource(DocumentFormat.class)
    void refusesLongTextsAndNumbersAndNames(DocumentFormat format) {
        String longest = "{\"a\": \"" + "x".repeat(Limits.TEXT_CHARACTERS) + "\"}";
        assertThat(scalar(read(longest, format), "a").text()).hasSize(Limits.TEXT_CHARACTERS);
        assertThat(Refused.sentence(() -> read(longest.replace("xx\"", "xxx\""), format)))
                .startsWith("f:1:8: text \"xxxx")
                .endsWith("is longer than 100000 characters");
        assertThat(Refused.sentence(() -> read("{\"a\": 1" + "0".repeat(40) + "}", format)))
                .endsWith("is longer than 40 characters");
        assertThat(Refused.sentence(() -> read("{\"" + "n".repeat(500) + "\": 1}", format)))
                .endsWith("is not the name of a field");
    }

    @Test
    void refusesNamesAndNumbersBeyondTheParsersOwnLimits() {
        assertThat(Refused.sentence(() -> read("{\"a\": 1" + "0".repeat(5000) + "}", DocumentFormat.JSON)))
                .endsWith("has a name or a number that is too long");
    }

    @ParameterizedTest
    @EnumSource(DocumentFormat.class)
    void refusesTooManyValues(DocumentFormat format) {
        String values = "[" + "1,".repeat(Limits.VALUES) + "1]";
        assertThat(Refused.sentence(() -> read(values, format))).contains("has more than 400000 values");
    }

    @ParameterizedTest
    @EnumSource(DocumentFormat.class)
    void refusesControlCharactersThatAreEscaped(DocumentFormat format) {
        assertThat(Refused.sentence(() -> read("{\"a\": \"\\u001b[31mred\"}", format)))
                .isEqualTo("f:1:8: text \"?[31mred\": has the character U+001B; allowed: printable characters");
        assertThat(Refused.sentence(() -> read("{\"\\u0000\": 1}", format))).contains("is not the name of a field");
        assertThat(Refused.sentence(() -> read("{\"a\": \"\\ud83d\"}", format))).contains("U+D83D");
    }

    @Test
    void readsYamlOverTheParsersOwnLimit() {
        String list = "- abcdefghij\n".repeat(300_000);
        assertThat(((Items) read(list, DocumentFormat.YAML)).items()).hasSize(300_000);
    }

    @ParameterizedTest
    @EnumSource(DocumentFormat.class)
    void refusesTooManyFields(DocumentFormat format) {
        StringBuilder fields = new StringBuilder("{");
        for (int i = 0; i < Limits.FIELDS; i++) {
            fields.append("\"f").append(i).append("\": 1,\n");
        }
        assertThat(Refused.sentence(() -> read(fields + "\"last\": 1}", format)))
                .isEqualTo("f:201:1: document: has more than 200 fields in one group");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 1200})
    void readsCharactersBeyondTheFirstPlaneAcrossEveryBoundary(int count) {
        for (int before = 1010; before < 1030; before++) {
            String text = "x".repeat(before) + "\uD83D\uDE99".repeat(count);
            assertThat(scalar(read("a: \"" + text + "\"\n", DocumentFormat.YAML), "a")
                            .text())
                    .isEqualTo(text);
        }
    }

    @Test
    void keepsFieldsInOrder() {
        assertThat(((Group) read("z: 1\na: 2\nm: 3\n", DocumentFormat.YAML))
                        .entries()
                        .keySet())
                .containsExactly("z", "a", "m");
    }
}
