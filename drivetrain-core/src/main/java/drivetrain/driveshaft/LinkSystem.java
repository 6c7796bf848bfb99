package drivetrain.driveshaft;

import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Links and bushes that hold an axle. For a given heave and roll it finds the place at which they have to give least: Gauss-Newton on x, y, pitch and yaw. Links are a
 * thousand times as stiff as the bushes that clamp an arm, so that a system which fits exactly fits exactly, and one that is held more than once gives in its bushes.
 */
final class LinkSystem {

    private static final int UNKNOWNS = 4;
    private static final int MOST_ROUNDS = 40;
    private static final double CONVERGED = 1e-10;
    private static final double LINK = 1e3;
    private static final double BUSH = 1.0;
    /** Holds what nothing else holds, far softer than any bush. */
    private static final double FREE = 1e-9;

    private final List<Hold> holds = new ArrayList<>();

    /** A link from a point of the axle to one of the chassis, or, of no length, a bush that joins the two. */
    private record Hold(Vector3D axle, Vector3D chassis, double length) {}

    LinkSystem link(Vector3D axle, Vector3D chassis) {
        holds.add(new Hold(axle, chassis, axle.distance(chassis)));
        return this;
    }

    LinkSystem bush(Vector3D point) {
        holds.add(new Hold(point, point, 0.0));
        return this;
    }

    AxlePose pose(double heave, double roll) {
        double[] at = new double[UNKNOWNS];
        for (int round = 0; round < MOST_ROUNDS; round++) {
            AxlePose pose = new AxlePose(at[0], at[1], heave, roll, at[2], at[3], 0.0);
            Normal normal = new Normal(at);
            for (Hold hold : holds) {
                add(normal, pose, hold);
            }
            double step = normal.step(at);
            if (step < CONVERGED) {
                return new AxlePose(at[0], at[1], heave, roll, at[2], at[3], misfit(pose));
            }
        }
        throw Refusal.of("suspension", "", "its links cannot follow the axle over this travel")
                .allowing("links long enough for the bump, droop and articulation given")
                .asException();
    }

    private double misfit(AxlePose pose) {
        double most = 0.0;
        for (Hold hold : holds) {
            double distance = pose.moved(hold.axle()).distance(hold.chassis());
            most = Math.max(most, Math.abs(distance - hold.length()));
        }
        return most;
    }

    private static void add(Normal normal, AxlePose pose, Hold hold) {
        Vector3D arm = pose.turned(hold.axle());
        Vector3D gap = arm.add(new Vector3D(pose.x(), pose.y(), pose.z())).subtract(hold.chassis());
        Vector3D pitched = new Vector3D(-Math.sin(pose.yaw()), Math.cos(pose.yaw()), 0.0).crossProduct(arm);
        Vector3D yawed = Vector3D.PLUS_K.crossProduct(arm);
        if (hold.length() > 0.0) {
            double length = hold.length();
            double error = (gap.getNormSq() - length * length) / (2.0 * length);
            normal.add(
                    LINK,
                    error,
                    gap.getX() / length,
                    gap.getY() / length,
                    gap.dotProduct(pitched) / length,
                    gap.dotProduct(yawed) / length);
        } else {
            normal.add(BUSH, gap.getX(), 1.0, 0.0, pitched.getX(), yawed.getX());
            normal.add(BUSH, gap.getY(), 0.0, 1.0, pitched.getY(), yawed.getY());
            normal.add(BUSH, gap.getZ(), 0.0, 0.0, pitched.getZ(), yawed.getZ());
        }
    }

    /** The normal equations of one round: J'WJ step = -J'W error. */
    private static final class Normal {

        private final double[][] matrix = new double[UNKNOWNS][UNKNOWNS + 1];

        Normal(double[] at) {
            for (int i = 0; i < UNKNOWNS; i++) {
                matrix[i][i] = FREE;
                matrix[i][UNKNOWNS] = -FREE * at[i];
            }
        }

        void add(double weight, double error, double... slope) {
            for (int i = 0; i < UNKNOWNS; i++) {
                for (int j = 0; j < UNKNOWNS; j++) {
                    matrix[i][j] += weight * slope[i] * slope[j];
                }
                matrix[i][UNKNOWNS] -= weight * slope[i] * error;
            }
        }

        /** Solves by elimination, which needs no pivots as the matrix is positive definite; moves on and returns the largest move. */
        double step(double[] at) {
            for (int i = 0; i < UNKNOWNS; i++) {
                for (int row = i + 1; row < UNKNOWNS; row++) {
                    double factor = matrix[row][i] / matrix[i][i];
                    for (int column = i; column <= UNKNOWNS; column++) {
                        matrix[row][column] -= factor * matrix[i][column];
                    }
                }
            }
            double largest = 0.0;
            double[] move = new double[UNKNOWNS];
            for (int i = UNKNOWNS - 1; i >= 0; i--) {
                double sum = matrix[i][UNKNOWNS];
                for (int j = i + 1; j < UNKNOWNS; j++) {
                    sum -= matrix[i][j] * move[j];
                }
                move[i] = sum / matrix[i][i];
                at[i] += move[i];
                largest = Math.max(largest, Math.abs(move[i]));
            }
            return largest;
        }
    }
}
