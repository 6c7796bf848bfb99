/**
 * Reports written out: {@link drivetrain.report.text.TableText} for a screen, {@link drivetrain.report.text.PlainText} for a screen reader,
 * {@link drivetrain.report.text.CsvText}, {@link drivetrain.report.text.MarkdownText}, and {@link drivetrain.report.text.ReportTree}
 * as a tree from which JSON is written.
 *
 * <p>What holds for every format:
 *
 * <ul>
 *   <li>The {@link drivetrain.report.text.Page} says in which units and signs, how wide, and with which marks.
 *   <li>Every figure has its unit beside it or in the head of its column. With both unit systems the metric figure follows the US one,
 *       in a column of its own where there are columns; a drawing has one pair of axes, in US units.
 *   <li>Nothing is cut. On a screen, lines are broken at spaces and a table that is too wide becomes one record a row; in a file or a pipe
 *       no line is broken.
 *   <li>Control characters, bidirectional controls, other format characters and line separators in a text are written as {@code \}{@code uXXXX};
 *       a screen never obeys what a file says. Letters of scripts that run from right to left are left as they are.
 *   <li>With {@link drivetrain.report.text.Signs#ASCII} every sign is printable ASCII.
 *   <li>The bytes depend neither on the locale nor on the time zone.
 *   <li>Verdicts, uncertain assumptions and cautions are words. A {@link drivetrain.report.text.Styler} may mark them as well; without the marks the
 *       text is the same.
 * </ul>
 *
 * <p>A drawing shows curves as dots: eight to a cell of the screen in Unicode (the signs for Braille), three in ASCII. Each curve carries
 * its own letter or digit. Axes start at zero where that costs no more than half of their length; the numbers beside them are round: steps of 1, 2
 * or 5 times a power of ten.
 */
@NullMarked
package drivetrain.report.text;

import org.jspecify.annotations.NullMarked;
