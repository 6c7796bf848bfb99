package drivetrain.combination;

import drivetrain.driveshaft.LineSurvey;
import drivetrain.driveshaft.ShaftPlace;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The parts that the choices of a specification mean, each looked up when it is first asked for. */
final class ChosenParts {

    private final Specification specification;
    private final Catalog catalog;
    private final Map<Slot, Once<Part<?>>> parts = new EnumMap<>(Slot.class);

    ChosenParts(Specification specification, Catalog catalog) {
        this.specification = specification;
        this.catalog = catalog;
        specification.choices().forEach((slot, text) -> parts.put(slot, new Once<>(() -> find(slot, text))));
    }

    private ChosenParts(Specification specification, ChosenParts before) {
        this.specification = specification;
        this.catalog = before.catalog;
        specification.choices().forEach((slot, text) -> {
            boolean same = text.equals(before.specification.choices().get(slot));
            Once<Part<?>> known = same ? before.parts.get(slot) : null;
            parts.put(slot, known == null ? new Once<>(() -> find(slot, text)) : known);
        });
    }

    /** Other choices from the same catalog; what is chosen alike is looked up once for both. */
    ChosenParts changedTo(Specification other) {
        return new ChosenParts(other, this);
    }

    /** Looks up those that are not the same in other choices. */
    void lookUpUnlike(Specification known) {
        for (Map.Entry<Slot, String> choice : specification.choices().entrySet()) {
            if (!known.choice(choice.getKey()).equals(Optional.of(choice.getValue()))) {
                in(choice.getKey());
            }
        }
    }

    /** Whether other choices are the same in some slots. */
    boolean isAlike(Set<Slot> slots, Specification other) {
        for (Slot slot : slots) {
            if (!specification.choice(slot).equals(other.choice(slot))) {
                return false;
            }
        }
        return true;
    }

    /** The part in a slot, of whatever type. */
    Optional<Part<?>> in(Slot slot) {
        Once<Part<?>> part = parts.get(slot);
        return part == null ? Optional.empty() : Optional.of(part.get());
    }

    /** The part in a slot, of the type that the slot's kind has. */
    @SuppressWarnings({"unchecked", "TypeParameterUnusedInFormals"}) // a caller names the type that the slot declares
    <T> Optional<Part<T>> of(Slot slot) {
        return in(slot).map(part -> (Part<T>) part);
    }

    private Part<?> find(Slot slot, String text) {
        try {
            Part<?> part = catalog.resolve(slot.kind(), text);
            if (part.item() instanceof LineSurvey survey) {
                lay(slot, text, survey);
            }
            return part;
        } catch (RefusedException refused) {
            throw refused.refusal().about(slot.word()).asException();
        }
    }

    /** A line is also laid in space, so that one which cannot be built is refused where it is chosen. */
    private static void lay(Slot slot, String given, LineSurvey survey) {
        try {
            survey.line(slot == Slot.FRONT_LINE ? ShaftPlace.FRONT : ShaftPlace.REAR);
        } catch (RefusedException refused) {
            Refusal why = refused.refusal();
            String subject = why.subject().equals("shaft line") ? "" : why.subject() + " ";
            throw Refusal.of(
                            slot.word(),
                            given,
                            subject + why.problem() + (why.given().isEmpty() ? "" : ": " + why.given()))
                    .allowing(why.allowed())
                    .asException();
        }
    }
}
