package drivetrain.repl.command.compare;

import drivetrain.planner.Watch;
import drivetrain.repl.command.Progress;
import java.util.function.LongSupplier;

/** Looks on while a sweep runs: says how far it is, and stops one that would take long unless that was confirmed. */
final class SweepWatch implements Watch {

    private static final double LONG_SECONDS = 20.0;

    /** What is expected from the first few packages asked takes up to ten times as long as it will once Java has compiled it. */
    private static final double COLD = 10.0;

    private static final double TELL_SECONDS = 1.0;
    private static final double FIRST_GUESS_SECONDS = 1.0;
    private static final double SILENT_SECONDS = 5.0;

    /** A search that is not done with its first part by then has some thirty parts or more for each thread. */
    private static final double PARTS = 30.0;

    private static final double NANOS = 1e9;

    private final LongSupplier clock;
    private final Progress progress;
    private final boolean isConfirmed;
    private volatile long start;
    private volatile double fraction;
    private volatile double expected;
    private double told;

    SweepWatch(Progress progress, boolean isConfirmed) {
        this(System::nanoTime, progress, isConfirmed);
    }

    /** Looks on by another clock, which counts nanoseconds. */
    SweepWatch(LongSupplier clock, Progress progress, boolean isConfirmed) {
        this.clock = clock;
        this.progress = progress;
        this.isConfirmed = isConfirmed;
    }

    @Override
    public boolean isCanceled() {
        if (!isConfirmed && fraction == 0.0 && elapsed() > SILENT_SECONDS) {
            expected = SILENT_SECONDS * PARTS;
        }
        return expected > 0.0;
    }

    @Override
    public void expect(double seconds) {
        if (!isConfirmed && seconds > COLD * LONG_SECONDS) {
            expected = seconds;
        }
    }

    @Override
    public void progress(double done) {
        if (done < fraction) {
            // The next pass over the packages begins.
            start = clock.getAsLong();
            told = 0.0;
        }
        fraction = done;
        double elapsed = elapsed();
        double whole = elapsed / Math.max(done, 1e-6);
        if (!isConfirmed && elapsed > FIRST_GUESS_SECONDS && whole > LONG_SECONDS) {
            expected = whole;
        } else if (elapsed > TELL_SECONDS && elapsed - told > TELL_SECONDS && done < 1.0) {
            told = elapsed;
            progress.tell("sweep: " + Math.round(100.0 * done) + " %, about " + words(whole - elapsed) + " left");
        }
    }

    /** Counts from the first call on. */
    private double elapsed() {
        if (start == 0) {
            start = clock.getAsLong();
        }
        return (clock.getAsLong() - start) / NANOS;
    }

    /** Returns how many seconds the sweep would have taken; 0 if it was not stopped for that. */
    double expected() {
        return expected;
    }

    /** Says a time in words. */
    static String words(double seconds) {
        if (seconds < 90.0) {
            return Math.max(1, Math.round(seconds)) + " s";
        }
        if (seconds < 5400.0) {
            return Math.round(seconds / 60.0) + " min";
        }
        if (seconds < 172_800.0) {
            return Math.round(seconds / 3600.0) + " h";
        }
        double days = seconds / 86_400.0;
        return days < 730.0 ? Math.round(days) + " days" : Math.round(days / 365.25) + " years";
    }
}
