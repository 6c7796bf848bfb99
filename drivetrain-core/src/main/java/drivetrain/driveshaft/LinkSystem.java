package drivetrain.driveshaft;

import drivetrain.refusal.Refusal;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Links and bushes that hold an axle. For a given heave and roll it finds the place at which they have to give least: Gauss-Newton on x, y, pitch and yaw. Links are a
 * thousand times as stiff as the bushes that clamp an arm, so that a system which fits exactly fits exactly, and one that is held more than once gives in its bushes.
 *
 * <p>Each search begins where the last two point to, which is near where an axle stands next on a walk of even steps over its travel. Not for use by several threads.
 */
final class LinkSystem {

    private static final int UNKNOWNS = 4;
    private static final int MOST_ROUNDS = 40;
    /** How far the axle may still be off: a hundredth of a micrometer, or as many radians. What is left is a step's share of the step before it. */
    private static final double CONVERGED = 1e-8;

    /** Steps of a walk that differ by less are alike. */
    private static final double ALIKE = 1e-9;

    /** How far a search may begin from where it ends, in meters and radians. */
    private static final double FAR_HEAVE = 0.02;

    private static final double FAR_ROLL = 0.03;

    private static final double LINK = 1e3;
    private static final double BUSH = 1.0;
    /** Holds what nothing else holds, far softer than any bush. */
    private static final double FREE = 1e-9;

    private final List<Hold> holds = new ArrayList<>();
    private final double[] at = new double[UNKNOWNS];
    private final double[] last = new double[UNKNOWNS];
    private final double[] stepped = new double[2];
    private final double[] reached = new double[2];
    private double sideways;

    /** A link from a point of the axle to one of the chassis, or, of no length, a bush that joins the two. */
    private record Hold(Vector3D axle, Vector3D chassis, double length) {}

    LinkSystem link(Vector3D axle, Vector3D chassis) {
        holds.add(new Hold(axle, chassis, axle.distance(chassis)));
        return this;
    }

    /** Lets the bushes of the links hold the axle's middle sideways, where no rod and no slant of the links does. */
    LinkSystem heldSideways() {
        sideways = BUSH;
        return this;
    }

    LinkSystem bush(Vector3D point) {
        holds.add(new Hold(point, point, 0.0));
        return this;
    }

    /** Goes to a far place in even steps, for a search that begins too far away may end where the axle could only stand after being taken apart. */
    AxlePose pose(double heave, double roll) {
        double fromHeave = reached[0];
        double fromRoll = reached[1];
        double far = Math.max(Math.abs(heave - fromHeave) / FAR_HEAVE, Math.abs(roll - fromRoll) / FAR_ROLL);
        int steps = Math.max(1, (int) Math.ceil(far));
        for (int i = 1; i < steps; i++) {
            find(fromHeave + (heave - fromHeave) * i / steps, fromRoll + (roll - fromRoll) * i / steps);
        }
        return find(heave, roll);
    }

