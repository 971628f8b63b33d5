/** For authors of heads: how a value that cannot be says so, with every problem at once. */
@NullMarked
package headgate.api.problem;

import org.jspecify.annotations.NullMarked;
