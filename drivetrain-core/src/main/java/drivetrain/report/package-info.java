/**
 * Answers as structured text: what an answer says, apart from how it looks.
 *
 * <p>A {@link drivetrain.report.Report} answers one question. It is a list of {@link drivetrain.report.Block}s, which are handled by kind with a
 * {@link drivetrain.report.Block.Layout}:
 *
 * <ul>
 *   <li>{@link drivetrain.report.Sentence}: a sentence that can be read out. The first one of a report is the answer.
 *   <li>{@link drivetrain.report.Facts}: names with values.
 *   <li>{@link drivetrain.report.Grid}: a table of {@link drivetrain.report.Column}s and rows; its first column names the row.
 *   <li>{@link drivetrain.report.Verdicts}: findings, the verdict in words ahead of all else.
 *   <li>{@link drivetrain.report.Notes}: the assumptions that the answer rests on, each once, uncertain ones marked in words.
 *   <li>{@link drivetrain.report.Steps}: a working, with formulas, values and sources.
 *   <li>{@link drivetrain.report.Cautions}: the warnings that belong to the answer.
 *   <li>{@link drivetrain.report.Drawing}: a {@link drivetrain.report.LinePlot}, several curves over one pair of axes.
 * </ul>
 *
 * <p>A {@link drivetrain.report.Cell} holds a figure, text, nothing, or the reason why a figure is missing. Figures keep their number in full and
 * know their units in both unit systems; nothing here calculates. Each block, column and fact has two names: a heading that people read
 * and a key in camel case by which programs find it. Keys are kept from release to release; headings may change.
 *
 * <p>{@code drivetrain.report.text} writes reports out.
 */
@NullMarked
package drivetrain.report;

import org.jspecify.annotations.NullMarked;
