/** The kinds of change that a remedy can propose. Each is applied to the case and judged before anybody is told of it. */
@NullMarked
package headgate.verifier.remedy;

import org.jspecify.annotations.NullMarked;
