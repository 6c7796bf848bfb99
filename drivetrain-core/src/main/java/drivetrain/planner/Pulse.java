package drivetrain.planner;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/** Asks now and then whether to go on. */
final class Pulse {

    private static final int BEATS = 1 << 10;

    private final BooleanSupplier isCanceled;
    private int beats;

    Pulse(BooleanSupplier isCanceled) {
        this.isCanceled = isCanceled;
    }

    /** Called once in each step of the work. */
    void beat() {
        if (++beats >= BEATS) {
            beats = 0;
            ask();
        }
    }

    /** Asks at once, ahead of a step that may take long. */
    void ask() {
        if (isCanceled.getAsBoolean()) {
            throw new CancellationException("the search was canceled");
        }
    }
}
