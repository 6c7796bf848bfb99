package drivetrain.repl.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
class WorkerTest {

    private final Worker worker = new Worker();

    @Test
    void givesTheValue() {
        assertThat(worker.run(() -> "value")).contains("value");
    }

    @Test
    void passesARefusalOn() {
        assertThatThrownBy(() -> worker.run(() -> {
                    throw Refusal.of("axle", "x", "is wrong").asException();
                }))
                .isInstanceOf(RefusedException.class);
    }

    @Test
    void passesAFaultOn() {
        assertThatThrownBy(() -> worker.run(() -> {
                    throw new IOException("gone");
                }))
                .isInstanceOf(IllegalStateException.class)
                .hasRootCauseMessage("gone");
    }

    @Test
    void isGivenUpWithinHalfASecond() throws InterruptedException {
        CountDownLatch started = new CountDownLatch(1);
        Thread stopper = new Thread(() -> {
            awaitQuietly(started);
            worker.giveUp();
        });
        stopper.start();
        long before = System.nanoTime();
        assertThat(worker.run(() -> {
                    started.countDown();
                    long end = System.nanoTime() + Duration.ofSeconds(10).toNanos();
                    while (System.nanoTime() < end) {
                        Thread.onSpinWait();
                    }
                    return "too late";
                }))
                .isEmpty();
        assertThat(Duration.ofNanos(System.nanoTime() - before)).isLessThan(Duration.ofSeconds(5));
        stopper.join();
        worker.giveUp();
    }

    @Test
    void givesUpWhenItsOwnThreadIsInterrupted() {
        Thread.currentThread().interrupt();
        assertThat(worker.run(() -> {
                    Thread.sleep(10_000);
                    return "too late";
                }))
                .isEmpty();
        assertThat(Thread.interrupted()).isFalse();
    }

    private static void awaitQuietly(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
