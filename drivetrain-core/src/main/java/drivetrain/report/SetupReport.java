package drivetrain.report;

import drivetrain.combination.Combination;
import drivetrain.combination.Condition;
import drivetrain.combination.Part;
import drivetrain.combination.PartKind;
import drivetrain.combination.Slot;
import drivetrain.combination.Vehicle;
import drivetrain.engine.Engine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is chosen for each place of a drivetrain package. */
public final class SetupReport {

    private static final Set<PartKind<?>> OF_SHAFTS =
            Set.of(PartKind.DRIVESHAFT, PartKind.SHAFT_LINE, PartKind.SUSPENSION);

    private SetupReport() {}

    /**
     * Lists every place.
     *
     * @param combination the drivetrain package
     * @return the report
     */
    public static Report of(Combination combination) {
        List<Block> blocks = new ArrayList<>();
        String title = combination.specification().title();
        blocks.add(Sentence.answer(sentence(title, combination)));
        blocks.add(grid(combination, shown(combination)));
        List<Facts.Fact> facts = new ArrayList<>();
        for (Condition condition : Condition.values()) {
            condition
                    .in(combination.specification())
                    .ifPresent(text -> facts.add(Facts.Fact.of(condition.key(), condition.word(), text)));
        }
        String notes = combination.specification().notes();
        if (!notes.isEmpty()) {
            facts.add(Facts.Fact.of("notes", "notes", notes));
        }
        if (!facts.isEmpty()) {
            blocks.add(new Facts("order", "", facts));
        }
        return new Report("show", blocks);
    }

    /**
     * Lists some places.
     *
     * @param combination the drivetrain package
     * @param slots the places
     * @return the report
     */
    public static Report of(Combination combination, List<Slot> slots) {
        return Report.of("choice", grid(combination, slots));
    }

    /** Every place; those of driveshafts only where they are filled, and those of the fuel supply as soon as one of them is. */
    private static List<Slot> shown(Combination combination) {
        boolean fuel = combination.fuelParts().isAnyChosen();
        List<Slot> slots = new ArrayList<>();
        for (Slot slot : Slot.values()) {
            boolean shaft = OF_SHAFTS.contains(slot.kind());
            boolean filled = combination.specification().choice(slot).isPresent();
            if (slot.isFuelSupply() ? fuel : !shaft || filled) {
                slots.add(slot);
            }
        }
        return slots;
    }

    private static String sentence(String title, Combination combination) {
        String name = title.isEmpty() ? "This package" : "\"" + title + "\"";
        int chosen = combination.specification().choices().size();
        return chosen == 0
                ? "Nothing is chosen yet."
                : name + " has " + (chosen == 1 ? "one choice" : chosen + " choices") + ".";
    }

    private static Grid grid(Combination combination, List<Slot> slots) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Slot slot : slots) {
            Optional<String> choice = combination.specification().choice(slot);
            rows.add(List.of(
                    Cell.of(slot.word()),
                    Cell.of(choice.orElse(unchosen(slot))),
                    PartWords.part(combination, slot)
                            .map(part -> Cell.of(meaning(part)))
                            .orElse(Cell.empty())));
        }
        return new Grid(
                "choices",
                "",
                List.of(
                        Column.ofText("place", "place"),
                        Column.ofText("choice", "choice"),
                        Column.ofText("meaning", "which is")),
                rows);
    }

    private static String unchosen(Slot slot) {
        return switch (slot) {
            case OVERDRIVE, HUBS, RETURN_LINE -> "none fitted";
            case FRONT_TIRE -> "as at the rear";
            default -> "not chosen";
        };
    }

    private static String meaning(Part<?> part) {
        String figures = PartWords.figures(part.item());
        if (part.isLiteral() && PartWords.isOfShafts(part.item())) {
            return "";
        }
        if (part.isLiteral()) {
            return figures.equals(part.name()) ? PartWords.ratio(part.item()) : figures;
        }
        if (part.item() instanceof Engine || part.item() instanceof Vehicle || PartWords.isOfShafts(part.item())) {
            return part.description();
        }
        return part.description().isEmpty() ? figures : part.description() + " (" + figures + ")";
    }
}
