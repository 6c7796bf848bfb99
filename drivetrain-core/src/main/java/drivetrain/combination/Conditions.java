package drivetrain.combination;

import drivetrain.atmosphere.Air;
import drivetrain.quantity.Speed;
import drivetrain.road.Surface;
import java.util.Optional;

/** How a package is driven, read from the words of its order when it is first asked for. */
final class Conditions {

    private static final Speed SLOWEST_LIMITER = Speed.ofKilometersPerHour(10.0);
    private static final Speed FASTEST_LIMITER = Speed.ofKilometersPerHour(500.0);

    private final Specification order;
    private final Once<Optional<Speed>> cruise = new Once<>(this::readCruise);
    private final Once<Optional<Surface>> surface = new Once<>(this::readSurface);
    private final Once<Optional<Air>> air = new Once<>(this::readAir);
    private final Once<Optional<Speed>> limiter = new Once<>(this::readLimiter);

    Conditions(Specification order) {
        this.order = order;
    }

    Optional<Speed> cruise() {
        return cruise.get();
    }

    Optional<Surface> surface() {
        return surface.get();
    }

    Optional<Air> air() {
        return air.get();
    }

    Optional<Speed> limiter() {
        return limiter.get();
    }

    /** Reads all of them, so that one which cannot be read is refused. */
    void readAll() {
        cruise();
        surface();
        air();
        limiter();
    }

    private Optional<Speed> readCruise() {
        return order.cruise().map(Speed::parse).map(speed -> speed.requirePositive("cruise speed"));
    }

    private Optional<Surface> readSurface() {
        return order.surface().map(Surface::parse);
    }

    private Optional<Air> readAir() {
        return order.air().map(AirText::read);
    }

    private Optional<Speed> readLimiter() {
        return order.limiter()
                .map(Speed::parse)
                .map(speed -> speed.requireBetween(
                        "speed limiter", SLOWEST_LIMITER, FASTEST_LIMITER, Speed.KILOMETER_PER_HOUR));
    }
}
