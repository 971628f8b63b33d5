/** Tests of the program without a process. */
@NullMarked
package headgate.app;

import org.jspecify.annotations.NullMarked;
