package drivetrain.repl.shell;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/** Runs one calculation at a time on a thread of its own, so that it can be given up at once. */
final class Worker {

    private final AtomicReference<@Nullable FutureTask<?>> running = new AtomicReference<>();

    /**
     * Runs a calculation and waits for it.
     *
     * @return its value, or empty if it was given up
     * @throws RuntimeException what the calculation threw
     */
    <T> Optional<T> run(Callable<T> calculation) {
        FutureTask<T> task = new FutureTask<>(calculation);
        running.set(task);
        Thread thread = new Thread(task, "calculation");
        thread.setDaemon(true);
        thread.start();
        try {
            return Optional.of(task.get());
        } catch (CancellationException givenUp) {
            return Optional.empty();
        } catch (InterruptedException interrupted) {
            task.cancel(true);
            return Optional.empty();
        } catch (ExecutionException failed) {
            throw unwrapped(failed);
        } finally {
            running.set(null);
        }
    }

    /** Gives the running calculation up; does nothing if there is none. */
    void giveUp() {
        FutureTask<?> task = running.get();
        if (task != null) {
            task.cancel(true);
        }
    }

    private static RuntimeException unwrapped(ExecutionException failed) {
        Throwable cause = failed.getCause();
        if (cause instanceof RuntimeException unchecked) {
            return unchecked;
        }
        return new IllegalStateException(cause);
    }
}
