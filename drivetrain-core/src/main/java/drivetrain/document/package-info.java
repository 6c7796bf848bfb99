/**
 * Documents: what goes into files and comes out of them.
 *
 * <ul>
 *   <li>{@link drivetrain.document.CatalogDocument} reads a shelf of parts from one file, from several, or from the class path.
 *   <li>{@link drivetrain.document.OrderDocument} reads and writes a drivetrain package as it was chosen.
 *   <li>{@link drivetrain.document.TorqueCurveCsv} reads the measured points of an engine.
 *   <li>{@link drivetrain.document.AssessmentDocument} writes the answers with their workings.
 *   <li>{@link drivetrain.document.JsonText} writes any tree of plain values as one line of JSON.
 *   <li>{@link drivetrain.document.AtomicFile} replaces a file so that it is whole at every moment.
 * </ul>
 *
 * <h2>Notation</h2>
 * Catalogs and orders are YAML 1.2 ({@code .yaml}, {@code .yml}) or JSON, RFC 8259 ({@code .json}); both hold one model, which the JSON Schemas (2020-12) in
 * {@code docs/schema} describe. A document begins with {@code document} (what it is), {@code version} (1) and {@code title}. Every dimensioned value is a
 * text with its unit, {@code 2510 mm}; a bare number is taken only where no unit is needed: ratios, efficiencies, tooth counts. A ratio may also be a text
 * of driven and driving teeth, {@code 41/10}. Of YAML the parts that a list of parts needs are read: no anchors, aliases, tags, tabs or second documents. What
 * an unquoted YAML scalar is follows from its text alone: a decimal number, {@code true} or {@code false}, empty, or else a text.
 *
 * <h2>A catalog</h2>
 * {@code houseLimits} (numbers by name) and the lists {@code vehicles}, {@code engines}, {@code transmissions}, {@code overdrives}, {@code transferCases},
 * {@code axles}, {@code hubReductions}, {@code tires}. Every part has a {@code name} (lower-case letters, digits, dots, hyphens; at most 40; once in its
 * kind, and not {@code none}) and may have a {@code description}. The fields of each kind stand in the schema; those of the torque of an engine are
 * {@code torqueCurve} (points), {@code torqueCurveFile} (a CSV file below the folder of the catalog) or {@code peaks} (an estimate that is labelled as one);
 * with none of them no torque is known.
 *
 * <h2>An order</h2>
 * One text for each slot, {@code vehicle}, {@code engine}, {@code transmission}, {@code overdrive}, {@code transfer}, {@code rearAxle}, {@code frontAxle},
 * {@code hubs}, {@code tire}, {@code frontTire}: a name in the catalog or the part itself as one types it; {@code cruise} with its unit; {@code notes}. The texts
 * are kept word for word. An order that is written reads back as an equal one and is then written as the same bytes.
 *
 * <h2>Strictness</h2>
 * A document is read as a whole or refused as a whole with a {@link drivetrain.refusal.RefusedException}: one line with file, line and column, the fault in the
 * user's words, and what is allowed. The column is that of the fault within a value wherever the value stands in the file as it is. Refused are unknown
 * fields (with near names), fields given twice, other kinds of values than the one wanted, numbers that are not finite, encodings other than UTF-8, a byte
 * order mark, control characters and marks that turn the direction of writing, escaped ones included. A document holds at most 8 MB, 400,000 values, 64
 * levels and 200 fields in one group; a text at most 100,000 characters, a text on one line 400, a number 40.
 *
 * <p>Reading goes from a stream of tokens to a tree whose values know their places ({@code DocumentTree}), and from there to parts, field by field ({@code
 * Fields}, {@code Value} and one class for each kind of part). Nothing is bound by reflection.
 *
 * <h2>What it leaves out</h2>
 * Whether a catalog has the parts that an order names is told when the order is resolved, or, with its place in the file, by the check with which an {@link
 * drivetrain.document.OrderFile} is read. Comments and the layout of an order are not kept when it is written again. An assessment is written only.
 */
@NullMarked
package drivetrain.document;

import org.jspecify.annotations.NullMarked;
