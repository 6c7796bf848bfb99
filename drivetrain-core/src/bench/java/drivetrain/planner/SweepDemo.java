package drivetrain.planner;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/**
 * Sweeps invented shelves of 10^6, 10^8 and 10^9 combinations by the planner and by the plain loop that anybody would write, in one run, and prints both times and
 * their ratio. Ends with an error if the two do not count alike.
 *
 * <p>Times are medians of wall time after a warm-up; those of the first call, on a cold machine, stand beside them.
 */
public final class SweepDemo {

    private static final double NANOS = 1e9;
    private static final double WARM_SECONDS = 6.0;
    private static final double MEASURED_SECONDS = 3.0;
    private static final double MILLIS = 1e3;
    private static final int LONG_ENOUGH = 200_000_000;

    private SweepDemo() {}

    /**
     * Runs the demo.
     *
     * @param sizes how many combinations: any of 1000000, 100000000 and 1000000000; all of them if none is given
     */
    public static void main(String[] sizes) {
        List<String> asked = sizes.length == 0 ? List.of("1000000", "100000000", "1000000000") : List.of(sizes);
        PrintStream out = System.out;
        out.printf(
                Locale.ROOT,
                "Java %s, %d processors, %d MB of heap%n",
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors(),
                Runtime.getRuntime().maxMemory() >> 20);
        out.println("eight figures of each combination, four constraints, three weighted objectives, the best 20");
        out.printf(
                "%13s %13s %12s %12s %12s %9s%n",
                "combinations", "pass", "planner cold", "planner warm", "plain loop", "ratio");
        for (String size : asked) {
            compare(Long.parseLong(size), out);
        }
        visit(out);
    }

    private static void compare(long combinations, PrintStream out) {
        PackageShelf shelf = PackageShelf.of(combinations);
        Query query = shelf.query();
        Planner planner = Planner.onAllProcessors();
        long start = System.nanoTime();
        long passing = planner.select(query, Watch.PATIENT).passing();
        double cold = seconds(start);
        double warm = median(() -> planner.select(query, Watch.PATIENT).passing(), passing);
        double plain = combinations < LONG_ENOUGH
                ? median(() -> PlainSearch.run(shelf), passing)
                : once(() -> PlainSearch.run(shelf), passing);
        out.printf(
                Locale.ROOT,
                "%,13d %,13d %9.1f ms %9.2f ms %9.1f ms %,9.0f%n",
                combinations,
                passing,
                MILLIS * cold,
                MILLIS * warm,
                MILLIS * plain,
                plain / warm);
    }

    /** A figure that says nothing of how it moves must be asked for every combination; one thread, by the library's own loop. */
    private static void visit(PrintStream out) {
        PackageShelf shelf = PackageShelf.of(100_000_000L);
        Query query = shelf.visitingQuery();
        Planner planner = Planner.on(1);
        long passing = planner.select(query, Watch.PATIENT).passing();
        double warm = median(() -> planner.select(query, Watch.PATIENT).passing(), passing);
        out.printf(
                Locale.ROOT,
                "a figure of one's own, 100,000,000 combinations visited on one thread: %.0f ms, %.2g a second%n",
                MILLIS * warm,
                100_000_000.0 / warm);
    }

    /** The median time of a search after a warm-up. */
    private static double median(Supplier<Long> search, long expected) {
        long start = System.nanoTime();
        while (seconds(start) < WARM_SECONDS) {
            once(search, expected);
        }
        List<Double> times = new ArrayList<>();
        start = System.nanoTime();
        while (times.size() < 3 || seconds(start) < MEASURED_SECONDS) {
            times.add(once(search, expected));
        }
        Collections.sort(times);
        return times.get(times.size() / 2);
    }

    private static double once(Supplier<Long> search, long expected) {
        long start = System.nanoTime();
        long passing = search.get();
        double time = seconds(start);
        if (passing != expected) {
            throw new IllegalStateException(
                    "one search counts " + passing + " combinations and another one " + expected);
        }
        return time;
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / NANOS;
    }
}
