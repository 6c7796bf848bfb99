package drivetrain.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** The documents under test resources: invented parts, no check of any figure. */
final class Samples {

    static final String CATALOG = text("catalog.yaml");
    static final String ORDER = text("order.yaml");

    private Samples() {}

    static String text(String name) {
        try (InputStream in = Samples.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Path path(String name) {
        try {
            return Path.of(Samples.class.getResource(name).toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A catalog whose only list is the one given. */
    static String catalogOf(String list) {
        return "document: drivetrain-catalog\nversion: 1\ntitle: Test shelf\n" + list;
    }
}
