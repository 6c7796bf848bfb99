package drivetrain.comparison;

import drivetrain.combination.Catalog;
import drivetrain.combination.Combination;
import drivetrain.combination.HouseLimits;
import drivetrain.combination.Part;
import drivetrain.combination.PartKind;
import drivetrain.combination.Slot;
import drivetrain.combination.Specification;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/**
 * A package in which single figures of parts are changed. It is resolved like any other, from a shelf that holds its own parts under other names, so that
 * every answer of it comes from the assessment.
 */
final class Adjusted {

    private static final String NAME = "adjusted-";

    private final Specification base;
    private final Map<Slot, Part<?>> parts = new EnumMap<>(Slot.class);
    private final HouseLimits limits;

    Adjusted(Combination combination) {
        base = combination.specification();
        for (Slot slot : Slot.values()) {
            combination.part(slot).ifPresent(part -> parts.put(slot, part));
        }
        limits = combination.limits();
    }

    /** Makes the package in which each lever's number is multiplied by a factor. */
    Combination with(Map<Lever, Double> factors) {
        Map<Slot, Object> items = items();
        factors.forEach((lever, factor) -> scale(items, lever, factor));
        return resolve(items);
    }

    /** Multiplies a lever's number by a factor; where the lever is the axle, that of both axles. */
    static void scale(Map<Slot, Object> items, Lever lever, double factor) {
        scale(items, lever, lever.slot(), factor);
        if (lever == Lever.AXLE) {
            scale(items, lever, Slot.FRONT_AXLE, factor);
        }
    }

    private static void scale(Map<Slot, Object> items, Lever lever, Slot slot, double factor) {
        Object item = items.get(slot);
        if (item != null) {
            lever.number(item).ifPresent(number -> items.put(slot, lever.with(item, number * factor)));
        }
    }

    /** Makes the package in which another part fills a slot. */
    Combination put(Slot slot, Object item) {
        Map<Slot, Object> items = items();
        items.put(slot, item);
        return resolve(items);
    }

    /** Returns the parts of the package, to be changed. */
    Map<Slot, Object> items() {
        Map<Slot, Object> items = new EnumMap<>(Slot.class);
        parts.forEach((slot, part) -> items.put(slot, part.item()));
        return items;
    }

    /** Makes the package of changed parts. */
    Combination resolve(Map<Slot, Object> items) {
        Catalog.Builder builder = Catalog.titled("adjusted").limits(limits);
        Specification specification = base;
        for (Map.Entry<Slot, Object> item : items.entrySet()) {
            String name = NAME + item.getKey().name().toLowerCase(Locale.ROOT).replace('_', '-');
            add(builder, item.getKey().kind(), name, item.getValue());
            specification = specification.with(item.getKey(), name);
        }
        return Combination.of(specification, builder.build());
    }

    @SuppressWarnings("unchecked") // a slot's part is of the slot's kind; Combination resolved it as such
    private static <T> void add(Catalog.Builder builder, PartKind<T> kind, String name, Object item) {
        builder.add(kind, Part.of(name, "", (T) item, "adjusted"));
    }
}
