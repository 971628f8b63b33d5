/** For integrators: one small class for each command of the program, and what they share. */
@NullMarked
package headgate.app.command;

import org.jspecify.annotations.NullMarked;
