package drivetrain.planner;

import java.util.PriorityQueue;

/** The question of {@link PackageShelf} by the plain loop that anybody would write: every combination, rejected as early as it can be. */
final class PlainSearch {

    private PlainSearch() {}

    static long run(PackageShelf s) {
        long passing = 0;
        PriorityQueue<Double> worstFirst = new PriorityQueue<>((a, b) -> Double.compare(b, a));
        double worst = Double.POSITIVE_INFINITY;
        for (int e = 0; e < s.sizes[0]; e++) {
            for (int t = 0; t < s.sizes[1]; t++) {
                for (int x = 0; x < s.sizes[2]; x++) {
                    for (int a = 0; a < s.sizes[3]; a++) {
                        double crawl = s.first[t] * s.low[x] * s.axle[a];
                        for (int r = 0; r < s.sizes[4]; r++) {
                            double cruise = PackageShelf.SPEED / s.radius[r] * s.top[t] * s.high[x] * s.axle[a];
                            double shaft = Math.min(
                                    PackageShelf.FAST / s.radius[r] * s.axle[a], s.maximum[e] / s.top[t] / s.high[x]);
                            for (int d = 0; d < s.sizes[5]; d++) {
                                if (cruise >= 188.0
                                        && cruise <= 230.0
                                        && crawl >= 60.0
                                        && s.flow[e] <= 0.05
                                        && shaft / s.critical[d] <= 0.70) {
                                    passing++;
                                    double creep = s.idle[e] * s.radius[r] / crawl;
                                    double wheels = 0.85 * s.torque[e] * crawl;
                                    double off = cruise / 209.4;
                                    double score = creep / wheels * (off > 1.0 ? off * off : 1.0 / (off * off));
                                    if (score < worst || worstFirst.size() < 20) {
                                        worstFirst.add(score);
                                        if (worstFirst.size() > 20) {
                                            worstFirst.remove();
                                            worst = worstFirst.element();
                                        }
                                    }
                                }
                            }
                        }
                    }
                }
            }
        }
        return passing;
    }
}
