package drivetrain.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.refusal.Refusal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class OrderFileTest {

    private static final Specification STOCK = Specification.empty()
            .titled("As it came")
            .with(Slot.REAR_AXLE, "4.10")
            .cruisingAt("65 mph")
            .noting("two lines\n  of notes: with a colon\n\n- and a gap");

    private static OrderFile file() {
        Map<String, Specification> kept = new LinkedHashMap<>();
        kept.put("zwei-\u00e4", STOCK);
        kept.put("1", Specification.empty());
        kept.put("null", STOCK.with(Slot.TIRE, "265/75R16"));
        return new OrderFile(STOCK.with(Slot.TIRE, "285/75R16"), kept);
    }

    @ParameterizedTest
    @EnumSource(DocumentFormat.class)
    void readsBackWhatItWroteAndWritesItAsTheSameBytes(DocumentFormat format) {
        String text = file().text(format);
        OrderFile again = OrderFile.parse("order", text, format);
        assertThat(again).isEqualTo(file());
        assertThat(again.kept().keySet()).containsExactly("zwei-\u00e4", "1", "null");
        assertThat(again.text(format)).isEqualTo(text);
        assertThat(OrderDocument.parse("order", text, format)).isEqualTo(file().order());
    }

    @ParameterizedTest
    @EnumSource(DocumentFormat.class)
    void writesAnOrderAloneAsAlways(DocumentFormat format) {
        OrderFile alone = new OrderFile(STOCK, Map.of());
        assertThat(alone.text(format)).isEqualTo(OrderDocument.text(STOCK, format));
        assertThat(OrderFile.parse("order", alone.text(format), format)).isEqualTo(alone);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "kept: stock|kept|the kept packages by their names",
                "kept:\n  a b:\n    tire: 265/75R16|kept \"a b\"|cannot be the name",
                "kept:\n  stock:\n    tyre: 265/75R16|field \"tyre\"|is not a field",
                "kept:\n  stock:\n    kept: {}|field \"kept\"|is not a field",
                "kept:\n  stock:\n    version: 1|field \"version\"|is not a field",
                "kept:\n  stock:\n    cruise: 65|cruise \"65\"|",
                "kept: {}|kept \"0 packages\"|no such field",
                "kept:\n  stock: 4.10|stock|group of fields"
            })
    void refusesWhatIsNoKeptPackageWithItsPlace(String sample) {
        String[] parts = sample.split("\\|", -1);
        String text = "document: drivetrain-order\nversion: 1\n" + parts[0] + "\n";
        String sentence = Refused.sentence(() -> OrderFile.parse("o.yaml", text, DocumentFormat.YAML));
        for (int part = 1; part < parts.length; part++) {
            assertThat(sentence).contains(parts[part]);
        }
        assertThat(Refused.sentence(() -> OrderDocument.parse("o.yaml", text, DocumentFormat.YAML)))
                .isEqualTo(sentence);
    }

    @Test
    void givesEachChoiceAloneToACheck(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("o.yaml");
        new OrderFile(STOCK, Map.of("other", STOCK.limitedTo("90 mph"))).write(file);
        List<Specification> seen = new ArrayList<>();
        OrderFile.read(file, seen::add);

        assertThat(seen)
                .contains(Specification.empty().limitedTo("90 mph"))
                .allSatisfy(alone -> assertThat(alone.choices()).hasSizeLessThanOrEqualTo(1));
        STOCK.choices()
                .forEach((slot, text) ->
                        assertThat(seen).contains(Specification.empty().with(slot, text)));

        String sentence = Refused.sentence(() -> OrderFile.read(file, choice -> {
            choice.limiter().ifPresent(speed -> {
                throw Refusal.of("limiter", speed, "is not wanted").at(3).asException();
            });
        }));
        assertThat(sentence).containsPattern("o.yaml:\\d+:\\d+: limiter \"90 mph\": is not wanted");
    }

    @Test
    void refusesMoreThanCanBeKept() {
        Map<String, Specification> many = new LinkedHashMap<>();
        for (int i = 0; i <= OrderFile.MOST_KEPT; i++) {
            many.put("k" + i, STOCK);
        }
        assertThatThrownBy(() -> new OrderFile(STOCK, many)).hasMessageContaining("at most 20");
        assertThatThrownBy(() -> new OrderFile(STOCK, Map.of("-x", STOCK))).hasMessageContaining("cannot be the name");
    }
}
