package drivetrain.document;

import drivetrain.combination.Specification;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/**
 * An order with the packages that are kept beside it to be compared with, as one file holds them.
 *
 * <p>What is written reads back as an equal order with equal packages in the same sequence, and is then written as the same bytes.
 *
 * @param order what was chosen
 * @param kept the packages kept beside it, by name, in the sequence in which they were kept
 */
public record OrderFile(Specification order, Map<String, Specification> kept) {

    /** The most packages that can be kept. */
    public static final int MOST_KEPT = 20;

    /** What a kept package can be called, in words. */
    public static final String NAMES =
            "letters, digits, \".\", \"_\" and \"-\", at most 40, starting with a letter or digit";

    /** The field that holds them. */
    static final String KEPT = "kept";

    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}._-]{0,39}");

    /**
     * Copies the map and checks the names.
     *
     * @throws RefusedException if there are too many packages or one has an impossible name
     */
    public OrderFile {
        kept = Collections.unmodifiableMap(new LinkedHashMap<>(kept));
        requireFew(kept.size());
        kept.keySet().forEach(OrderFile::requireName);
    }

    /**
     * Tells whether a package can be kept under a name.
     *
     * @param name the name
     * @return true if it is 1 to 40 letters, digits, dots, underscores and hyphens and starts with a letter or digit
     */
    public static boolean isName(String name) {
        return NAME.matcher(name).matches();
    }

    private static void requireFew(int count) {
        if (count > MOST_KEPT) {
            throw Refusal.of(KEPT, count + " packages", "are too many")
                    .allowing("at most " + MOST_KEPT)
                    .asException();
        }
    }

    private static void requireName(String name) {
        if (!isName(name)) {
            throw Refusal.of(KEPT, Characters.excerpt(name), "cannot be the name of a kept package")
                    .allowing(NAMES)
                    .asException();
        }
    }

    /**
     * Reads a file.
     *
     * @param file a file whose name ends in .yaml, .yml or .json
     * @return the order and what is kept beside it
     * @throws IOException if the file cannot be read
     * @throws RefusedException if its content is refused, with its place
     */
    public static OrderFile read(Path file) throws IOException {
        return read(file, OrderDocument.UNCHECKED);
    }

    /**
     * Reads a file and checks its choices, so that one which is refused is refused with its place.
     *
     * @param file a file whose name ends in .yaml, .yml or .json
     * @param check is given each choice of the order and of the kept packages as an order that has nothing else, and refuses it or not
     * @return the order and what is kept beside it
     * @throws IOException if the file cannot be read
     * @throws RefusedException if its content is refused, with its place
     */
    public static OrderFile read(Path file, Consumer<Specification> check) throws IOException {
        DocumentFormat format = DocumentFormat.of(file);
        return of(SourceBytes.read(file), format, check);
    }

    /**
     * Reads a text.
     *
     * @param name the name by which refusals call it
     * @param text the whole text
     * @param format its notation
     * @return the order and what is kept beside it
     * @throws RefusedException if it is refused, with its place
     */
    public static OrderFile parse(String name, String text, DocumentFormat format) {
        return of(SourceText.of(name, text), format, OrderDocument.UNCHECKED);
    }

    /**
     * Writes a text.
     *
     * @param format the notation
     * @return the text, which {@link #parse} reads back as an equal order with equal packages
     * @throws RefusedException if a choice cannot be kept in a document, for instance because it has control characters
     */
    public String text(DocumentFormat format) {
        Map<String, Map<String, String>> packages = new LinkedHashMap<>();
        kept.forEach((name, choices) -> packages.put(name, OrderDocument.fields(choices)));
        String text = OrderText.write(OrderDocument.fields(order), packages, format);
        OrderFile again = parse("order", text, format);
        if (!again.equals(this) || !List.copyOf(again.kept.keySet()).equals(List.copyOf(kept.keySet()))) {
            throw new IllegalStateException("an order was written that reads back as another one:\n" + text);
        }
        return text;
    }

    /**
     * Writes a file, which is whole at every moment.
     *
     * @param file a file whose name ends in .yaml, .yml or .json, in a folder that exists
     * @throws IOException if the file cannot be written; it is then as it was before
     * @throws RefusedException if a choice cannot be kept in a document
     */
    public void write(Path file) throws IOException {
        AtomicFile.write(file, text(DocumentFormat.of(file)));
    }

    private static OrderFile of(SourceText source, DocumentFormat format, Consumer<Specification> check) {
        Fields fields = OrderDocument.head(source, format);
        return new OrderFile(
                OrderDocument.specification(fields, check),
                fields.optional(KEPT, value -> packages(value, check)).orElse(Map.of()));
    }

    /** Reads the group of kept packages. */
    static Map<String, Specification> packages(Value value, Consumer<Specification> check) {
        Map<String, Specification> packages = new LinkedHashMap<>();
        List<String> known = new ArrayList<>(OrderDocument.known());
        known.removeAll(List.of(DocumentHead.DOCUMENT, DocumentHead.VERSION, KEPT));
        for (Map.Entry<String, Node.Entry> entry :
                value.group("the kept packages by their names").entrySet()) {
            Value one = new Value(entry.getKey(), entry.getValue().value());
            if (!isName(entry.getKey())) {
                throw Refusal.of(KEPT, Characters.excerpt(entry.getKey()), "cannot be the name of a kept package")
                        .allowing(NAMES)
                        .in(entry.getValue().place())
                        .asException();
            }
            packages.put(entry.getKey(), OrderDocument.specification(one.fields("kept package", known), check));
        }
        if (packages.isEmpty() || packages.size() > MOST_KEPT) {
            throw value.refusal(packages.size() + " packages", "is not a count of kept packages that a file can have")
                    .allowing("1 to " + MOST_KEPT + ", or no such field")
                    .asException();
        }
        return packages;
    }
}
