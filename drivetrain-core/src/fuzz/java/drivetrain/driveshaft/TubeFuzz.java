package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.fuzz.ChangedText;
import drivetrain.quantity.Length;
import drivetrain.refusal.RefusedException;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * Random texts of tubes and materials: each is refused or reads back from its own text as the same thing; what is read has a critical speed that is a positive number and
 * falls with the length.
 *
 * <p>System properties: {@code fuzz.cases}, how many texts (1 000 000), and {@code fuzz.seed}.
 */
class TubeFuzz {

    private static final String[] PIECES = {
        "x",
        "X",
        "\u00D7",
        "in",
        "mm",
        "\"",
        "m",
        "lb",
        "GPa",
        "MPa",
        "Msi",
        "psi",
        "kg/m3",
        "g/cc",
        "modulus",
        "poisson",
        "density",
        "yield",
        "shear",
        "strength",
        "laminate",
        "carbon",
        "steel",
        "aluminium",
        "steel-4130",
        " ",
        "\t",
        "\n",
        ",",
        ".",
        "-",
        "+",
        "/",
        "e",
        "1e",
        "1e999",
        "NaN",
        "0",
        "3",
        "0.083",
        "3 1/2",
        "205 GPa",
        "0.29",
        "7850 kg/m3",
        "1,5",
        "\u0000",
        "\u2028",
        "\uD83D",
        "\u001B[31m"
    };

    private static final String[] TUBES = {"3 in x 0.083 in", "76.2 x 2.1 mm", "3 1/2 x 0.065 in", "40 mm x 20 mm"};

    private static final String[] MATERIALS = {
        "steel",
        "aluminum-6061-t6",
        "modulus 205 GPa poisson 0.29 density 7850 kg/m3 yield 350 MPa",
        "laminate modulus 110 GPa shear 14 GPa density 1580 kg/m3 strength 120 MPa"
    };

    @Test
    void refusesOrReadsBack() {
        long cases = Long.getLong("fuzz.cases", 1_000_000L);
        Random random = new Random(Long.getLong("fuzz.seed", 1_966L));
        long tubes = 0;
        long materials = 0;
        Tube tube = Tube.parse(TUBES[0]);
        ShaftMaterial material = ShaftMaterial.parse(MATERIALS[0]);
        for (long i = 0; i < cases; i++) {
            if (random.nextBoolean()) {
                Tube read = read(text(random, TUBES), Tube::parse, Tube::text);
                tubes += read == null ? 0 : 1;
                tube = read == null ? tube : read;
            } else {
                ShaftMaterial read = read(text(random, MATERIALS), ShaftMaterial::parse, ShaftMaterial::text);
                materials += read == null ? 0 : 1;
                material = read == null ? material : read;
            }
            requireSound(tube, material);
        }
        assertThat(tubes).as("texts that are tubes").isPositive();
        assertThat(materials).as("texts that are materials").isPositive();
    }

    private static void requireSound(Tube tube, ShaftMaterial material) {
        double at =
                CriticalSpeed.ofUniform(tube, material, Length.ofMeters(1.0)).toRpm();
        double longer =
                CriticalSpeed.ofUniform(tube, material, Length.ofMeters(1.1)).toRpm();

        assertThat(at).as(tube.text() + " of " + material.text()).isPositive().isFinite();
        assertThat(longer)
                .as(tube.text() + " of " + material.text())
                .isPositive()
                .isLessThan(at);
        assertThat(material.shearCoefficient(tube)).isBetween(0.5, 1.0);
    }

    private static <T> @org.jspecify.annotations.Nullable T read(
            String text, Function<String, T> reader, Function<T, String> writer) {
        try {
            T read = reader.apply(text);
            assertThat(reader.apply(writer.apply(read))).as(text).isEqualTo(read);
            return read;
        } catch (RefusedException e) {
            if (e.refusal().position().isPresent()) {
                assertThat(e.refusal().position().getAsInt()).as(text).isBetween(0, text.length());
            } else {
                assertThat(e.refusal().problem()).as(text).isEqualTo("is too long");
            }
            return null;
        }
    }

    private static String text(Random random, String[] seeds) {
        String start = random.nextInt(5) == 0 ? "" : seeds[random.nextInt(seeds.length)];
        return ChangedText.byPieces(start, random, 5, PIECES);
    }
}
