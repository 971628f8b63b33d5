/** Tests of the project as a whole: how its code is laid out, and what the packaged program does. */
@NullMarked
package headgate.it;

import org.jspecify.annotations.NullMarked;
