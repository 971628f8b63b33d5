/** Tests that hold the package gate against every member of the Java library, one tiny head each. */
@NullMarked
package headgate.verifier.gate;

import org.jspecify.annotations.NullMarked;
