/** Tests of the folder that a report goes to. */
@NullMarked
package headgate.app.output;

import org.jspecify.annotations.NullMarked;
