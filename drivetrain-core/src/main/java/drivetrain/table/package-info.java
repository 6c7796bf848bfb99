/**
 * Reads the reference tables: published values that rooms compute with, kept as comma-separated text beside the code.
 *
 * <p>A table is a UTF-8 file below {@code reference-tables/<room>/}. It starts with header lines, {@code # key: value}, of which
 * {@code title}, {@code source}, {@code class}, {@code obtained}, {@code units} and {@code add-rows} are required; a key may go on over
 * several lines by repeating it. Then comes one line with the names of the columns, then one line a row. Cells are separated by commas and
 * hold neither commas nor quotation marks. A table whose rows have different sources has the columns {@code class} and {@code source},
 * which then speak for the row; where such a cell is empty the header speaks for it.
 *
 * <p>A malformed line is refused with file, line and text. Tables are packed into the jar and read once.
 */
@NullMarked
package drivetrain.table;

import org.jspecify.annotations.NullMarked;
