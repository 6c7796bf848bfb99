package drivetrain.driveshaft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A beam cut into elements: stiffness and mass with one place for the deflection of each node and one for each slope, two at a joint. */
final class BeamMesh {

    /** Elements of a beam of one stretch. The first frequency is then good to 5e-5, the third to 1e-3, and of a slender tube better. */
    private static final int ELEMENTS = 40;

    private final BeamMatrix stiffness;
    private final BeamMatrix mass;
    private final double[] places;
    private final int[] deflections;
    private final Map<Integer, Double> springs;

    private BeamMesh(
            BeamMatrix stiffness, BeamMatrix mass, double[] places, int[] deflections, Map<Integer, Double> springs) {
        this.stiffness = stiffness;
        this.mass = mass;
        this.places = places;
        this.deflections = deflections;
        this.springs = springs;
    }

    static BeamMesh of(BeamLine line) {
        return of(line, ELEMENTS);
    }

    /** Cuts so that an element is no longer than the length of the beam over a count. */
    static BeamMesh of(BeamLine line, int elements) {
        return new Builder(line, line.length().toMeters() / elements).build();
    }

    BeamMatrix stiffness() {
        return stiffness;
    }

    BeamMatrix mass() {
        return mass;
    }

    /** Where the nodes are (m). */
    double[] places() {
        return places;
    }

    /** The index of each node's deflection among all unknowns. */
    int[] deflections() {
        return deflections;
    }

    /** The elastic energy of the springs, twice, where the beam is bent into a shape; a share where that of the whole is one half. */
    double springEnergy(double[] vector) {
        double sum = 0.0;
        for (Map.Entry<Integer, Double> spring : springs.entrySet()) {
            double deflection = vector[spring.getKey()];
            sum += spring.getValue() * deflection * deflection;
        }
        return sum;
    }

    int elements() {
        return places.length - 1;
    }

    /** Counts first, then fills. */
    private static final class Builder {

        private final BeamLine line;
        private final double longest;
        private final List<Integer> firm = new ArrayList<>();
        private final Map<Integer, Double> springs = new HashMap<>();
        private final BeamMatrix stiffness;
        private final BeamMatrix mass;
        private final double[] places;
        private final int[] deflections;
        private int node;
        private int deflection;
        private int slope = 1;
        private int next = 2;

        Builder(BeamLine line, double longest) {
            this.line = line;
            this.longest = longest;
            int elements = 0;
            int hinges = 0;
            for (BeamPiece piece : line.pieces()) {
                if (piece instanceof BeamSpan span) {
                    elements += cuts(span);
                } else if (piece instanceof BeamHinge) {
                    hinges++;
                }
            }
            int unknowns = 2 * (elements + 1) + hinges;
            stiffness = new BeamMatrix(unknowns);
            mass = new BeamMatrix(unknowns);
            places = new double[elements + 1];
            deflections = new int[elements + 1];
        }

        /** A hair's breadth over a whole number is that number: lengths that add up to the whole are rounded. */
        private int cuts(BeamSpan span) {
            return Math.max(1, (int) Math.ceil(span.length().toMeters() / longest - 1e-9));
        }

        BeamMesh build() {
            hold(new BeamBearing(line.start()));
            List<BeamPiece> pieces = line.pieces();
            for (int i = 0; i < pieces.size(); i++) {
                BeamPiece piece = pieces.get(i);
                if (piece instanceof BeamSpan span) {
                    add(span, hingesBehind(pieces, i));
                } else if (piece instanceof BeamMass point) {
                    mass.add(deflection, deflection, point.mass().toKilograms());
                } else if (piece instanceof BeamBearing bearing) {
                    hold(bearing);
                } else {
                    slope = next++;
                }
            }
            hold(new BeamBearing(line.end()));
            for (int index : firm) {
                stiffness.isolate(index, 1.0);
                mass.isolate(index, 0.0);
            }
            return new BeamMesh(stiffness, mass, places, deflections, springs);
        }

        /** At a joint the unknowns are slope before, deflection, slope behind, which keeps the matrices within four diagonals. */
        private static boolean hingesBehind(List<BeamPiece> pieces, int index) {
            for (int i = index + 1; i < pieces.size() && !(pieces.get(i) instanceof BeamSpan); i++) {
                if (pieces.get(i) instanceof BeamHinge) {
                    return true;
                }
            }
            return false;
        }

        private void add(BeamSpan span, boolean hinge) {
            int cuts = cuts(span);
            double length = span.length().toMeters() / cuts;
            BeamSection section = span.beam();
            for (int i = 0; i < cuts; i++) {
                boolean slopeFirst = hinge && i == cuts - 1;
                int nextDeflection = slopeFirst ? next + 1 : next;
                int nextSlope = slopeFirst ? next : next + 1;
                int[] dofs = {deflection, slope, nextDeflection, nextSlope};
                BeamElement.add(stiffness, mass, dofs, length, section);
                places[node + 1] = places[node] + length;
                node++;
                deflection = nextDeflection;
                slope = nextSlope;
                next += 2;
                deflections[node] = deflection;
            }
        }

        private void hold(BeamBearing bearing) {
            if (bearing.stiffness().isPresent()) {
                double stiff = bearing.stiffness().get().si();
                stiffness.add(deflection, deflection, stiff);
                springs.merge(deflection, stiff, Double::sum);
            } else {
                firm.add(deflection);
            }
        }
    }
}
