/**
 * Commands that ask about what is chosen. Each takes its answer from {@code drivetrain.assessment} and its wording from {@code drivetrain.report};
 * those that are a {@link drivetrain.repl.command.ask.QuestionCommand} can be explained.
 */
@NullMarked
package drivetrain.repl.command.ask;

import org.jspecify.annotations.NullMarked;
