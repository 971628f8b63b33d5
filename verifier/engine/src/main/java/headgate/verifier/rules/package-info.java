/** The rule book: every rule, family by family, in the order in which they are run. */
@NullMarked
package headgate.verifier.rules;

import org.jspecify.annotations.NullMarked;
