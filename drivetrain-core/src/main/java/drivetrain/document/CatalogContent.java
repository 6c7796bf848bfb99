package drivetrain.document;

import drivetrain.combination.Catalog;
import drivetrain.combination.HouseLimits;
import drivetrain.combination.Part;
import drivetrain.refusal.Place;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * One catalog document, its fields known and its parts not yet made.
 *
 * @param title the title
 * @param fields the fields of the document
 * @param files the files beside it
 */
record CatalogContent(String title, Fields fields, CurveFiles files) {

    /** When the parts of a catalog are made. */
    enum Making {
        /** With the catalog, so that a fault in any part refuses the whole. */
        AT_ONCE,
        /** When a part is first looked up, for catalogs that were found whole before they were packed. */
        ON_USE
    }

    /** The field that replaces house limits. */
    static final String HOUSE_LIMITS = "houseLimits";

    private static final int LONGEST_TITLE = 200;

    /** The fields of a catalog: what it is, then one list for each kind of part. */
    static List<String> known() {
        List<String> known = new ArrayList<>(DocumentHead.FIELDS);
        known.add(HOUSE_LIMITS);
        PartReader.ALL.forEach(reader -> known.add(reader.kind().key()));
        return known;
    }

    static CatalogContent of(SourceText source, DocumentFormat format, CurveFiles files) {
        Fields fields =
                DocumentHead.require(DocumentTree.read(source, format), CatalogDocument.KIND, "catalog", known());
        return new CatalogContent(fields.required(DocumentHead.TITLE, Value::line), fields, files);
    }

    static Catalog merge(List<CatalogContent> contents, Making making) {
        String titles = contents.stream().map(CatalogContent::title).distinct().collect(Collectors.joining(" + "));
        String title = titles.length() > LONGEST_TITLE ? titles.substring(0, LONGEST_TITLE) + "..." : titles;
        Catalog.Builder catalog = Catalog.titled(title);
        Map<String, Value> limitValues = new LinkedHashMap<>();
        Optional<HouseLimits> limits = Optional.empty();
        for (CatalogContent content : contents) {
            PartReader.ALL.forEach(reader -> content.addAll(reader, catalog, making));
            limits = content.limits(limits, limitValues);
        }
        limits.ifPresent(own -> catalog.limits(inOrder(own, limitValues)));
        return catalog.build();
    }

    private <T> void addAll(PartReader<T> reader, Catalog.Builder catalog, Making making) {
        fields.find(reader.kind().key())
                .map(list -> list.items(Limits.PARTS))
                .orElse(List.of())
                .forEach(item -> add(reader, item, catalog, making));
    }

    private <T> void add(PartReader<T> reader, Value item, Catalog.Builder catalog, Making making) {
        Fields part = item.fields(reader.kind().word(), reader.fields());
        String name = part.required(PartReader.NAME, CatalogContent::name);
        Supplier<Part<T>> maker = () -> part(reader, name, part);
        if (making == Making.ON_USE) {
            catalog.promise(reader.kind(), name, maker);
            return;
        }
        Part<T> made = maker.get();
        part.required(PartReader.NAME, value -> value.made(() -> catalog.add(reader.kind(), made)));
    }

    /** Returns the one part of a catalog that holds no other. */
    <T> Part<T> only(PartReader<T> reader) {
        Value item = fields.required(
                reader.kind().key(), list -> list.items(Limits.PARTS).get(0));
        Fields part = item.fields(reader.kind().word(), reader.fields());
        return part(reader, part.required(PartReader.NAME, CatalogContent::name), part);
    }

    private <T> Part<T> part(PartReader<T> reader, String name, Fields part) {
        String description = part.optional(PartReader.DESCRIPTION, Value::line).orElse("");
        String origin = new Place(part.place().source(), part.place().line(), 0).toString();
        T item = part.made(() -> reader.maker().make(name, part, files));
        return part.required(PartReader.NAME, value -> value.made(() -> Part.of(name, description, item, origin)));
    }

    /** A name is kept free of what a literal would say. */
    private static String name(Value value) {
        String name = value.line();
        if (name.equals("none")) {
            throw value.refusal(name, "means that no such part is fitted and names none")
                    .asException();
        }
        return name;
    }

    private Optional<HouseLimits> limits(Optional<HouseLimits> before, Map<String, Value> set) {
        Optional<Value> own = fields.find(HOUSE_LIMITS);
        if (own.isEmpty()) {
            return before;
        }
        HouseLimits limits = before.orElseGet(HouseLimits::packed);
        List<String> known = HouseLimits.names();
        Fields group = own.get().fields("house limit", known);
        for (String limit : known) {
            Optional<Value> value = group.find(limit);
            if (value.isPresent()) {
                requireFirst(limit, value.get(), set);
                HouseLimits now = limits;
                limits = value.get().made(() -> now.with(limit, value.get().number(), title));
            }
        }
        return Optional.of(limits);
    }

    private static void requireFirst(String limit, Value value, Map<String, Value> set) {
        Value before = set.putIfAbsent(limit, value);
        if (before != null) {
            throw value.refusal("", "is set already, at " + before.node().place())
                    .asException();
        }
    }

    /** Limits that belong together may stand in any order and in several files, so that they are held against each other when all are set; the last one is refused. */
    private static HouseLimits inOrder(HouseLimits limits, Map<String, Value> set) {
        List<String> names = new ArrayList<>(set.keySet());
        Collections.reverse(names);
        for (String name : names) {
            Optional.ofNullable(set.get(name)).ifPresent(value -> value.made(() -> limits.inOrder(name)));
        }
        return limits;
    }
}
