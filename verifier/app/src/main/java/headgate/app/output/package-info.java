/**
 * For the commands: putting a report into a folder so that it is there whole or not at all, and nobody's files are lost.
 */
@NullMarked
package headgate.app.output;

import org.jspecify.annotations.NullMarked;
