package drivetrain.repl.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.combination.Catalog;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class ShelfTest {

    private final AtomicInteger reads = new AtomicInteger();
    private final Shelf lazy = Shelf.lazy("lazy", () -> {
        reads.incrementAndGet();
        return Catalog.titled("read").build();
    });

    @Test
    void isNotReadForLiterals() {
        Specification literals =
                Specification.empty().with(Slot.REAR_AXLE, "41/10").with(Slot.TIRE, "285/75R16");
        assertThat(lazy.catalogFor(literals)).isSameAs(Catalog.empty());
        assertThat(reads).hasValue(0);
    }

    @Test
    void isReadOnceForNames() {
        Specification named = Specification.empty().with(Slot.REAR_AXLE, "rp-4.10");
        assertThat(lazy.catalogFor(named).title()).isEqualTo("read");
        assertThat(lazy.catalogFor(named)).isSameAs(lazy.catalog());
        assertThat(reads).hasValue(1);
    }

    @Test
    void stillSaysWhyItCannotBeRead() {
        Shelf broken = Shelf.lazy("broken", () -> {
            throw new IllegalStateException("gone");
        });
        assertThatThrownBy(broken::catalog).hasMessage("gone");
    }

    @Test
    void asksAReadCatalogFirst() {
        Catalog catalog = Catalog.titled("shop").build();
        Shelf shelf = Shelf.of("shop.yaml", catalog);
        assertThat(shelf.name()).isEqualTo("shop.yaml");
        assertThat(shelf.catalogFor(Specification.empty())).isSameAs(catalog);
    }
}
