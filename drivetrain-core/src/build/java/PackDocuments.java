import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;

/**
 * A step of the build: writes a JSON document beside each YAML document below a folder, with the same fields, texts and digits.
 *
 * <p>It changes the notation and nothing else; what the documents say is read and checked by the library alone.
 */
final class PackDocuments {

    private static final String YAML = ".yaml";
    private static final String JSON = ".json";

    private PackDocuments() {}

    public static void main(String[] folders) throws IOException {
        for (String folder : folders) {
            for (Path document : documents(Path.of(folder))) {
                pack(document);
            }
        }
    }

    private static List<Path> documents(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(YAML)).toList();
        }
    }

    private static void pack(Path document) {
        String name = document.getFileName().toString();
        Path packed = document.resolveSibling(name.substring(0, name.length() - YAML.length()) + JSON);
        try (JsonParser in = new YAMLFactory().createParser(ObjectReadContext.empty(), Files.readString(document));
                JsonGenerator out = new JsonFactory()
                        .createGenerator(ObjectWriteContext.empty(), Files.newBufferedWriter(packed))) {
            in.nextToken();
            out.copyCurrentStructureExact(in);
        } catch (IOException e) {
            throw new UncheckedIOException(document.toString(), e);
        }
    }
}
