/** Tests of how the code is laid out, over the classes of every module. */
@NullMarked
package headgate.it.layout;

import org.jspecify.annotations.NullMarked;
