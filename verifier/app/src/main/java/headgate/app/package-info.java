/**
 * For integrators: the program {@code headgate}. {@link headgate.app.Main} is the process, {@link headgate.app.Program} is
 * the same without one, so that tests call it and read what it printed.
 */
@NullMarked
package headgate.app;

import org.jspecify.annotations.NullMarked;
