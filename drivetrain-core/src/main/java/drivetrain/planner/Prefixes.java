package drivetrain.planner;

/** Cuts the work into tasks: each fixes one position on each of the outermost axes. */
final class Prefixes {

    /** So many for each thread even out the load; more of them cost more than that gains, since each task finds out anew what its neighbors know. */
    private static final int SEARCHES_PER_THREAD = 32;

    /** Where every combination is visited the tasks share nothing, and so many tell how far the work is. */
    private static final int VISITS = 1024;

    private static final int MOST_TASKS = 1 << 20;

    private final int[] sizes;
    private final int tasks;

    private Prefixes(int[] sizes, int tasks) {
        this.sizes = sizes;
        this.tasks = tasks;
    }

    /** Cuts a search that leaves whole blocks out. */
    static Prefixes ofSearch(Axis[] axes, int most, int threads) {
        return of(axes, most, (long) SEARCHES_PER_THREAD * threads);
    }

    /** Cuts a visit of every combination. */
    static Prefixes ofVisit(Axis[] axes, int most, int threads) {
        return of(axes, most, Math.max(VISITS, (long) SEARCHES_PER_THREAD * threads));
    }

    /** Takes as many of the first axes as make enough tasks, but never all of them. */
    private static Prefixes of(Axis[] axes, int most, long enough) {
        int tasks = 1;
        int depth = 0;
        while (depth < most && tasks < enough && (long) tasks * axes[depth].size() <= MOST_TASKS) {
            tasks *= axes[depth].size();
            depth++;
        }
        int[] sizes = new int[depth];
        for (int d = 0; d < depth; d++) {
            sizes[d] = axes[d].size();
        }
        return new Prefixes(sizes, tasks);
    }

    int tasks() {
        return tasks;
    }

    int depth() {
        return sizes.length;
    }

    /** Returns for a task the index on each axis; the outermost axis changes last. */
    int[] of(int task) {
        int[] positions = new int[sizes.length];
        int rest = task;
        for (int d = sizes.length - 1; d >= 0; d--) {
            positions[d] = rest % sizes[d];
            rest /= sizes[d];
        }
        return positions;
    }
}
