package drivetrain.table;

import drivetrain.finding.Source;
import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One reference table with its provenance.
 *
 * @param name the path below {@code reference-tables/}
 * @param header the header keys and their values; a repeated key's lines are joined by a space
 * @param columns the names of the columns
 * @param rows the rows, in the order of the file
 */
public record ReferenceTable(String name, Map<String, String> header, List<String> columns, List<TableRow> rows) {

    private static final String ROOT = "/reference-tables/";
    /** What a decoder puts in the place of bytes that are not UTF-8. */
    private static final char UNREADABLE = '\uFFFD';

    private static final List<String> REQUIRED = List.of("title", "source", "class", "obtained", "units", "add-rows");

    /** Copies the collections and keeps their order. */
    public ReferenceTable {
        header = Collections.unmodifiableMap(new LinkedHashMap<>(header));
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * Loads a packed table.
     *
     * @param name the path below {@code reference-tables/}, such as {@code tire/load-index.csv}
     * @return the table
     * @throws RefusedException if there is no such table or it is malformed
     */
    public static ReferenceTable load(String name) {
        try (InputStream in = ReferenceTable.class.getResourceAsStream(ROOT + name)) {
            if (in == null) {
                throw Refusal.of("reference table", name, "is not packed with the library")
                        .asException();
            }
            return parse(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads a table from text.
     *
     * @param name the name by which refusals call it
     * @param text the whole text
     * @return the table
     * @throws RefusedException if a line is malformed, with its place
     */
    public static ReferenceTable parse(String name, String text) {
        Map<String, String> header = new LinkedHashMap<>();
        List<String> columns = List.of();
        List<TableRow> rows = new ArrayList<>();
        String[] lines = text.split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            Place place = new Place(name, i + 1, 0);
            String line = lines[i].strip();
            requireReadable(line, place);
            if (line.startsWith("#")) {
                readHeaderLine(line, header, columns, place);
            } else if (!line.isEmpty() && columns.isEmpty()) {
                requireComplete(header, place);
                columns = readColumns(line, place);
            } else if (!line.isEmpty()) {
                rows.add(TableRow.of(columns, cells(line, place), sourceOf(header, place), place));
            }
        }
        if (rows.isEmpty()) {
            throw malformed(name, "the table has no rows", new Place(name, 0, 0));
        }
        return new ReferenceTable(name, header, columns, rows);
    }

    /**
     * Returns the source of the table as a whole.
     *
     * @return the source
     */
    public Source source() {
        return sourceOf(header, new Place(name, 0, 0));
    }

    private static void readHeaderLine(String line, Map<String, String> header, List<String> columns, Place place) {
        int colon = line.indexOf(':');
        if (colon < 0 || !columns.isEmpty()) {
            throw malformed(line, "a header line is \"# key: value\" and stands above the columns", place);
        }
        String key = line.substring(1, colon).strip();
        String value = line.substring(colon + 1).strip();
        header.merge(key, value, (before, more) -> before + " " + more);
    }

    private static List<String> readColumns(String line, Place place) {
        List<String> columns = cells(line, place);
        if (new HashSet<>(columns).size() != columns.size() || columns.contains("")) {
            throw malformed(line, "column names must be given and differ", place);
        }
        return columns;
    }

    private static List<String> cells(String line, Place place) {
        if (line.indexOf('"') >= 0) {
            throw malformed(line, "cells hold no quotation marks", place);
        }
        return Arrays.stream(line.split(",", -1)).map(String::strip).toList();
    }

    private static Source sourceOf(Map<String, String> header, Place place) {
        return new Source(
                TableRow.sourceClass(header.getOrDefault("class", ""), place), header.getOrDefault("source", ""));
    }

    private static void requireReadable(String line, Place place) {
        if (line.indexOf(UNREADABLE) >= 0) {
            throw malformed(line, "is not UTF-8", place);
        }
    }

    private static void requireComplete(Map<String, String> header, Place place) {
        for (String key : REQUIRED) {
            if (header.getOrDefault(key, "").isBlank()) {
                throw malformed(key, "is missing in the header above the columns", place);
            }
        }
        sourceOf(header, place);
    }

    static RefusedException malformed(String text, String problem, Place place) {
        return Refusal.of("reference table", text, problem).in(place).asException();
    }
}
