package drivetrain.tire;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.finding.SourceClass;
import drivetrain.finding.Working;
import drivetrain.quantity.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TireWorkingsTest {

    private static Working of(String tire) {
        return Tire.parse(tire).rolling().orThrow().working();
    }

    private static List<String> formulas(Working working) {
        return working.steps().stream().map(Working.Step::formula).toList();
    }

    @Test
    void explainsTheRuleFromTheSizeOnward() {
        Working working = of("285/75R16");

        assertThat(working.inputs()).extracting(Working.Input::symbol).containsExactly("W", "a", "d");
        assertThat(formulas(working))
                .containsExactly("D = d + 2 \u00B7 W \u00B7 a", "U = 3.05 \u00B7 D", "r = U / 2\u03C0", "N = 1 / U");
        assertThat(working.steps())
                .extracting(step -> step.result().text(UnitSystem.METRIC))
                .containsExactly("833.9 mm", "2543.4 mm", "404.8 mm", "393.2 rev/km");
        assertThat(working.sources())
                .extracting(source -> source.kind())
                .containsExactly(SourceClass.DERIVED, SourceClass.FROM_MEMORY, SourceClass.DERIVED);
    }

    @ParameterizedTest
    @CsvSource({
        "37x12.50R17LT, N, D = N - 0.5 in, from the size",
        "7.50-16, D, U = 2.988 \u00B7 D, table of sizes",
        "7.50-20 diameter 36 in, D, U = 2.988 \u00B7 D, given",
        "285/75R16 rollout 2510 mm, U, r = U / 2\u03C0, given",
        "285/75R16 revs 632/mile, N, U = 1 / N, given",
    })
    void explainsEveryBasis(String tire, String symbol, String formula, String origin) {
        Working working = of(tire);

        assertThat(working.inputs()).singleElement().satisfies(input -> {
            assertThat(input.symbol()).isEqualTo(symbol);
            assertThat(input.origin()).isEqualTo(origin);
        });
        assertThat(formulas(working)).contains(formula).endsWith("r = U / 2\u03C0", "N = 1 / U");
        assertThat(working.sources()).isNotEmpty();
    }

    @Test
    void explainsTheDiameterAlone() {
        Working working = Tire.parse("7.50R16").overallDiameter().orThrow().working();

        assertThat(working.question()).isEqualTo("overall diameter of 7.50R16");
        assertThat(working.sources()).singleElement().matches(source -> source.kind() == SourceClass.FROM_MEMORY);
    }
}
