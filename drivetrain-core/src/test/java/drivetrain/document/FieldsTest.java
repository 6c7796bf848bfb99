package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import java.util.List;
import org.junit.jupiter.api.Test;

class FieldsTest {

    private static Fields fields(String yaml) {
        Node node = DocumentTree.read(SourceText.of("f", yaml), DocumentFormat.YAML);
        return Fields.of("engine", (Node.Group) node, List.of("name", "idle", "rating"));
    }

    @Test
    void givesOnlyFieldsThatWereDeclared() {
        Fields fields = fields("idle: 650 rpm\n");
        assertThat(fields.has("idle")).isTrue();
        assertThat(fields.has("rating")).isFalse();
        assertThatThrownBy(() -> fields.find("idel")).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void callsTheGroupByItsNameInRefusals() {
        assertThat(Refused.sentence(() -> fields("idle: 650 rpm\nname: v8\n").required("rating", Value::line)))
                .isEqualTo("f:1:1: engine \"v8\": has no rating");
        assertThat(Refused.sentence(() -> fields("idle: 650 rpm\nname: [v8]\n").required("rating", Value::line)))
                .isEqualTo("f:1:1: engine: has no rating");
    }

    @Test
    void placesTheRefusalOfAPartAtTheTextThatItQuotes() {
        Fields fields = fields("name: [a, {b: x}]\nidle: 650 rpm\n");
        assertThat(Refused.by(() -> fields.made(() -> {
                            throw Refusal.of("part", "x", "is wrong").asException();
                        }))
                        .place())
                .contains(new Place("f", 1, 15));
        assertThat(Refused.by(() -> fields.made(() -> {
                            throw Refusal.of("part", "y", "is wrong").asException();
                        }))
                        .place())
                .contains(new Place("f", 1, 1));
        assertThat(Refused.by(() -> fields.made(() -> {
                            throw Refusal.of("part", "", "is wrong")
                                    .in(new Place("g", 7, 0))
                                    .asException();
                        }))
                        .place())
                .contains(new Place("g", 7, 0));
    }

    @Test
    void placesTheRefusalOfALiteralAtTheFaultWithinIt() {
        Value value = fields("idle: 650 rmp\n").find("idle").orElseThrow();
        assertThat(Refused.by(() -> value.literal(text -> {
                            throw Refusal.of("x", "rmp", "is wrong").at(1).asException();
                        }))
                        .place())
                .contains(new Place("f", 1, 12));
        assertThat(Refused.by(() -> value.literal(text -> {
                            throw Refusal.of("x", "other", "is wrong").at(1).asException();
                        }))
                        .place())
                .contains(new Place("f", 1, 7));
        assertThat(Refused.by(() -> value.literal(text -> {
                            throw Refusal.of("x", text, "is wrong")
                                    .in(new Place("g", 3, 0))
                                    .asException();
                        }))
                        .place())
                .contains(new Place("g", 3, 0));
    }

    @Test
    void refusesTooManyItemsAndTextsThatAreTooLong() {
        Value list = fields("idle: [1, 2, 3]\n").find("idle").orElseThrow();
        assertThat(list.items(3)).hasSize(3);
        assertThat(Refused.sentence(() -> list.items(2))).isEqualTo("f:1:7: idle: has more than 2 items");
        Value text = fields("idle: " + "x".repeat(401) + "\n").find("idle").orElseThrow();
        assertThat(Refused.sentence(text::line)).endsWith("is longer than 400 characters");
    }
}
