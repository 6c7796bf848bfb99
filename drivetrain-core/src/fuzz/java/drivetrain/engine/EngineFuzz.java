package drivetrain.engine;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.fuzz.ChangedText;
import drivetrain.refusal.RefusedException;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Random engine texts: each is refused or reads back from its own text as the same engine; nothing else may happen.
 *
 * <p>System properties: {@code fuzz.cases}, how many texts (1 000 000), and {@code fuzz.seed}.
 */
class EngineFuzz {

    private static final String[] PIECES = {
        "at",
        "@",
        "idle",
        "max",
        "maximum",
        "speed",
        "redline",
        "natural",
        "naturally",
        "aspirated",
        "supercharged",
        "turbocharged",
        "turbo",
        "diesel",
        "spark",
        "compression",
        "net",
        "gross",
        "crank",
        "wheels",
        "hp",
        "kW",
        "PS",
        "lb-ft",
        "lb\u00B7ft",
        "Nm",
        "N m",
        "rpm",
        "rad/s",
        "L",
        "cu in",
        "gal",
        "cc",
        ",",
        ";",
        " ",
        "\t",
        "\n",
        ".",
        "-",
        "+",
        "e",
        "1e",
        "1e999",
        "NaN",
        "0",
        "1",
        "2500",
        "4100 rpm",
        "5700 rpm",
        "6600 rpm",
        "420 hp",
        "460 lb-ft",
        "4.5",
        ".5",
        "5.",
        "1,5",
        "\u0000",
        "\u2028",
        "\u00E9",
        "\uD83D\uDE00",
        "\uD83D",
        "\u001B[31m",
        "\""
    };

    private static final String[] SEEDS = {
        "420 hp at 5700 rpm, 460 lb-ft at 4100 rpm, idle 650 rpm, max 6600 rpm",
        "310 lb-ft at 1000 rpm, 400 lb-ft at 2500 rpm, 460 lb-ft at 4100 rpm, 387 lb-ft at 5700 rpm, 420 hp, max 5700 rpm, gross",
        "180 kW at 4000 rpm, 580 Nm at 1500 rpm, max 4200 rpm, 2.5 L, turbocharged, diesel, wheels",
        "max 5000 rpm"
    };

    @Test
    void refusesOrReadsBack() {
        long cases = Long.getLong("fuzz.cases", 1_000_000L);
        Random random = new Random(Long.getLong("fuzz.seed", 20240607L));
        long read = 0;
        for (long i = 0; i < cases; i++) {
            String text = text(random);
            try {
                Engine engine = Engine.parse(text);
                assertThat(Engine.parse(engine.text())).as(text).isEqualTo(engine);
                assertThat(engine.assumptions()).as(text).isNotEmpty();
                engine.findings();
                engine.band()
                        .ifPresent(band -> assertThat(
                                        engine.torqueAt(band.lowest()).value())
                                .as(text)
                                .isPresent());
                read++;
            } catch (RefusedException e) {
                assertThat(e.refusal().position()).as(text).isPresent();
                assertThat(e.refusal().position().getAsInt()).as(text).isBetween(0, text.length());
            }
        }
        assertThat(read).as("texts that are engines").isPositive();
    }

    private static String text(Random random) {
        String start = random.nextInt(4) == 0 ? "" : SEEDS[random.nextInt(SEEDS.length)];
        return ChangedText.byPieces(start, random, 6, PIECES);
    }
}
