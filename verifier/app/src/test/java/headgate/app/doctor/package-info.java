/** Tests of what the program finds out about a machine. */
@NullMarked
package headgate.app.doctor;

import org.jspecify.annotations.NullMarked;
