package drivetrain.repl.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.Part;
import drivetrain.combination.PartKind;
import drivetrain.refusal.RefusedException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DemoTest {

    private static final Catalog CATALOG = Demo.shelf().catalog();

    @Test
    void hasPartsOfEveryKind() {
        assertThat(PartKind.all())
                .allSatisfy(kind -> assertThat(CATALOG.parts(kind)).isNotEmpty());
    }

    /** What makes it sound to look literals up without reading the shelf. */
    @Test
    void namesNoPartByALiteral() {
        for (PartKind<?> kind : PartKind.all()) {
            for (Part<?> part : CATALOG.parts(kind)) {
                assertThatThrownBy(() -> kind.parse(part.name()))
                        .as(part.name())
                        .isInstanceOf(RefusedException.class);
            }
        }
    }

    @Test
    void hasOrdersThatCanBeLookedUp() {
        assertThat(Demo.orders())
                .allSatisfy(name -> assertThat(Combination.resolve(Demo.order(name), CATALOG)
                                .gearTrain()
                                .value())
                        .isPresent());
    }

    @Test
    void refusesAnOrderThatItHasNot() {
        assertThatThrownBy(() -> Demo.order("cost-tourer"))
                .hasMessageContaining("coast-tourer, ranch-crawler, valley-hauler");
    }

    @Test
    void readsEveryDocumentOfTheFolder() throws IOException {
        Path folder = Path.of("drivetrain-core/src/main/resources/drivetrain/demo");
        try (Stream<Path> files = Files.list(folder)) {
            List<String> documents = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .toList();
            assertThat(Demo.documents()).containsExactlyInAnyOrderElementsOf(documents);
        }
        try (Stream<Path> files = Files.list(folder.resolve("orders"))) {
            List<String> orders = files.map(
                            file -> file.getFileName().toString().replace(".yaml", ""))
                    .toList();
            assertThat(Demo.orders()).containsExactlyInAnyOrderElementsOf(orders);
        }
    }
}
