/** Rules on whether the head is made for what the plan wants. */
@NullMarked
package headgate.verifier.rules.plan;

import org.jspecify.annotations.NullMarked;
