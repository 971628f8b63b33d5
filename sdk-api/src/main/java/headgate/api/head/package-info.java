/** For authors of heads: the interfaces that a head implements, and the contract that it keeps. */
@NullMarked
package headgate.api.head;

import org.jspecify.annotations.NullMarked;
