package drivetrain.planner;

import java.util.List;
import java.util.Random;

/**
 * An invented shelf of the sizes that a benchmark asks for, and the question that a shop asks of it: engine speed at 65 mph in top gear, crawl ratio, crawl
 * speed, wheel torque in first low, road speed at maximum engine speed in top gear, driveshaft speed at 100 mph or at the gearing limit, its fraction of
 * the shaft's critical speed, and fuel flow at peak power; four constraints, three wishes, the best 20.
 */
final class PackageShelf {

    static final double SPEED = 65.0 * 0.44704;
    static final double FAST = 100.0 * 0.44704;

    final int[] sizes;
    final double[] torque;
    final double[] idle;
    final double[] maximum;
    final double[] flow;
    final double[] top;
    final double[] first;
    final double[] high;
    final double[] low;
    final double[] axle;
    final double[] radius;
    final double[] critical;

    PackageShelf(int engines, int transmissions, int transfers, int axles, int tires, int shafts) {
        sizes = new int[] {engines, transmissions, transfers, axles, tires, shafts};
        Random random = new Random(7);
        torque = between(random, engines, 350.0, 800.0);
        idle = between(random, engines, 58.0, 84.0);
        maximum = between(random, engines, 350.0, 720.0);
        flow = between(random, engines, 0.02, 0.06);
        top = between(random, transmissions, 0.6, 1.0);
        first = between(random, transmissions, 2.5, 6.5);
        high = between(random, transfers, 0.99, 1.01);
        low = between(random, transfers, 1.9, 4.5);
        axle = steps(axles, 3.07, 5.38);
        radius = between(random, tires, 0.34, 0.52);
        critical = between(random, shafts, 300.0, 900.0);
    }

    /** Sizes that make 10^6, 10^8 or 10^9 combinations. */
    static PackageShelf of(long combinations) {
        if (combinations == 1_000_000L) {
            return new PackageShelf(10, 10, 5, 20, 20, 5);
        }
        return combinations == 100_000_000L
                ? new PackageShelf(20, 20, 10, 50, 50, 10)
                : new PackageShelf(20, 20, 10, 100, 100, 25);
    }

    private static double[] between(Random random, int count, double low, double high) {
        return random.doubles(count, low, high).toArray();
    }

    private static double[] steps(int count, double low, double high) {
        double[] steps = new double[count];
        for (int i = 0; i < count; i++) {
            steps[i] = low + (high - low) * i / (count - 1);
        }
        return steps;
    }

    private static Column column(int dimension, double[] values) {
        return Column.of(dimension, values);
    }

    /** The question, its limits as a shop would set them. */
    Query query() {
        Column topGear = column(1, top);
        Column lowGear = column(1, first);
        Column highRange = column(2, high);
        Column lowRange = column(2, low);
        Column ratio = column(3, axle);
        Column rolling = column(4, radius);
        Figure cruise =
                Product.of(SPEED).over(rolling).times(topGear).times(highRange).times(ratio);
        Figure crawl = Product.of(1.0).times(lowGear).times(lowRange).times(ratio);
        Figure creep = Product.of(1.0)
                .times(column(0, idle))
                .times(rolling)
                .over(lowGear)
                .over(lowRange)
                .over(ratio);
        Figure wheels = Product.of(0.85)
                .times(column(0, torque))
                .times(lowGear)
                .times(lowRange)
                .times(ratio);
        Column shaft = column(5, critical);
        Figure fraction = Extreme.least(
                Product.of(FAST).over(rolling).times(ratio).over(shaft),
                Product.of(1.0)
                        .times(column(0, maximum))
                        .over(topGear)
                        .over(highRange)
                        .over(shaft));
        Figure fuel = Product.of(1.0).times(column(0, flow));
        return new Query(
                List.of(sizes[0], sizes[1], sizes[2], sizes[3], sizes[4], sizes[5]),
                List.of(
                        Constraint.between(cruise, 188.0, 230.0),
                        Constraint.atLeast(crawl, 60.0),
                        Constraint.atMost(fraction, 0.70),
                        Constraint.atMost(fuel, 0.05)),
                List.of(
                        Objective.lowest(creep, 1.0),
                        Objective.highest(wheels, 1.0),
                        Objective.nearest(cruise, 2.0, 209.4)),
                20);
    }

    /** The same with a figure of one's own, here a rough cost of the running gear, as a constraint; every combination must be visited. */
    Query visitingQuery() {
        Visited cost = Visited.of(
                (x, from, to, out) -> {
                    double[] a = x[0];
                    double[] b = x[1];
                    double[] c = x[2];
                    double[] d = x[3];
                    double[] e = x[4];
                    double[] f = x[5];
                    for (int i = from; i < to; i++) {
                        out[i] = a[i] * 3.0 + b[i] * b[i] + c[i] / d[i] + e[i] * f[i];
                    }
                },
                column(0, torque),
                column(3, axle),
                column(5, critical),
                column(4, radius),
                column(1, first),
                column(2, low));
        Query declared = query();
        return new Query(
                declared.sizes(), List.of(Constraint.atMost(cost, 2400.0)), List.of(Objective.lowest(cost, 1.0)), 20);
    }
}
