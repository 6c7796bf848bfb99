package drivetrain.repl.shell;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.nio.charset.Charset;
import java.util.ArrayDeque;
import java.util.Deque;

/** Keys that somebody presses who looks at the screen: each batch waits until the screen shows what it is for. */
final class Keys extends InputStream {

    private static final int LONGEST_WAIT_MS = 20_000;

    private record Batch(String awaited, byte[] bytes) {}

    private final ByteArrayOutputStream screen;
    private final Charset charset;
    private final Deque<Batch> batches = new ArrayDeque<>();
    private int at;

    Keys(ByteArrayOutputStream screen, Charset charset) {
        this.screen = screen;
        this.charset = charset;
    }

    /** Adds keys that are pressed once the screen shows a text. */
    Keys once(String awaited, String keys) {
        batches.add(new Batch(awaited, keys.getBytes(charset)));
        return this;
    }

    @Override
    public int read() throws IOException {
        Batch batch = batches.peek();
        if (batch == null) {
            return -1;
        }
        if (at == 0) {
            await(batch.awaited());
        }
        int next = batch.bytes()[at++] & 0xFF;
        if (at == batch.bytes().length) {
            batches.remove();
            at = 0;
        }
        return next;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
        int next = read();
        if (next < 0) {
            return -1;
        }
        buffer[offset] = (byte) next;
        return 1;
    }

    private void await(String awaited) throws IOException {
        for (int waited = 0; !screen.toString(charset).contains(awaited); waited += 5) {
            if (waited > LONGEST_WAIT_MS) {
                throw new IOException("the screen never showed " + awaited);
            }
            try {
                Thread.sleep(5);
            } catch (InterruptedException interrupted) {
                throw new InterruptedIOException();
            }
        }
    }
}
