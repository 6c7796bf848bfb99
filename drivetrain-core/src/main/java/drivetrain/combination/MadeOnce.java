package drivetrain.combination;

import java.util.Optional;
import java.util.function.Supplier;

/** A part that is made when it is first asked for. */
final class MadeOnce<T> implements Supplier<Part<T>> {

    private final Supplier<Part<T>> maker;
    private Optional<Part<T>> made = Optional.empty();

    MadeOnce(Supplier<Part<T>> maker) {
        this.maker = maker;
    }

    @Override
    public synchronized Part<T> get() {
        Part<T> part = made.orElseGet(maker);
        made = Optional.of(part);
        return part;
    }
}
