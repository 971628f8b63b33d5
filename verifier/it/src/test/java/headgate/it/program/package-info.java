/** Tests of the packaged program, run as a process from the folder that the build put together. */
@NullMarked
package headgate.it.program;

import org.jspecify.annotations.NullMarked;
