package drivetrain.driveshaft;

import drivetrain.quantity.Frequency;
import drivetrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Solves K x = w^2 M x for its lowest values by subspace iteration on a banded factor of K; see Bathe, Finite Element Procedures, on the subspace iteration method
 * (from memory). That none was missed is proven by counting the negative pivots of K - s M just above the last one.
 */
final class BeamModes {

    /** How many modes can be asked for. */
    static final int MOST = 6;

    private static final int MOST_ROUNDS = 200;
    /** Relative change of the squared frequency at which a round ends the search; each round makes it hundreds of times smaller, so that far less is left. */
    private static final double STILL = 1e-7;

    /** The first deflection of this share of the greatest is counted positive. */
    private static final double FIRST_LOBE = 0.01;

    private final BeamMesh mesh;

    private BeamModes(BeamMesh mesh) {
        this.mesh = mesh;
    }

    static BeamModes of(BeamMesh mesh) {
        return new BeamModes(mesh);
    }

    Frequency first() {
        BeamSubspace subspace = solve(1, 2);
        return frequency(subspace.value(0));
    }

    List<BeamMode> lowest(int count) {
        BeamSubspace subspace = solve(count, count + 3);
        List<BeamMode> modes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double[] vector = subspace.vector(i);
            double share = mesh.springEnergy(vector);
            modes.add(new BeamMode(frequency(subspace.value(i)), Math.min(1.0, share), shape(vector)));
        }
        return modes;
    }

    private static Frequency frequency(double squared) {
        return Frequency.ofHertz(Math.sqrt(squared) / (2.0 * Math.PI));
    }

    private BeamSubspace solve(int wanted, int size) {
        BeamMatrix factor = mesh.stiffness().factorized(0.0, mesh.mass());
        BeamSubspace subspace = new BeamSubspace(mesh.mass(), factor, size);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            if (subspace.improve(wanted) < STILL && isComplete(wanted, subspace.value(wanted - 1))) {
                return subspace;
            }
        }
        throw new ArithmeticException(
                "the modes of a beam of " + mesh.elements() + " elements were not found in " + MOST_ROUNDS + " rounds");
    }

    /** Below a shift just under the last value there are less of them than are wanted: none was passed over. */
    private boolean isComplete(int wanted, double last) {
        double shift = last * (1.0 - 1e-6);
        return mesh.stiffness().factorized(shift, mesh.mass()).negativePivots() < wanted;
    }

    private List<BeamMode.Point> shape(double[] vector) {
        int[] deflections = mesh.deflections();
        double greatest = 0.0;
        for (int index : deflections) {
            greatest = Math.max(greatest, Math.abs(vector[index]));
        }
        double scale = 0.0;
        for (int i = 0; scale == 0.0; i++) {
            double first = vector[deflections[i]];
            scale = Math.abs(first) < FIRST_LOBE * greatest ? 0.0 : Math.copySign(greatest, first);
        }
        List<BeamMode.Point> shape = new ArrayList<>(deflections.length);
        for (int i = 0; i < deflections.length; i++) {
            shape.add(new BeamMode.Point(Length.ofMeters(mesh.places()[i]), vector[deflections[i]] / scale));
        }
        return shape;
    }
}
