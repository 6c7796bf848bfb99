package drivetrain.combination;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * Something that is made when it is first asked for, and is the same from then on. A maker that fails is asked again.
 *
 * @param <T> the type of the thing
 */
final class Once<T> implements Supplier<T> {

    private final Supplier<? extends T> maker;
    private volatile Optional<T> made = Optional.empty();

    Once(Supplier<? extends T> maker) {
        this.maker = maker;
    }

    @Override
    public T get() {
        Optional<T> known = made;
        return known.isPresent() ? known.get() : make();
    }

    private synchronized T make() {
        T thing = made.isPresent() ? made.get() : maker.get();
        made = Optional.of(thing);
        return thing;
    }
}
