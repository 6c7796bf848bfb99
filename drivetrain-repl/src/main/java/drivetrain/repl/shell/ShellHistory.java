package drivetrain.repl.shell;

import java.time.Instant;
import java.util.Optional;
import org.jline.reader.impl.history.DefaultHistory;

/** The lines that the arrow keys bring back: those of the history file, then those of this session. */
final class ShellHistory extends DefaultHistory {

    private final Optional<HistoryFile> file;
    private boolean reading;

    ShellHistory(Optional<HistoryFile> file) {
        this.file = file;
    }

    @Override
    public void load() {
        reading = true;
        try {
            file.ifPresent(known -> known.read().forEach(line -> internalAdd(Instant.EPOCH, line)));
        } finally {
            reading = false;
        }
        moveToEnd();
    }

    @Override
    protected void internalAdd(Instant time, String line, boolean checkDuplicates) {
        super.internalAdd(time, line, checkDuplicates);
        if (!reading) {
            file.ifPresent(known -> known.append(line));
        }
    }

    @Override
    public void save() {
        // Each line has been written already.
    }
}
