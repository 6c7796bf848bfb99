package drivetrain.report;

import drivetrain.combination.Catalog;
import drivetrain.combination.Part;
import drivetrain.combination.PartKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The parts on a shelf. */
public final class PartsReport {

    private PartsReport() {}

    /**
     * Lists parts.
     *
     * @param shelf the name by which the user knows the shelf
     * @param catalog what is on it
     * @param kinds the kinds of part to list
     * @param text what the name or the description holds, upper and lower case alike; empty for every part
     * @return the report
     */
    public static Report of(String shelf, Catalog catalog, List<PartKind<?>> kinds, String text) {
        List<List<Cell>> rows = new ArrayList<>();
        for (PartKind<?> kind : kinds) {
            addAll(rows, catalog, kind, text.toLowerCase(Locale.ROOT));
        }
        String count = rows.isEmpty() ? "No part" : rows.size() == 1 ? "One part" : rows.size() + " parts";
        String has = text.isEmpty() ? "" : (rows.size() == 1 ? " has \"" : " have \"") + text + "\"";
        String sentence = count + " on the shelf \"" + shelf + "\"" + has + ".";
        List<Column> columns = List.of(
                Column.ofText("name", "name"),
                Column.ofText("kind", "kind"),
                Column.ofText("description", "description"));
        return Report.of("parts", Sentence.answer(sentence), new Grid("parts", "", columns, rows));
    }

    private static <T> void addAll(List<List<Cell>> rows, Catalog catalog, PartKind<T> kind, String text) {
        for (Part<T> part : catalog.parts(kind)) {
            String all = (part.name() + " " + part.description()).toLowerCase(Locale.ROOT);
            if (all.contains(text)) {
                rows.add(List.of(Cell.of(part.name()), Cell.of(kind.word()), Cell.of(part.description())));
            }
        }
    }
}
