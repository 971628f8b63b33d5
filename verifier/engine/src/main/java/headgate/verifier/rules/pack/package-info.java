/** Rules on what the bytes of the JAR say. */
@NullMarked
package headgate.verifier.rules.pack;

import org.jspecify.annotations.NullMarked;
