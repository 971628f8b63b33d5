/**
 * For the verifier: stands that are made up from a seed, as streams. A <em>pattern</em> says where weeds stand, a <em>size
 * law</em> how large they are. The same seed gives the same plants on every machine: chance comes from the JDK's {@link
 * java.util.SplittableRandom}, functions from {@link java.lang.StrictMath}.
 */
@NullMarked
package headgate.verifier.stand;

import org.jspecify.annotations.NullMarked;
