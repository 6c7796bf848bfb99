/**
 * Keeps the documentation true: the pages' programs are compiled and run, their commands and the transcripts are
 * replayed, and what they print is compared with what the page shows.
 *
 * <p>A fence opened with {@code java} holds a complete class; if it has a {@code main}, the next fence is opened with
 * {@code text output} and shows what it prints. A fence opened with {@code console}, like a transcript file, holds
 * {@code $ drivetrain ...} lines, each followed by what it prints.
 */
package drivetrain.docs;
