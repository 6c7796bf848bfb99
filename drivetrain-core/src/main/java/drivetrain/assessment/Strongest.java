package drivetrain.assessment;

import drivetrain.quantity.Force;
import drivetrain.quantity.Speed;
import drivetrain.road.ForceCurve;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The point at which a gear pulls hardest. */
record Strongest(Speed speed, Force force) {

    private static final int SAMPLES = 64;

    /** Looks along the curve; between two samples a smooth curve misses its top by less than the thickness of a line. */
    static Strongest of(ForceCurve curve) {
        return samples(curve, SAMPLES).stream()
                .max(Comparator.comparing(Strongest::force))
                .orElseThrow();
    }

    static List<Strongest> samples(ForceCurve curve, int count) {
        List<Strongest> samples = new ArrayList<>();
        Speed span = curve.highest().minus(curve.lowest());
        for (int i = 0; i <= count; i++) {
            Speed speed = i == count ? curve.highest() : curve.lowest().plus(span.times((double) i / count));
            samples.add(new Strongest(speed, curve.at(speed).orThrow()));
        }
        return samples;
    }
}
