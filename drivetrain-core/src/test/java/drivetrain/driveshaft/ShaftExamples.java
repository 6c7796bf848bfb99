package drivetrain.driveshaft;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Reads the published figures of {@code shaft-examples.csv}. */
final class ShaftExamples {

    private ShaftExamples() {}

    static double printed(String name) {
        try (InputStream in = ShaftExamples.class.getResourceAsStream("shaft-examples.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.startsWith(name + ","))
                    .mapToDouble(line -> Double.parseDouble(line.substring(name.length() + 1)))
                    .findFirst()
                    .orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
