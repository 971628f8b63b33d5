/** Rules on whether the head bolts on and can be carried. */
@NullMarked
package headgate.verifier.rules.mount;

import org.jspecify.annotations.NullMarked;
