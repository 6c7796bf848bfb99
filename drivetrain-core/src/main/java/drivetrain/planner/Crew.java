package drivetrain.planner;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.IntConsumer;

/**
 * Does tasks one after the other, and with several threads as soon as the work turns out to be worth it. The tasks must not depend on who does them
 * and in which order.
 */
final class Crew {

    private static final long WORTH_FORKING_NANOS = 5_000_000;

    /** How many times the watch is told, about, however many tasks there are. */
    private static final int TELLINGS = 1024;

    private final int threads;
    private final Watch watch;
    private final AtomicBoolean isOver = new AtomicBoolean();
    private final AtomicInteger next = new AtomicInteger();
    private final AtomicInteger done = new AtomicInteger();

    Crew(int threads, Watch watch) {
        this.threads = threads;
        this.watch = watch;
    }

    /** Does the tasks 0 to {@code tasks} - 1; each thread makes a worker of its own. */
    void run(int tasks, Function<BooleanSupplier, IntConsumer> workers) {
        long start = System.nanoTime();
        BooleanSupplier isCanceled = () ->
                isOver.get() || watch.isCanceled() || Thread.currentThread().isInterrupted();
        IntConsumer worker = workers.apply(isCanceled);
        int task = next.getAndIncrement();
        while (task < tasks) {
            worker.accept(task);
            int finished = done.incrementAndGet();
            boolean isLong = System.nanoTime() - start > WORTH_FORKING_NANOS;
            if (isLong) {
                tell(finished, tasks);
            }
            if (isLong && threads > 1 && next.get() < tasks) {
                fork(tasks, workers, isCanceled);
            }
            task = next.getAndIncrement();
        }
    }

    private void fork(int tasks, Function<BooleanSupplier, IntConsumer> workers, BooleanSupplier isCanceled) {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            Future<?>[] parts = new Future<?>[threads];
            for (int i = 0; i < threads; i++) {
                parts[i] = pool.submit(ForkJoinTask.adapt(() -> work(tasks, workers.apply(isCanceled))));
            }
            for (Future<?> part : parts) {
                part.get();
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new CancellationException("the search was canceled");
        } catch (ExecutionException failed) {
            throw failed.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(failed);
        } finally {
            isOver.set(true);
            pool.shutdownNow();
        }
    }

    private void work(int tasks, IntConsumer worker) {
        int task = next.getAndIncrement();
        while (task < tasks) {
            worker.accept(task);
            tell(done.incrementAndGet(), tasks);
            task = next.getAndIncrement();
        }
    }

    private void tell(int finished, int tasks) {
        long now = (long) finished * TELLINGS / tasks;
        long before = (finished - 1L) * TELLINGS / tasks;
        if (now != before) {
            tell(tasks);
        }
    }

    private synchronized void tell(int tasks) {
        watch.progress((double) done.get() / tasks);
    }
}
