/** Rules on whether every lane is served. */
@NullMarked
package headgate.verifier.rules.rows;

import org.jspecify.annotations.NullMarked;
