package drivetrain.document;

import drivetrain.combination.Condition;
import drivetrain.combination.PartKind;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import drivetrain.quantity.Speed;
import drivetrain.refusal.RefusedException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Reads and writes orders: a drivetrain package as it was chosen, word for word.
 *
 * <p>What is written reads back as an equal specification, and is then written as the same bytes. Packages that are kept beside an order in its file are checked
 * and left out here; {@link OrderFile} has them, and can check choices while it reads them. Whether a catalog has the parts that an order names is
 * told when the order is resolved, not here.
 */
public final class OrderDocument {

    /** The value of the field {@code document}. */
    static final String KIND = "drivetrain-order";

    static final String NOTES = "notes";

    /** What is one ratio or two may be written as a bare number: an axle of 4.10 is. */
    private static final Set<PartKind<?>> RATIOS =
            Set.of(PartKind.AXLE, PartKind.OVERDRIVE, PartKind.HUB_REDUCTION, PartKind.TRANSFER_CASE);

    /** For a reader that knows no catalog. */
    static final Consumer<Specification> UNCHECKED = choice -> {};

    private OrderDocument() {}

    /** The fields of an order. */
    static List<String> known() {
        List<String> known = new ArrayList<>(DocumentHead.FIELDS);
        for (Slot slot : Slot.values()) {
            known.add(slot.key());
        }
        for (Condition condition : Condition.values()) {
            known.add(condition.key());
        }
        known.add(NOTES);
        known.add(OrderFile.KEPT);
        return known;
    }

    /**
     * Reads an order.
     *
     * @param file a file whose name ends in .yaml, .yml or .json
     * @return what was chosen
     * @throws IOException if the file cannot be read
     * @throws RefusedException if its content is refused, with its place
     */
    public static Specification read(Path file) throws IOException {
        DocumentFormat format = DocumentFormat.of(file);
        return specification(SourceBytes.read(file), format);
    }

    /**
     * Reads an order that is packed with a library.
     *
     * @param path the path on the class path, such as {@code drivetrain/demo/order.yaml}; where the same document lies beside it as JSON, that
     *     is read instead
     * @return what was chosen
     * @throws IOException if it is not there
     * @throws RefusedException if its content is refused, with its place
     */
    public static Specification readPacked(String path) throws IOException {
        PackedText packed = PackedText.read(path);
        return specification(packed.source(), packed.format());
    }

    /**
     * Reads an order from a text.
     *
     * @param name the name by which refusals call it
     * @param text the whole text
     * @param format its notation
     * @return what was chosen
     * @throws RefusedException if it is refused, with its place
     */
    public static Specification parse(String name, String text, DocumentFormat format) {
        return specification(SourceText.of(name, text), format);
    }

    /**
     * Writes an order as a text.
     *
     * @param order what was chosen
     * @param format the notation
     * @return the text, which {@link #parse} reads back as an equal specification
     * @throws RefusedException if a choice cannot be kept in a document, for instance because it has control characters
     */
    public static String text(Specification order, DocumentFormat format) {
        String text = OrderText.write(fields(order), Map.of(), format);
        if (!parse("order", text, format).equals(order)) {
            throw new IllegalStateException("an order was written that reads back as another one:\n" + text);
        }
        return text;
    }

    /** Returns the fields of an order but for those of the head, in the order in which they are written. */
    static Map<String, String> fields(Specification order) {
        Map<String, String> fields = new LinkedHashMap<>();
        if (!order.title().isEmpty()) {
            fields.put(DocumentHead.TITLE, order.title());
        }
        order.choices().forEach((slot, choice) -> fields.put(slot.key(), choice));
        for (Condition condition : Condition.values()) {
            condition.in(order).ifPresent(text -> fields.put(condition.key(), text));
        }
        if (!order.notes().isEmpty()) {
            fields.put(NOTES, order.notes());
        }
        return fields;
    }

    /**
     * Writes an order to a file, which is whole at every moment.
     *
     * @param file a file whose name ends in .yaml, .yml or .json, in a folder that exists
     * @param order what was chosen
     * @throws IOException if the file cannot be written; it is then as it was before
     * @throws RefusedException if a choice cannot be kept in a document
     */
    public static void write(Path file, Specification order) throws IOException {
        AtomicFile.write(file, text(order, DocumentFormat.of(file)));
    }

    private static Specification specification(SourceText source, DocumentFormat format) {
        Fields fields = head(source, format);
        fields.optional(OrderFile.KEPT, value -> OrderFile.packages(value, UNCHECKED));
        return specification(fields, UNCHECKED);
    }

    /** Reads the head and returns the fields of the order. */
    static Fields head(SourceText source, DocumentFormat format) {
        return DocumentHead.require(DocumentTree.read(source, format), KIND, "order", known());
    }

    /** Reads the choices. The check is given each of them alone, and what it refuses is refused with the place of that choice. */
    static Specification specification(Fields fields, Consumer<Specification> check) {
        Specification nothing = Specification.empty();
        Specification order = nothing;
        for (Slot slot : Slot.values()) {
            Optional<String> choice = fields.optional(
                    slot.key(), value -> choice(slot, value, text -> check.accept(nothing.with(slot, text))));
            order = choice.isPresent() ? order.with(slot, choice.get()) : order;
        }
        for (Condition condition : Condition.values()) {
            Optional<String> said = fields.optional(
                    condition.key(),
                    value -> line(
                            condition == Condition.CRUISE ? cruise(value) : value,
                            text -> check.accept(condition.in(nothing, text))));
            order = said.isPresent() ? condition.in(order, said.get()) : order;
        }
        return order.titled(fields.optional(DocumentHead.TITLE, Value::line).orElse(""))
                .noting(fields.optional(NOTES, Value::text).orElse(""));
    }

    private static String choice(Slot slot, Value value, Consumer<String> check) {
        return RATIOS.contains(slot.kind()) ? value.literalOrNumber(text -> checked(text, check)) : line(value, check);
    }

    private static String line(Value value, Consumer<String> check) {
        return value.literal(text -> checked(text, check));
    }

    private static String checked(String text, Consumer<String> check) {
        check.accept(text);
        return text;
    }

    /** A cruise speed is read even where nothing is checked. */
    private static Value cruise(Value value) {
        value.literal(text -> Speed.parse(text).requirePositive("cruise speed"));
        return value;
    }
}
