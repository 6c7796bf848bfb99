package drivetrain.driveshaft;

import drivetrain.quantity.Length;
import drivetrain.quantity.Mass;
import drivetrain.quantity.Stiffness;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Shafts of random steps, masses, mounts and joints. */
final class RandomBeams {

    private RandomBeams() {}

    static BeamLine next(Random random) {
        List<BeamPiece> pieces = new ArrayList<>();
        pieces.add(span(random));
        int more = random.nextInt(4);
        for (int i = 0; i < more; i++) {
            if (random.nextBoolean()) {
                pieces.add(new BeamMass(Mass.ofKilograms(3 * random.nextDouble())));
            }
            pieces.add(span(random));
        }
        if (random.nextBoolean()) {
            pieces.add(BeamBearing.of(Stiffness.ofNewtonsPerMillimeter(50 + 2_000 * random.nextDouble())));
            if (random.nextBoolean()) {
                pieces.add(span(random));
                pieces.add(new BeamHinge());
            }
            pieces.add(span(random));
        }
        return new BeamLine(mount(random), pieces, mount(random));
    }

    private static Optional<Stiffness> mount(Random random) {
        return random.nextBoolean()
                ? Optional.empty()
                : Optional.of(Stiffness.ofNewtonsPerMillimeter(500 + 5_000 * random.nextDouble()));
    }

    private static BeamSpan span(Random random) {
        double diameter = 30 + 70 * random.nextDouble();
        Tube tube = random.nextInt(3) == 0
                ? Tube.solid(Length.ofMillimeters(diameter))
                : Tube.of(Length.ofMillimeters(diameter), Length.ofMillimeters(1 + 5 * random.nextDouble()));
        ShaftMaterial material = ShaftMaterial.parse(
                random.nextBoolean() ? "aluminum" : "laminate modulus 110 GPa shear 14 GPa density 1580 kg/m3");
        return BeamSpan.of(Length.ofMeters(0.05 + random.nextDouble()), tube, material);
    }
}