    private AxlePose find(double heave, double roll) {
        begin(heave, roll);
        double[][] rolled = rolled(roll);
        Normal normal = new Normal();
        double earlier = 0.0;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            normal.start(at);
            normal.add(sideways, at[1], 0.0, 1.0, 0.0, 0.0);
            Turn turn = turn();
            for (int i = 0; i < rolled.length; i++) {
                add(normal, turn, rolled[i], holds.get(i), heave);
            }
            double step = normal.step(at);
            boolean found = step < CONVERGED || step * step < CONVERGED * earlier;
            earlier = step;
            if (found) {
                return new AxlePose(at[0], at[1], heave, roll, at[2], at[3], misfit(rolled, heave));
            }
        }
        throw Refusal.of("suspension", "", "its links cannot follow the axle over this travel")
                .allowing("links long enough for the bump, droop and articulation given")
                .asException();
    }

    /** Goes on as far as the last time where the axle does, else starts where it stood last. */
    private void begin(double heave, double roll) {
        boolean even =
                Math.abs(heave - reached[0] - stepped[0]) < ALIKE && Math.abs(roll - reached[1] - stepped[1]) < ALIKE;
        for (int i = 0; i < UNKNOWNS; i++) {
            double now = at[i];
            at[i] += even ? now - last[i] : 0.0;
            last[i] = now;
        }
        stepped[0] = heave - reached[0];
        stepped[1] = roll - reached[1];
        reached[0] = heave;
        reached[1] = roll;
    }

    /** The sines and cosines of pitch and yaw. */
    private record Turn(double sinPitch, double cosPitch, double sinYaw, double cosYaw) {

        double ahead(double[] rolled) {
            return cosPitch * rolled[0] + sinPitch * rolled[2];
        }

        double up(double[] rolled) {
            return -sinPitch * rolled[0] + cosPitch * rolled[2];
        }
    }

    /** The axle's ends of the holds, turned by the roll alone, which stays the same over a search. */
    private double[][] rolled(double roll) {
        double sin = Math.sin(roll);
        double cos = Math.cos(roll);
        double[][] rolled = new double[holds.size()][];
        for (int i = 0; i < rolled.length; i++) {
            Vector3D axle = holds.get(i).axle();
            rolled[i] = new double[] {
                axle.getX(), cos * axle.getY() - sin * axle.getZ(), sin * axle.getY() + cos * axle.getZ()
            };
        }
        return rolled;
    }

    private Turn turn() {
        return new Turn(Math.sin(at[2]), Math.cos(at[2]), Math.sin(at[3]), Math.cos(at[3]));
    }

    private double misfit(double[][] rolled, double heave) {
        Turn turn = turn();
        double most = 0.0;
        for (int i = 0; i < rolled.length; i++) {
            Vector3D chassis = holds.get(i).chassis();
            double ahead = turn.ahead(rolled[i]);
            double x = turn.cosYaw() * ahead - turn.sinYaw() * rolled[i][1] + at[0] - chassis.getX();
            double y = turn.sinYaw() * ahead + turn.cosYaw() * rolled[i][1] + at[1] - chassis.getY();
            double z = turn.up(rolled[i]) + heave - chassis.getZ();
            most = Math.max(
                    most,
                    Math.abs(Math.sqrt(x * x + y * y + z * z) - holds.get(i).length()));
        }
        return most;
    }

    /** Adds a hold with its slopes: forward, sideways, by pitch about the axle's own cross axis, by yaw about the vertical. */
    private void add(Normal normal, Turn turn, double[] rolled, Hold hold, double heave) {
        double ahead = turn.ahead(rolled);
        double armZ = turn.up(rolled);
        double armX = turn.cosYaw() * ahead - turn.sinYaw() * rolled[1];
        double armY = turn.sinYaw() * ahead + turn.cosYaw() * rolled[1];
        double x = armX + at[0] - hold.chassis().getX();
        double y = armY + at[1] - hold.chassis().getY();
        double z = armZ + heave - hold.chassis().getZ();
        double pitchedX = turn.cosYaw() * armZ;
        double pitchedY = turn.sinYaw() * armZ;
        double pitchedZ = -turn.sinYaw() * armY - turn.cosYaw() * armX;
        double length = hold.length();
        if (length > 0.0) {
            normal.add(
                    LINK,
                    (x * x + y * y + z * z - length * length) / (2.0 * length),
                    x / length,
                    y / length,
                    (x * pitchedX + y * pitchedY + z * pitchedZ) / length,
                    (y * armX - x * armY) / length);
        } else {
            normal.add(BUSH, x, 1.0, 0.0, pitchedX, -armY);
            normal.add(BUSH, y, 0.0, 1.0, pitchedY, armX);
            normal.add(BUSH, z, 0.0, 0.0, pitchedZ, 0.0);
        }
    }

    /** The normal equations of one round: J'WJ step = -J'W error. */
    private static final class Normal {

        private final double[][] matrix = new double[UNKNOWNS][UNKNOWNS + 1];
        private final double[] slope = new double[UNKNOWNS];

        void start(double[] at) {
            for (int i = 0; i < UNKNOWNS; i++) {
                java.util.Arrays.fill(matrix[i], 0.0);
                matrix[i][i] = FREE;
                matrix[i][UNKNOWNS] = -FREE * at[i];
            }
        }

        void add(double weight, double error, double forward, double sideways, double pitch, double yaw) {
            slope[0] = forward;
            slope[1] = sideways;
            slope[2] = pitch;
            slope[3] = yaw;
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
