/**
 * The shell over the library, in three layers.
 *
 * <p>{@code session} holds one immutable state of the work in hand, {@code command} turns one line of words into an
 * answer and a next state and knows no terminal, and {@code shell} is the program: its arguments, its loop and its
 * terminal. Each uses only those named before it.
 */
@org.jspecify.annotations.NullMarked
package drivetrain.repl;
