/**
 * For authors of rules: the case that is checked, what a rule is, and what it finds. A case is an immutable value; a rule
 * is a pure function of it; a finding is one rule's answer about one subject, with the numbers that decided it.
 */
@NullMarked
package headgate.verifier.check;

import org.jspecify.annotations.NullMarked;
