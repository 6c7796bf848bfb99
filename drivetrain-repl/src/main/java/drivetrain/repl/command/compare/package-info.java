/**
 * The commands that lead from one package to the right one: keeping packages and comparing them, what a change would do, which part a wish needs, sweeps
 * over lists of parts, fronts, sensitivity and tolerance.
 *
 * <p>{@link drivetrain.repl.command.compare.SweepWords} reads the sentence of a sweep and of a front.
 */
@NullMarked
package drivetrain.repl.command.compare;

import org.jspecify.annotations.NullMarked;
