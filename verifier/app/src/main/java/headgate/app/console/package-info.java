/**
 * For the commands: how the program speaks. A {@link headgate.app.console.Console} holds the streams, an
 * {@link headgate.app.console.ExitCode} says how a run ended, a {@link headgate.app.console.Complaint} is one thing that is
 * wrong with what the user gave.
 */
@NullMarked
package headgate.app.console;

import org.jspecify.annotations.NullMarked;
