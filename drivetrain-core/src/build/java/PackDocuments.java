import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;

/**
 * A step of the build: writes the YAML documents below a folder once more as JSON, with the same fields, texts and digits.
 *
 * <p>A catalog that lies in the folder itself is taken apart: each of its parts becomes a catalog of one part, {@code parts/KIND/NAME.json}, so that a start reads
 * the parts that it needs, and {@code parts.txt} lists them, with document, kind and name in a line. Any other document is written beside the first.
 *
 * <p>It changes the notation and nothing else; what the documents say is read and checked by the library alone.
 */
final class PackDocuments {

    private static final String YAML = ".yaml";
    private static final String JSON = ".json";

    private PackDocuments() {}

    public static void main(String[] folders) throws IOException {
        for (String folder : folders) {
            List<String> index = new ArrayList<>();
            for (Path document : documents(Path.of(folder))) {
                if (document.getParent().equals(Path.of(folder))) {
                    takeApart(document, index);
                } else {
                    pack(document);
                }
            }
            Files.write(Path.of(folder, "parts.txt"), index);
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

    private static void takeApart(Path catalog, List<String> index) throws IOException {
        StringBuilder head = new StringBuilder("{");
        try (JsonParser in = new YAMLFactory().createParser(ObjectReadContext.empty(), Files.readString(catalog))) {
            in.nextToken();
            while (in.nextToken() == JsonToken.PROPERTY_NAME) {
                String field = in.currentName();
                if (in.nextToken() == JsonToken.START_ARRAY) {
                    while (in.nextToken() != JsonToken.END_ARRAY) {
                        String part = json(in);
                        String name = name(part);
                        Path file =
                                catalog.resolveSibling("parts").resolve(field).resolve(name + JSON);
                        Files.createDirectories(file.getParent());
                        Files.writeString(file, head + "\"" + field + "\":[" + part + "]}");
                        index.add(catalog.getFileName() + " " + field + " " + name);
                    }
                } else if (in.currentToken().isScalarValue()) {
                    head.append('"')
                            .append(field)
                            .append("\":")
                            .append(json(in))
                            .append(',');
                } else {
                    throw new IOException(catalog + " has more than parts: " + field);
                }
            }
        }
    }

    private static String json(JsonParser in) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = new JsonFactory().createGenerator(ObjectWriteContext.empty(), text)) {
            out.copyCurrentStructureExact(in);
        }
        return text.toString();
    }

    private static String name(String part) throws IOException {
        try (JsonParser in = new JsonFactory().createParser(ObjectReadContext.empty(), part)) {
            in.nextToken();
            while (in.nextToken() == JsonToken.PROPERTY_NAME) {
                boolean isName = in.currentName().equals("name");
                in.nextToken();
                if (isName) {
                    return in.getString();
                }
                in.skipChildren();
            }
        }
        throw new IOException("a part has no name: " + part);
    }
}
