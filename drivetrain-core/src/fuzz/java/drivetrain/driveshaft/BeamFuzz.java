package drivetrain.driveshaft;

import static org.assertj.core.api.Assertions.assertThat;

import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Stiffness;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Random shafts of wild steps, masses, mounts and joints: the search always ends, its frequencies are positive and rise, and there are none that it has missed.
 *
 * <p>System properties: {@code fuzz.cases}, how many shafts times ten (1 000 000), and {@code fuzz.seed}.
 */
class BeamFuzz {

    @Test
    void alwaysFindsTheLowestModes() {
        long cases = Long.getLong("fuzz.cases", 1_000_000L) / 10;
        Random random = new Random(Long.getLong("fuzz.seed", 1_966L));
        for (long i = 0; i < cases; i++) {
            BeamLine line = line(random);
            BeamMesh mesh = BeamMesh.of(line, 12);
            List<BeamMode> modes = BeamModes.of(mesh).lowest(3);
            double before = 0.0;
            for (int n = 0; n < 3; n++) {
                double squared = Math.pow(modes.get(n).speed().toRadiansPerSecond(), 2);
                assertThat(squared).as(line.toString()).isFinite().isGreaterThanOrEqualTo(before * (1 - 1e-9));
                int below = mesh.stiffness()
                        .factorized(squared * (1 - 1e-5), mesh.mass())
                        .negativePivots();
                assertThat(below).as(line.toString()).isLessThanOrEqualTo(n);
                assertThat(modes.get(n).mountShare()).isBetween(0.0, 1.0);
                before = squared;
            }
            assertThat(BeamModes.of(mesh).first().toHertz())
                    .as(line.toString())
                    .isCloseTo(
                            modes.get(0).frequency().toHertz(), org.assertj.core.api.Assertions.withinPercentage(1e-4));
        }
    }

    private static BeamLine line(Random random) {
        List<BeamPiece> pieces = new ArrayList<>();
        pieces.add(span(random));
        int more = random.nextInt(6);
        for (int i = 0; i < more; i++) {
            switch (random.nextInt(4)) {
                case 0 -> pieces.add(new BeamMass(Mass.ofKilograms(wild(random, 0.001, 100))));
                case 1 -> {
                    pieces.add(new BeamBearing(mount(random)));
                    if (random.nextBoolean()) {
                        pieces.add(new BeamHinge());
                        pieces.add(span(random));
                    }
                }
                default -> pieces.add(span(random));
            }
        }
        return new BeamLine(mount(random), pieces, mount(random));
    }

    private static Optional<Stiffness> mount(Random random) {
        return random.nextBoolean()
                ? Optional.empty()
                : Optional.of(Stiffness.ofNewtonsPerMillimeter(wild(random, 10, 1e5)));
    }

    private static BeamSpan span(Random random) {
        double diameter = wild(random, 20, 150);
        Tube tube = random.nextInt(3) == 0
                ? Tube.solid(Length.ofMillimeters(diameter))
                : Tube.of(Length.ofMillimeters(diameter), Length.ofMillimeters(wild(random, 0.5, diameter / 2)));
        ShaftMaterial material = ShaftMaterial.parse(
                random.nextBoolean() ? "steel" : "laminate modulus 110 GPa shear 4 GPa density 1580 kg/m3");
        return BeamSpan.of(Length.ofMeters(wild(random, 0.02, 2.0)), tube, material);
    }

    private static double wild(Random random, double least, double most) {
        return least * Math.pow(most / least, random.nextDouble());
    }
}
