/** Rules on whether the head keeps the pace. */
@NullMarked
package headgate.verifier.rules.throughput;

import org.jspecify.annotations.NullMarked;
